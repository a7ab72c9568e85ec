import { type BuyingPlan, cutSequence, type Evaluation, type NumberedCut, type Units } from '@fettle/engine';
import type { Table } from '../cut-list-table.ts';
import { cleanName } from '../lettering.ts';
import { shown, unitWords } from '../shown-lengths.ts';

/** The cuts in their order as a table, with what the fence is set to. */

const COLUMNS = [
  'Cut',
  'Stock',
  'Sheet or board',
  'Along or across its length',
  'From',
  'Fence or stop',
  'Gives',
  'Only once',
  'Notes',
] as const;

export function cuttingTable(evaluation: Evaluation, plan: BuyingPlan): Table {
  const { design } = evaluation;
  const sequence = cutSequence(plan);
  const firstOnce = new Map<string, NumberedCut>();
  for (const each of sequence) {
    if (each.isWithoutWayBack && !firstOnce.has(stockKey(each))) firstOnce.set(stockKey(each), each);
  }
  return {
    title: `Cuts of ${cleanName(design.name)} in their order, settings in ${unitWords(design.units)}`,
    columns: COLUMNS,
    rows: sequence.map((each, at) => ({
      parts: partsOf(each),
      cells: [
        `${each.number}`,
        cleanName(each.from.stock.name),
        `${each.from.number}`,
        each.cut.direction === 'rip' ? 'along' : 'across',
        fromWords(each),
        fence(each, sequence[at - 1], design.units),
        givesWords(each),
        each.isWithoutWayBack ? 'once' : '',
        [...(at === 0 ? [CODE_WORDS] : []), ...(each === firstOnce.get(stockKey(each)) ? [ONCE_WORDS] : [])].join('; '),
      ],
    })),
  };
}

/** Said once, at the first cut. */
const CODE_WORDS =
  'codes: 1b is the second piece cut from sheet or board 1, and 1b1 the first piece cut from 1b; what is left when nothing more is cut off has the code that follows';

/** Said at the first of each stock, and not again: at the saw one sees by the mark alone which cuts are meant. */
const ONCE_WORDS = 'from here on, where it says “once”: too little is left over to make the part again';

function stockKey({ from }: NumberedCut): string {
  return `${from.thickness?.exactInches ?? ''} ${from.stock.name}`;
}

/** What goes to the saw: the sheet or board itself, or what came off it. */
function fromWords({ from, cut: { of } }: NumberedCut): string {
  return of === `${from.number}` ? `${from.kind} ${from.number}` : cleanName(of);
}

/** What comes off as one and is then cut in its order says so. */
function givesWords({ cut: { gives, run } }: NumberedCut): string {
  if (gives === undefined) return 'offcut';
  return run === undefined ? cleanName(gives) : `${cleanName(gives)}: ${cleanName(run)}`;
}

/** Of a strip of edging the part that it goes on. */
function partsOf({ from, cut }: NumberedCut): readonly string[] {
  const own = from.pieces.filter(({ piece }) => cut.blanks.includes(piece.blank.id));
  return [...new Set(own.map(({ piece }) => piece.part.id))];
}

/** Where nothing has to be set anew the figure says so. */
function fence(each: NumberedCut, before: NumberedCut | undefined, units: Units): string {
  const figure = shown(each.cut.setting, units);
  const isSame = before?.cut.direction === each.cut.direction && before.cut.setting.equals(each.cut.setting);
  return isSame ? `${figure}, as before` : figure;
}
