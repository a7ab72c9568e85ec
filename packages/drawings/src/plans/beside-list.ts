import { byEachOther, groupedBy, type LaidPiece, type LaidRun, type NumberedCut, type Units } from '@fettle/engine';
import { cleanName, fitText, LETTER_HEIGHTS_MM } from '../lettering.ts';
import type { Box, Group, Text } from '../primitives.ts';
import { figureOnSheet } from '../shown-lengths.ts';

/** What finds no room on the stock itself, as a list beside it: cuts, pieces too small for their size, fronts in order. */

/** Of one page: what its blocks could not say. */
export interface Unsaid {
  readonly cuts: readonly NumberedCut[];
  readonly pieces: readonly LaidPiece[];
  readonly runs: readonly LaidRun[];
}

const HEIGHT = LETTER_HEIGHTS_MM.small;
/** From one line of lettering to the next. */
const PITCH = 4;
/** Of one column of the list, in mm. */
export const LIST_COLUMN = 74;
const GUTTER = 4;

interface Line {
  readonly text: string;
  readonly isHeading: boolean;
}

export function listLines(
  { cuts, pieces, runs }: Unsaid,
  marksOf: ReadonlyMap<string, string>,
  units: Units,
): readonly Line[] {
  const section = (heading: string, lines: readonly string[]): readonly Line[] =>
    lines.length === 0
      ? []
      : [{ text: heading, isHeading: true }, ...lines.map((text) => ({ text, isHeading: false }))];
  return [
    ...section(
      'Cut in their order from one blank',
      runs.flatMap((run) => runWords(run, marksOf, units)),
    ),
    ...section('Cuts too small to label', mergedCuts(cuts, units)),
    ...section('Sizes too small to label', mergedPieces(pieces, units)),
  ];
}

/** How many columns a list of so many lines takes, where there is room for so much height. */
export function listColumns(lines: number, high: number): number {
  return Math.ceil(lines / Math.max(1, Math.floor(high / PITCH)));
}

/** Beyond the last column the list breaks off and says so. */
export function besideList(lines: readonly Line[], { left, top, right, bottom }: Box): Group {
  const each = Math.max(1, Math.floor((bottom - top) / PITCH));
  const columns = Math.max(1, Math.floor((right - left + GUTTER) / LIST_COLUMN));
  const room = each * columns;
  const shown = lines.length <= room ? lines : lines.slice(0, room - 1);
  const rest = lines.length - shown.length;
  const all = rest === 0 ? shown : [...shown, { text: `and ${rest} more: see the list of cuts`, isHeading: false }];
  return {
    kind: 'group',
    id: 'beside',
    name: 'beside',
    children: all.map(({ text, isHeading }, at): Text => {
      const column = Math.floor(at / each);
      return {
        kind: 'text',
        role: isHeading ? 'heading' : 'note',
        text: fitText(text, HEIGHT, LIST_COLUMN - GUTTER) ?? '',
        at: { x: left + column * LIST_COLUMN, y: top + ((at % each) + 0.8) * PITCH },
        height: HEIGHT,
        anchor: 'start',
        runs: 'across',
      };
    }),
  };
}

function runWords(run: LaidRun, marksOf: ReadonlyMap<string, string>, units: Units): readonly string[] {
  const { name, label, blanks, length, width, turned } = run;
  const [along, across] = turned ? [width, length] : [length, width];
  return [
    `${name}  ${cleanName(label)}: ${blanks.map((id) => marksOf.get(id) ?? '').join(', ')}`,
    byEachOther(figureOnSheet(along, units), figureOnSheet(across, units)),
  ];
}

/** Cuts of one setting that follow each other stand in one line. */
function mergedCuts(cuts: readonly NumberedCut[], units: Units): readonly string[] {
  const groups: NumberedCut[][] = [];
  for (const each of [...cuts].sort((a, b) => a.number - b.number)) {
    const last = groups.at(-1)?.at(-1);
    const goesOn =
      last !== undefined &&
      last.number + 1 === each.number &&
      last.cut.direction === each.cut.direction &&
      last.cut.setting.equals(each.cut.setting);
    if (goesOn) groups.at(-1)?.push(each);
    else groups.push([each]);
  }
  return groups.map((group) => {
    const [first, last] = [group[0], group.at(-1)];
    if (first === undefined || last === undefined) return '';
    const way = first.cut.direction === 'rip' ? 'along' : 'across';
    const gives = [...new Set(group.map(({ cut }) => (cut.gives === undefined ? 'offcut' : cleanName(cut.gives))))];
    const given = gives.length > 2 ? `${gives[0]} to ${gives.at(-1)}` : gives.join(', ');
    return `${spanOf(first.number, last.number)}  ${way} at ${figureOnSheet(first.cut.setting, units)}: ${given}`;
  });
}

function spanOf(first: number, last: number): string {
  if (first === last) return `${first}`;
  return last === first + 1 ? `${first}, ${last}` : `${first} to ${last}`;
}

function mergedPieces(pieces: readonly LaidPiece[], units: Units): readonly string[] {
  const sizeOf = ({ length, width, turned }: LaidPiece) => {
    const [along, across] = turned ? [width, length] : [length, width];
    return byEachOther(figureOnSheet(along, units), figureOnSheet(across, units));
  };
  const inOrder = [...pieces].sort((a, b) => markOf(a).localeCompare(markOf(b), 'en', { numeric: true }));
  return [...groupedBy(inOrder, (piece) => `${markOf(piece)} ${sizeOf(piece)}`).values()].map((group) => {
    const [first] = group;
    const times = group.length === 1 ? '' : ` (${group.length} of them)`;
    return `${markOf(first)}${times}  ${sizeOf(first)}`;
  });
}

/** The mark of a piece, with its number where it is a stave. */
export function markOf({ piece, stave }: Pick<LaidPiece, 'piece' | 'stave'>): string {
  return cleanName(piece.mark) + (stave === undefined ? '' : `.${stave.number}`);
}
