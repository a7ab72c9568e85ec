import { shoppingList } from '@fettle/engine';
import { expect, test } from 'vitest';
import { pieceOfText, planned } from './evaluating.ts';

/** What is bought besides sheets and boards: hardware by its entry, edging by its length. */

const chest = (slides: string, doors: string) => `units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide, costs 80 each
board "ash" any thickness, 8 wide, 96 long, costs 6 a board foot
${slides}
${doors}
piece "chest" {
  size 30 wide, 36 high, 18 deep
  case {
    sides "ply" thick 3/4
    bottom "ply" thick 3/4, between sides
    top "ply" thick 3/4, between sides
  }
  face inset, gap 3/32 {
    stack {
      drawer "one" front 6 high
      drawer "two" front 7 high
      door "three" rest { single   hinges "butt" }
    }
    fronts "ply" thick 3/4
    drawers { sides "ply" thick 3/4   bottom "ply" thick 3/4   slides "slide 16" }
  }
}`;
const slide = 'slide "slide 16" side mount, 16 long, takes 1/2 each side, costs 14 each';
const hinge = 'hinge "butt" butt, 2-1/2 long, leaf 5/8 wide, 1/8 closed, costs 6 each';

async function hardware(text: string) {
  const piece = await pieceOfText(text);
  const { rows, isWholeCost } = shoppingList(piece, planned(piece));
  return {
    isWholeCost,
    rows: rows.flatMap((row) =>
      row.kind === 'hardware' ? [[row.what, row.entry, row.quantity, row.cost?.toString()]] : [],
    ),
  };
}

test('slides are counted and paid in pairs, hinges one by one', async () => {
  const { rows, isWholeCost } = await hardware(chest(slide, hinge));
  expect(rows).toContainEqual(['slide', 'slide 16', 2, '28']);
  expect(rows).toContainEqual(['hinge', 'butt', 2, '12']);
  // The screws that hold the fronts have no price.
  expect(isWholeCost).toBe(false);
  const boxless = chest(slide, hinge).replace(/ {6}drawer "\w+" front \d high\n/g, '');
  expect(await hardware(boxless)).toEqual({ isWholeCost: true, rows: [['hinge', 'butt', 2, '12']] });
});

test('drawer fronts are screwed on from inside: four each, as long as both allow', async () => {
  const piece = await pieceOfText(chest(slide, hinge));
  const screws = shoppingList(piece, planned(piece)).rows.flatMap((row) =>
    row.kind === 'hardware' && row.what === 'screw' ? [row] : [],
  );
  // 3/4 of the box and two thirds of 3/4 are 1-1/4.
  expect(screws.map(({ quantity, size, isPlaced }) => [quantity, size?.length.exactInches, isPlaced])).toEqual([
    [8, '5/4', false],
  ]);
});

test('a screw of the shop that suits is taken and paid where the text names none', async () => {
  const rows = async (screws: string) => {
    const piece = await pieceOfText(`${screws}\n${chest(slide, hinge)}`);
    return shoppingList(piece, planned(piece)).rows.flatMap((row) =>
      row.kind === 'hardware' && row.what === 'screw' ? [[row.entry, row.quantity, row.cost?.toString()]] : [],
    );
  };
  const screw = (long: string) => `screw "${long}" ${long} long, pilot 1/8, clearance 3/16, costs 0.1 each`;
  // 3/4 of the box are passed, 1/4 has to hold, and no more than 1-1/4 may go in.
  expect(await rows([screw('3/4'), screw('1'), screw('1-1/8'), screw('1-3/8')].join('\n'))).toEqual([
    ['1-1/8', 8, '4/5'],
  ]);
  expect(await rows(screw('7/8'))).toEqual([[undefined, 8, undefined]]);
});

test('screws of slides are paid by themselves where they have a price, and are told with the slides where not', async () => {
  const holes = (costs: string) =>
    `${slide} { hole 1 from front   hole 14 from front   screws 1/2 long, 1/8 thick${costs} }`;
  const paid = await hardware(chest(holes(', costs 0.05 each'), hinge));
  // Two drawers, two slides each, two screws in each.
  expect(paid.rows).toContainEqual(['screw', undefined, 8, '2/5']);
  const piece = await pieceOfText(chest(holes(''), hinge));
  const { rows } = shoppingList(piece, planned(piece));
  const told = rows.find((row) => row.kind === 'hardware' && row.what === 'slide');
  expect(told?.kind === 'hardware' && told.screws.map(({ count }) => count)).toEqual([8]);
});

test('shelf pins are paid where their rows say what one costs; a vent is an opening, and nothing of it is bought', async () => {
  const shelves = (costs: string) =>
    chest(slide, hinge).replace(
      'hinges "butt"',
      `hinges "butt"   vent 4 wide, 1 high, 3 up   shelves 1 adjustable { pins 3/8 deep${costs} }`,
    );
  expect((await hardware(shelves(', costs 0.25 each'))).rows).toContainEqual(['shelf-pin', undefined, 4, '1']);
  const { rows } = await hardware(shelves(''));
  expect(rows).toContainEqual(['shelf-pin', undefined, 4, undefined]);
  expect(rows.map(([what]) => what)).not.toContain('vent');
});

const fastened = (join: string, more = '') => `units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide, costs 80 each
board "poplar" any thickness, 8 wide, 96 long, costs 4 a board foot
dowel "3/8" 3/8 thick, 2 long, costs 0.05 each
screw "No. 8" 1-3/4 long, pilot 1/8, clearance 3/16, costs 0.1 each
tenon "small" 5/16 thick, 3/4 wide, 1-1/2 long
piece "box" {
  size 30 wide, 36 high, 12 deep
  case {
    sides "ply" thick 3/4
    bottom "ply" thick 3/4, between sides
    top "ply" thick 3/4, ${more === '' ? 'between sides' : more}
    ${join}
  }
}`;

test('dowels, screws and loose tenons of the joints are counted hole by hole, and paid where the shop says', async () => {
  for (const [join, kind, holes, cost] of [
    ['join dowels "3/8"', 'dowel', 'dowel-hole', '1/20'],
    ['join screws "No. 8"', 'screw', 'screw-hole', '1/10'],
    ['join loose tenons "small"', 'loose-tenon', 'mortise', undefined],
  ] as const) {
    const piece = await pieceOfText(fastened(join));
    const row = shoppingList(piece, planned(piece)).rows.find((each) => each.kind === 'hardware' && each.what === kind);
    if (row?.kind !== 'hardware') throw new Error(`no ${kind} is bought`);
    const sides = piece.parts.filter(({ role }) => role === 'side');
    const inSides = sides.flatMap(({ features }) => features.filter((each) => each.kind === holes));
    expect(inSides.length).toBeGreaterThan(0);
    expect(row.quantity).toBe(inSides.length);
    expect(row.cost?.toString()).toBe(
      cost === undefined ? undefined : row.price?.amount.times(inSides.length).toString(),
    );
    expect(row.price?.amount.toString()).toBe(cost);
  }
});

test('a top that lies on the case is screwed on through the stretchers, unless it is glued', async () => {
  const screws = async (fixing: string) => {
    const text = fastened('stretchers 3 wide of "poplar" thick 3/4, under top', `over sides { ${fixing} }`);
    const piece = await pieceOfText(text);
    return shoppingList(piece, planned(piece)).rows.flatMap((row) =>
      row.kind === 'hardware' ? [[row.what, row.quantity, row.size?.length.exactInches]] : [],
    );
  };
  // Stretchers 28-1/2 long: the first screws 2 in, 24-1/2 between them in four spaces of at most 8: five in each.
  expect(await screws('slotted behind')).toEqual([['screw', 10, '5/4']]);
  expect(await screws('glued')).toEqual([]);
});

test('a runner below the middle of a drawer is no pair', async () => {
  const { rows } = await hardware(chest(slide.replace('side mount', 'centre mount'), hinge));
  expect(rows).toContainEqual(['slide', 'slide 16', 2, '28']);
});

test('hardware without a price is told apart from the cost', async () => {
  const { rows, isWholeCost } = await hardware(chest(slide, hinge.replace(', costs 6 each', '')));
  expect(rows).toContainEqual(['hinge', 'butt', 2, undefined]);
  expect(isWholeCost).toBe(false);
});

const edged = (edging: string) => `units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide, costs 80 each
board "ash" any thickness, 8 wide, 96 long, costs 6 a board foot
veneer "ash tape"
piece "box" {
  size 30 wide, 36 high, 12 deep
  case {
    sides "ply" thick 3/4 { edging ${edging} }
    bottom "ply" thick 3/4, between sides
  }
}`;

test('edging of boards is as long as its edges, and paid with the boards it is ripped from', async () => {
  const piece = await pieceOfText(edged('of "ash" thick 1/4 at front'));
  const list = shoppingList(piece, planned(piece));
  const rows = list.rows.flatMap((row) => (row.kind === 'edging' ? [row] : []));
  expect(
    rows.map(({ stock, strips, length, width, thickness, isFromBoards }) => [
      stock.name,
      strips,
      ...[length, width, thickness].map(({ exactInches }) => exactInches),
      isFromBoards,
    ]),
  ).toEqual([['ash', 2, '72', '3/4', '1/4', true]]);
  expect(list.rows.some((row) => row.kind === 'board')).toBe(true);
  expect(list.isWholeCost).toBe(true);
});

test('edging that comes in no boards is bought by its length, and not left out', async () => {
  const piece = await pieceOfText(edged('of "ash tape" thick 1/42 at front'));
  const plan = planned(piece);
  const rows = shoppingList(piece, plan).rows.flatMap((row) => (row.kind === 'edging' ? [row] : []));
  expect(rows.map(({ isFromBoards, length }) => [isFromBoards, length.exactInches])).toEqual([[false, '72']]);
  expect(plan.unplanned).toEqual([]);
  expect(plan.boards).toEqual([]);
});

test('screws for the wall are listed with the least length that holds', async () => {
  const piece = await pieceOfText(`units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide
sheet "thin" actual 1/4, 96 long, 48 wide
piece "rack" {
  size 24 wide, 24 high, 10 deep
  case {
    sides "ply"
    bottom "ply" between sides
    top "ply" between sides
    back "thin" in groove 1/4 deep, 1 in from back edge
    nailers 2 strips, 3 wide of "ply", by dowels
    hung on wall, 50 above floor
  }
}`);
  const rows = shoppingList(piece, planned(piece)).rows.flatMap((row) =>
    row.kind === 'hardware' && row.what === 'anchor' ? [[row.quantity, row.size?.length.exactInches]] : [],
  );
  // The thin back 1/4", the strip 3/4" and 1/2" of plaster board are passed, and 1-1/2" holds (common practice, no source).
  expect(rows).toEqual([[4, '3']]);
});
