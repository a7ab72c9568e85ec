import type { Length } from '../../length/length.ts';
import { partsInBlank } from '../blank.ts';
import type { LaidArea, LaidPiece, LaidRun, SawCut } from './laid-stock.ts';
import type { BlankToCut } from './ordered-blanks.ts';

export interface RunLaid {
  readonly run: LaidRun;
  readonly pieces: readonly LaidPiece[];
  readonly offcuts: readonly LaidArea[];
  readonly cuts: readonly SawCut[];
}

interface Side {
  readonly from: Length;
  readonly to: Length;
}

/**
 * How a blank of several pieces is cut once it is out of its stock: what lies around them is trimmed off, then each comes
 * off in its turn. `name` is what the plan calls the blank, `depth` counts the changes of direction before.
 */
export function layOutRun(
  { blank, pieces, label = '' }: BlankToCut,
  area: LaidArea,
  turned: boolean,
  name: string,
  depth: number,
): RunLaid {
  const run: LaidRun = {
    ...area,
    name,
    label,
    blanks: pieces.map((piece) => piece.blank.id),
    turned,
    mayTurn: blank.mayTurn,
  };
  const around = trimOf(blank, turned);
  const across: Side = {
    from: area.across.plus(around.left),
    to: area.across.plus(area.width).minus(around.right),
  };
  const along: Side = { from: area.along.plus(around.near), to: area.along.plus(area.length).minus(around.far) };
  const cuts: SawCut[] = squaring(area, across, along, name, depth, run.blanks);
  const inner = cuts.length > 0 ? depth + 1 : depth;
  const laid: LaidPiece[] = [];
  const offcuts: LaidArea[] = [];
  const isRip = (blank.order === 'across') !== turned;
  const [through, beside] = isRip ? [across, along] : [along, across];
  const kerfOf = (at: number): Length => blank.between[at] ?? through.from.minus(through.from);
  partsInBlank(blank, turned).forEach(({ x, y, width, length }, at) => {
    const piece = pieces[at];
    if (piece === undefined) return;
    const own: LaidArea = { across: area.across.plus(x), along: area.along.plus(y), width, length };
    const [end, size] = isRip ? [own.across.plus(width), width] : [own.along.plus(length), length];
    const [besideEnd, besideSize] = isRip ? [own.along.plus(length), length] : [own.across.plus(width), width];
    const blanks = [piece.blank.id];
    const off = { gives: piece.mark, blanks };
    const comesOff = end.compare(through.to) < 0;
    if (comesOff) {
      const direction = isRip ? 'rip' : 'crosscut';
      cuts.push({
        depth: inner,
        direction,
        of: name,
        setting: size,
        at: end,
        from: beside.from,
        to: beside.to,
        ...off,
      });
    }
    if (besideEnd.compare(beside.to) < 0) {
      const direction = isRip ? 'crosscut' : 'rip';
      const from = isRip ? own.across : own.along;
      const of = comesOff ? piece.mark : name;
      cuts.push({ depth: inner + 1, direction, of, setting: besideSize, at: besideEnd, from, to: end, ...off });
      const start = besideEnd.plus(kerfOf(0));
      if (start.compare(beside.to) < 0) {
        const left = beside.to.minus(start);
        offcuts.push(isRip ? { ...own, along: start, length: left } : { ...own, across: start, width: left });
      }
    }
    laid.push({ ...own, piece, turned, run });
  });
  return { run, pieces: laid, offcuts, cuts };
}

type Around = Readonly<Record<'left' | 'right' | 'near' | 'far', Length>>;

/** As it lies in the stock. */
function trimOf({ allowance, parts }: BlankToCut['blank'], turned: boolean): Around {
  const none = parts[0]?.width.minus(parts[0].width);
  if (none === undefined) throw new RangeError('a blank has at least one part');
  const { left, right, near, far } = allowance ?? { left: none, right: none, near: none, far: none };
  return turned ? { left: near, right: far, near: left, far: right } : { left, right, near, far };
}

/** Each edge that is trimmed is cut off before the pieces are: the fence is set to what is to remain. */
function squaring(
  area: LaidArea,
  across: Side,
  along: Side,
  name: string,
  depth: number,
  blanks: readonly string[],
): SawCut[] {
  const [right, far] = [area.across.plus(area.width), area.along.plus(area.length)];
  const cuts: SawCut[] = [];
  const own = { of: name, gives: name, blanks };
  const rip = (at: Length, setting: Length) =>
    cuts.push({ depth, direction: 'rip', setting, at, from: area.along, to: far, ...own });
  const cross = (at: Length, setting: Length) =>
    cuts.push({ depth, direction: 'crosscut', setting, at, from: across.from, to: across.to, ...own });
  if (across.from.compare(area.across) > 0) rip(across.from, right.minus(across.from));
  if (across.to.compare(right) < 0) rip(across.to, across.to.minus(across.from));
  if (along.from.compare(area.along) > 0) cross(along.from, far.minus(along.from));
  if (along.to.compare(far) < 0) cross(along.to, along.to.minus(along.from));
  return cuts;
}
