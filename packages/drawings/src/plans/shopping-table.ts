import {
  type BuyingPlan,
  byEachOther,
  type EdgingRow,
  type Evaluation,
  type HardwareRow,
  inPounds,
  isTogether,
  type Length,
  laidOut,
  type PiecesTogether,
  pieceWeight,
  Rational,
  reservesFor,
  type ShoppingRow,
  shoppingList,
  standingOfBoards,
  standingOfSheets,
  standingWords,
  stockAfter,
  type Units,
  type UnplannedPiece,
  type WoodRow,
} from '@fettle/engine';
import type { Table, TableRow } from '../cut-list-table.ts';
import { cleanName } from '../lettering.ts';
import { kindOfHardware } from '../schedules/set-words.ts';
import { isInch, shown, unitWords } from '../shown-lengths.ts';

/** What to buy for a piece as a table for people; as CSV it goes where the cut list goes. */

const COLUMNS = [
  'Buy',
  'Quantity',
  'Thickness',
  'Width',
  'Length',
  'Board feet',
  'Tallied',
  'Price',
  'Per',
  'Cost',
  'Notes',
] as const;

export function shoppingTable(evaluation: Evaluation, plan: BuyingPlan): Table {
  const { design } = evaluation;
  const { units } = design;
  const list = shoppingList(evaluation, plan);
  const total = list.cost === undefined ? [] : [totalRow(list.cost, list.isWholeCost)];
  return {
    title: `Shopping list of ${cleanName(design.name)}, sizes in ${unitWords(units)}`,
    columns: COLUMNS,
    rows: [
      ...list.rows.map((row) => rowOf(row, plan, units)),
      ...total,
      ...below(
        'Not in the plan: what cannot be cut from what is sold',
        list.unplanned.map((each) => unplannedRow(each, units)),
      ),
      ...below('Spare wood, not in the total: buy it only if a part is spoiled', reserveRows(plan, units)),
      ...below('Left over and worth keeping', keptRows(plan, units)),
      ...below('What the list rests on', [
        ...(isTogether(evaluation) ? [piecesRow(evaluation)] : []),
        weightRow(evaluation),
        {
          parts: [],
          cells: cells({ buy: 'Kerf', thickness: shown(plan.request.kerf.length, units), notes: kerfWords(plan) }),
        },
        ...(list.rows.some((row) => row.kind === 'board' && row.boardFeet !== undefined) ? [talliedRow()] : []),
      ]),
    ],
  };
}

/** Rows that are of another kind than those above stand below words of their own. */
function below(words: string, rows: readonly TableRow[]): readonly TableRow[] {
  return rows.length === 0 ? [] : [{ kind: 'heading', parts: [], cells: cells({ buy: words }) }, ...rows];
}

interface Said {
  readonly buy: string;
  readonly quantity?: string;
  readonly length?: string;
  readonly width?: string;
  readonly thickness?: string;
  readonly exact?: string;
  readonly tallied?: string;
  readonly price?: string;
  readonly per?: string;
  readonly cost?: string;
  readonly notes?: string;
}

function cells(said: Said): readonly string[] {
  const { buy, quantity, length, width, thickness, exact, tallied, price, per, cost, notes } = said;
  return [buy, quantity, thickness, width, length, exact, tallied, price, per, cost, notes].map((cell) => cell ?? '');
}

function rowOf(row: ShoppingRow, plan: BuyingPlan, units: Units): TableRow {
  switch (row.kind) {
    case 'sheet':
    case 'board':
      return woodRow(row, plan, units);
    case 'edging':
      return edgingRow(row, units);
    case 'hardware':
      return hardwareRow(row, units);
    default:
      return row satisfies never;
  }
}

function money({ price, cost }: Pick<WoodRow | HardwareRow, 'price' | 'cost'>): Pick<Said, 'price' | 'per' | 'cost'> {
  return {
    ...(price === undefined
      ? {}
      : { price: decimal(price.amount, 2), per: price.per === 'each' ? 'each' : 'board foot' }),
    cost: cost === undefined ? '' : decimal(cost, 2),
  };
}

function hardwareRow(row: HardwareRow, units: Units): TableRow {
  const { what, entry, quantity, inPairs, isPlaced, size, usualFor, screws, parts } = row;
  const screwWords = screws.map(
    ({ count, length, diameter }) => `${count} screws ${byEachOther(shown(length, units), shown(diameter, units))}`,
  );
  const counted = isPlaced
    ? []
    : [
        usualFor === undefined
          ? 'counted at what is usual: the shop does not say enough to place them'
          : `${usualFor}, as many as is usual${entry === undefined ? '; no longer than this' : ''}`,
      ];
  const least = what === 'anchor' && size !== undefined ? ['at least this long, to reach into studs or masonry'] : [];
  const notes = [...(inPairs ? ['pairs'] : []), ...least, ...counted, ...screwWords].join('; ');
  const buy = entry === undefined ? kindOfHardware(what) : cleanName(entry);
  return {
    parts,
    cells: cells({
      buy,
      quantity: `${quantity}`,
      ...(size === undefined ? {} : { length: shown(size.length, units) }),
      ...(size?.thickness === undefined ? {} : { thickness: shown(size.thickness, units) }),
      ...money(row),
      notes,
    }),
  };
}

function edgingRow(row: EdgingRow, units: Units): TableRow {
  const { stock, strips, length, longest, width, thickness, isFromBoards, parts } = row;
  const from = isFromBoards ? 'ripped from the boards above' : 'bought by the length, with some to spare';
  const each = strips === 1 ? 'one strip' : `length of all ${strips} strips, the longest ${shown(longest, units)}`;
  return {
    parts,
    cells: cells({
      buy: `Edging: ${cleanName(stock.name)}`,
      quantity: `${strips}`,
      length: shown(length, units),
      width: shown(width, units),
      thickness: shown(thickness, units),
      notes: `${each}; ${from}`,
    }),
  };
}

function woodRow(row: WoodRow, plan: BuyingPlan, units: Units): TableRow {
  const standing = row.isOnHand ? undefined : standingOf(row, plan);
  return {
    parts: row.parts,
    cells: cells({
      buy: `${cleanName(row.stock.name)}${row.isOnHand ? ', offcut on hand' : ''}`,
      quantity: `${row.quantity}`,
      length: shown(row.length, units),
      width: shown(row.width, units),
      thickness: row.thickness === undefined ? '' : shown(row.thickness, units),
      ...(row.boardFeet === undefined
        ? {}
        : { exact: decimal(row.boardFeet.exact, 2), tallied: decimal(row.boardFeet.tallied, 2) }),
      ...money(row),
      notes: [`${decimal(row.waste.times(100), 0)} % waste`, ...(standing === undefined ? [] : [standing])].join('; '),
    }),
  };
}

/** Of boards the plan of all lengths of one stock and thickness has one bound. */
function standingOf(row: WoodRow, plan: BuyingPlan): string | undefined {
  if (row.kind === 'sheet') {
    const own = plan.sheets.find(({ order }) => order.stock === row.stock);
    return own === undefined ? undefined : standingWords(standingOfSheets(own));
  }
  const own = plan.boards.find(
    ({ order }) => order.stock === row.stock && row.thickness?.equals(order.prepared.thickness) === true,
  );
  return own === undefined ? undefined : standingWords(standingOfBoards(own));
}

function totalRow(cost: Rational, isWhole: boolean): TableRow {
  const notes = isWhole ? '' : 'without what has no price';
  return { kind: 'total', parts: [], cells: cells({ buy: 'Total', cost: decimal(cost, 2), notes }) };
}

function reserveRows(plan: BuyingPlan, units: Units): readonly TableRow[] {
  return reservesFor(plan).map(({ stock, buy, covers }) => {
    const marks = [...new Set(covers.map(({ mark }) => cleanName(mark)))]
      .sort((a, b) => a.localeCompare(b, 'en', { numeric: true }))
      .join(', ');
    const any = `any one of ${marks}`;
    return {
      parts: [...new Set(covers.map(({ part }) => part.id))],
      cells: cells({
        buy: cleanName(stock.name),
        ...(buy === undefined
          ? { notes: `nothing that is sold is large enough to make again ${any}` }
          : {
              quantity: '1',
              length: shown(buy.length, units),
              width: shown(buy.width, units),
              thickness: buy.thickness === undefined ? '' : shown(buy.thickness, units),
              ...(buy.cost === undefined ? {} : { price: decimal(buy.cost, 2), per: 'each' }),
              notes: `to make again ${any}, for which too little is left over`,
            }),
      }),
    };
  });
}

/** What is left over and worth keeping; what the shop file already has is not told again. */
function keptRows(plan: BuyingPlan, units: Units): readonly TableRow[] {
  return stockAfter(laidOut(plan), units.unit).flatMap(({ stock, kept }) =>
    kept.map(({ length, width, thickness, count }) => ({
      parts: [],
      cells: cells({
        buy: cleanName(stock.name),
        quantity: `${count}`,
        length: shown(length, units),
        width: shown(width, units),
        thickness: thickness === undefined ? '' : shown(thickness, units),
      }),
    })),
  );
}

function unplannedRow({ piece, why, needs, most }: UnplannedPiece, units: Units): TableRow {
  const say = (length: Length | undefined) => (length === undefined ? '' : shown(length, units));
  const sizes = needs === undefined ? '' : `: needs ${say(needs)}, there is ${say(most)}`;
  return {
    parts: [piece.part.id],
    cells: cells({
      buy: `${cleanName(piece.label)}, mark ${cleanName(piece.mark)}`,
      notes: `${why}${sizes}`,
    }),
  };
}

function piecesRow({ pieces }: PiecesTogether): TableRow {
  const names = pieces.map(({ design }, at) => `${at + 1} ${cleanName(design.name)}`);
  const notes = `marks begin with the number of their piece: ${names.join(', ')}; buy and cut by this list, or by those of the single pieces, never by both`;
  return { parts: [], cells: cells({ buy: 'Pieces', quantity: `${pieces.length}`, notes }) };
}

function weightRow({ parts, design }: Evaluation): TableRow {
  const { kilograms, takenFor, unweighed } = pieceWeight(parts);
  const weight = isInch(design.units) ? `${decimal(inPounds(kilograms), 0)} lb` : `${decimal(kilograms, 0)} kg`;
  const woods = [...takenFor].map(([stock, wood]) => `${cleanName(stock)} as ${wood}`);
  const missing = unweighed.length === 0 ? [] : [`without ${unweighed.length} parts of unknown wood`];
  return {
    parts: [],
    cells: cells({
      buy: 'Weight',
      quantity: weight,
      notes: ['about, without hardware', ...missing, ...woods].join('; '),
    }),
  };
}

/** How the two columns of board feet differ, for whoever has never stood in a lumber yard. */
function talliedRow(): TableRow {
  const notes =
    'board feet as a hardwood yard counts them, board by board: whole feet of length, the surface rounded to a whole square foot, times the thickness; a price for a board foot is paid on these';
  return { parts: [], cells: cells({ buy: 'Tallied', notes }) };
}

function kerfWords({ request }: BuyingPlan): string {
  const { reason } = request.kerf;
  return reason.kind === 'assumed' ? `assumed: ${reason.because}` : 'as the shop says';
}

/** Rounded to so many places, a half away from nothing. */
function decimal(value: Rational, places: number): string {
  const whole = value
    .abs()
    .times(10 ** places)
    .plus(Rational.of(1, 2))
    .floor();
  return (Number(whole.numerator) / 10 ** places).toFixed(places);
}
