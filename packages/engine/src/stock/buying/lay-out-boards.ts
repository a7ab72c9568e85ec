import { Length } from '../../length/length.ts';
import type { Band, CutBoard } from '../boards/board-problem.ts';
import { type BoardOrder, lengthOf } from './buying-request.ts';
import type { LaidArea, LaidPiece, LaidRun, LaidStock, PartedPiece, SawCut } from './laid-stock.ts';
import { layOutRun } from './lay-out-runs.ts';
import { nameInside } from './piece-names.ts';
import type { PlannedBoards } from './plan-buying.ts';

/** Boards as they are cut, numbered from `first`. Staves of one part are counted as they come. */
export function layOutBoards({ order, plan }: PlannedBoards, first: number): readonly LaidStock[] {
  const staves = new Map<string, number>();
  return plan.boards.map((cut, at) => new BoardReader(order, cut, staves).read(first + at));
}

/** What goes to the saw, and what comes off it. */
type Names = Required<Pick<SawCut, 'of' | 'gives'>>;

class BoardReader {
  readonly #order: BoardOrder;
  readonly #cut: CutBoard;
  readonly #staves: Map<string, number>;
  readonly #pieces: LaidPiece[] = [];
  readonly #runs: LaidRun[] = [];
  readonly #parted: PartedPiece[] = [];
  readonly #offcuts: LaidArea[] = [];
  readonly #cuts: SawCut[] = [];
  /** Whether bands follow each other along the board. */
  readonly #bandsAlong: boolean;
  /** How many changes of direction come before the bands: those of trimming. */
  #before = 0;

  constructor(order: BoardOrder, cut: CutBoard, staves: Map<string, number>) {
    this.#order = order;
    this.#cut = cut;
    this.#staves = staves;
    this.#bandsAlong = cut.order === 'crosscut first';
  }

  read(number: number): LaidStock {
    const { prepared, stock } = this.#order;
    const { problem, thickness } = prepared;
    const kind = problem.boards.find(({ id }) => id === this.#cut.board);
    const offcut = this.#order.offers.get(this.#cut.board)?.offcut;
    const length = kind?.length ?? 0;
    const width = kind?.width ?? 0;
    const bandsEnd = this.#bandsAlong ? length - problem.endTrim : width - problem.edgeTrim;
    const [insideFrom, insideEnd] = this.#bandsAlong
      ? [problem.edgeTrim, width - problem.edgeTrim]
      : [problem.endTrim, length - problem.endTrim];
    const kerf = this.#bandsAlong ? problem.crosscutKerf : problem.ripKerf;
    this.#trim(length, width, `${number}`);
    this.#cut.bands.forEach((band, at) => {
      this.#band(band, { of: `${number}`, gives: nameInside(`${number}`, 0, at) }, insideFrom, insideEnd, bandsEnd);
    });
    const last = this.#cut.bands[this.#cut.bands.length - 1];
    const free = last === undefined ? 0 : last.at + last.size + kerf;
    this.#offcut(free, bandsEnd, insideFrom, insideEnd);
    return {
      number,
      kind: 'board',
      stock,
      thickness,
      length: this.#length(length),
      width: this.#length(width),
      lost: { ends: this.#length(problem.endTrim), edges: this.#length(problem.edgeTrim) },
      ...(offcut === undefined ? {} : { offcut }),
      pieces: this.#pieces,
      runs: this.#runs,
      parted: this.#parted,
      offcuts: this.#offcuts,
      cuts: this.#cuts,
    };
  }

  /**
   * One end and one edge are cut straight first: everything else is measured from them. The others are cut as well where
   * something ends with them; elsewhere they stay on what is left over.
   */
  #trim(length: number, width: number, of: string): void {
    const { endTrim, edgeTrim } = this.#order.prepared.problem;
    const [far, right] = [length - endTrim, width - edgeTrim];
    const names = { of, gives: 'trimmed board' };
    if (edgeTrim > 0) this.#saw(0, 'rip', width - edgeTrim, edgeTrim, 0, length, names, []);
    if (edgeTrim > 0 && this.#reaches(right, 'rip')) this.#saw(0, 'rip', right - edgeTrim, right, 0, length, names, []);
    if (endTrim > 0) this.#saw(0, 'crosscut', length - endTrim, endTrim, edgeTrim, right, names, []);
    if (endTrim > 0 && this.#reaches(far, 'crosscut')) {
      this.#saw(0, 'crosscut', far - endTrim, far, edgeTrim, right, names, []);
    }
    if (endTrim > 0 || edgeTrim > 0) this.#before = 1;
  }

  /** Whether a piece ends where the last edge or end would be trimmed. */
  #reaches(end: number, direction: SawCut['direction']): boolean {
    const isOfBands = this.#bandsAlong === (direction === 'crosscut');
    return this.#cut.bands.some((band) => {
      if (isOfBands) return band.at + band.size >= end;
      const last = band.blanks.at(-1);
      const sizes = this.#order.prepared.problem.blanks.find(({ id }) => id === last?.blank);
      if (last === undefined || sizes === undefined) return false;
      return last.at + (this.#bandsAlong ? sizes.width : sizes.length) >= end;
    });
  }

  #band(band: Band, names: Names, insideFrom: number, insideEnd: number, bandsEnd: number): void {
    const { problem } = this.#order.prepared;
    const [first, second] = this.#bandsAlong ? (['crosscut', 'rip'] as const) : (['rip', 'crosscut'] as const);
    const [kerf, firstKerf] = this.#bandsAlong
      ? [problem.ripKerf, problem.crosscutKerf]
      : [problem.crosscutKerf, problem.ripKerf];
    const bandEnd = band.at + band.size;
    const all = band.blanks.flatMap(({ blank }) => this.#idsIn(blank));
    if (bandEnd < bandsEnd) this.#saw(0, first, band.size, bandEnd, insideFrom, insideEnd, names, all);
    const name = names.gives;
    const hasName = band.blanks.length > 1 || bandEnd < bandsEnd;
    if (hasName) {
      this.#parted.push({ ...this.#area(band.at, band.size, insideFrom, insideEnd - insideFrom), name });
    }
    // What is left of the board for one piece alone is still the board.
    const of = hasName ? name : names.of;
    let free = insideFrom;
    band.blanks.forEach(({ blank, at }, place) => {
      const sizes = problem.blanks.find(({ id }) => id === blank);
      const [piece, ...others] = this.#order.blanks.get(blank)?.pieces ?? [];
      if (sizes === undefined || piece === undefined) return;
      const [inside, through] = this.#bandsAlong ? [sizes.width, sizes.length] : [sizes.length, sizes.width];
      const stave = this.#stave(blank);
      const whole = nameInside(name, 1, place);
      const isRun = others.length > 0;
      const gives = isRun ? whole : stave === undefined ? piece.mark : `${piece.mark}.${stave.number}`;
      const ids = this.#idsIn(blank);
      const comesOff = at + inside < insideEnd;
      if (comesOff) this.#saw(1, second, inside, at + inside, band.at, bandEnd, { of, gives }, ids, blank);
      // A last cut along the band's own direction takes off what the piece is smaller by.
      if (through < band.size) {
        const onSaw = { of: comesOff ? gives : of, gives };
        this.#saw(2, first, through, band.at + through, at, at + inside, onSaw, ids, blank);
        this.#offcut(band.at + through + firstKerf, bandEnd, at, at + inside);
      }
      const area = this.#area(band.at, through, at, inside);
      if (isRun) this.#run(blank, area, whole);
      else this.#pieces.push({ ...area, piece, turned: false, ...(stave === undefined ? {} : { stave }) });
      free = at + inside + kerf;
    });
    this.#offcut(band.at, bandEnd, free, insideEnd);
  }

  #run(blank: string, area: LaidArea, name: string): void {
    const own = this.#order.blanks.get(blank);
    if (own === undefined) return;
    const laid = layOutRun(own, area, false, name, 3 + this.#before);
    this.#runs.push(laid.run);
    this.#pieces.push(...laid.pieces);
    this.#offcuts.push(...laid.offcuts);
    this.#cuts.push(...laid.cuts);
  }

  #idsIn(blank: string): readonly string[] {
    return this.#order.blanks.get(blank)?.pieces.map((piece) => piece.blank.id) ?? [];
  }

  #stave(blank: string): LaidPiece['stave'] {
    const of = this.#order.prepared.glueUps.get(blank)?.staves ?? 1;
    if (of === 1) return undefined;
    const number = (this.#staves.get(blank) ?? 0) + 1;
    this.#staves.set(blank, number);
    return { number, of };
  }

  #saw(
    depth: number,
    direction: SawCut['direction'],
    setting: number,
    at: number,
    from: number,
    to: number,
    names: Names,
    blanks: readonly string[],
    blank?: string,
  ): void {
    const run = blank === undefined ? undefined : this.#order.blanks.get(blank)?.label;
    this.#cuts.push({
      depth: depth + this.#before,
      direction,
      setting: this.#length(setting),
      at: this.#length(at),
      from: this.#length(from),
      to: this.#length(to),
      ...names,
      blanks,
      ...(run === undefined ? {} : { run }),
    });
  }

  #offcut(from: number, to: number, insideFrom: number, insideEnd: number): void {
    if (to > from && insideEnd > insideFrom) {
      this.#offcuts.push(this.#area(from, to - from, insideFrom, insideEnd - insideFrom));
    }
  }

  /** Through the bands and inside them, turned into along and across. */
  #area(at: number, through: number, insideAt: number, inside: number): LaidArea {
    const [one, other] = [
      { at: this.#length(at), size: this.#length(through) },
      { at: this.#length(insideAt), size: this.#length(inside) },
    ];
    const [along, across] = this.#bandsAlong ? [one, other] : [other, one];
    return { along: along.at, across: across.at, length: along.size, width: across.size };
  }

  #length(units: number): Length {
    return units === 0 ? Length.zero : lengthOf(units, this.#order.prepared.scale);
  }
}
