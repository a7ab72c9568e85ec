import {
  type Cell,
  type Evaluation,
  evaluatePiece,
  type Figure,
  given,
  Length,
  type PieceDesign,
  Rational,
  type Span,
} from '@fettle/engine';
import {
  door,
  drawer,
  drawers,
  front,
  material,
  open,
  panel,
  partition,
  place,
  rest,
  row,
  share,
  sideMount,
  stack,
  webFrame,
  written,
} from '../engine/design-builder.ts';
import { drawerStack, sideboard } from '../engine/sideboard-design.ts';

/** Pieces to draw, ordinary and odd, each run through the engine. */

export function evaluatedSideboard(): Evaluation {
  return evaluatePiece(sideboard());
}

/** Blankets 11 inches high: the fronts and gaps no longer add up. */
export function overfullSideboard(): Evaluation {
  return evaluatePiece(sideboard(drawerStack(front('11'))));
}

interface Asked {
  readonly name?: string;
  readonly wide: Figure;
  readonly high: Figure;
  readonly deep?: Figure;
  readonly gap?: Figure;
  readonly inMillimetres?: boolean;
  /** No top, plinth, sides or bottom. */
  readonly bare?: boolean;
  readonly root?: Cell;
}

export function mm(millimetres: number): Figure {
  return given(Length.millimetres(millimetres), place());
}

export function pieceDesign(asked: Asked): PieceDesign {
  const { carcase } = sideboard();
  return {
    name: asked.name ?? 'Trial piece',
    origin: place(),
    units: asked.inMillimetres ? { unit: 'mm', ruler: Rational.of(1, 2) } : { unit: 'in', ruler: Rational.of(1, 32) },
    size: { origin: place(), width: asked.wide, height: asked.high, depth: asked.deep ?? written('18') },
    carcase: asked.bare ? { origin: place() } : carcase,
    ...(asked.root === undefined
      ? {}
      : {
          face: {
            origin: place(),
            fit: { kind: 'inset', gap: asked.gap ?? written('3/32') },
            root: asked.root,
            fronts: panel('1/2'),
            drawers: drawers({ slides: sideMount('side mount 14', '14') }),
          },
        }),
    unchecked: [],
  };
}

function shelves(count: number) {
  return { origin: place(), count, adjustable: true, material: material('3/4'), shyEachEnd: written('1/16') };
}

function manyDrawers(count: number, prefix: string): Cell[] {
  return Array.from({ length: count }, (_, at) =>
    drawer(`${prefix} ${at + 1}`, share(1), { id: `${prefix}/${at + 1}` }),
  );
}

function frames(count: number, prefix: string) {
  return Array.from({ length: count }, (_, at) => webFrame(`${prefix}/frame-${at + 1}`, '3/4'));
}

function partitions(count: number, prefix: string) {
  return Array.from({ length: count }, (_, at) => partition(`${prefix}/partition-${at + 1}`, '3/4'));
}

/** A drawer front 1 inch high over others, and a single door with a shelf. */
export function pencilChest(): Evaluation {
  const cells = [
    drawer('pencils', front('1')),
    drawer('tools', front('3')),
    door('A very long name that no label could ever hold whole in its place', rest, {
      id: 'door',
      shelves: shelves(1),
    }),
  ];
  return evaluatePiece(
    pieceDesign({
      name: 'Pencil chest',
      wide: written('30'),
      high: written('34'),
      root: stack('stack', rest, cells, frames(2, 'stack')),
    }),
  );
}

export function vanity(): Evaluation {
  const cells = [drawer('brushes', front('6')), door('basin', rest, { leaves: 2, shelves: shelves(1) })];
  return evaluatePiece(
    pieceDesign({
      name: 'Bathroom vanity',
      inMillimetres: true,
      wide: mm(900),
      high: mm(820),
      deep: mm(480),
      gap: mm(3),
      root: stack('stack', rest, cells, frames(1, 'stack')),
    }),
  );
}

/** Open spaces with shelves, so that shelves and back are seen. */
export function bookcase(): Evaluation {
  const cells = [open('novels', share(1), { shelves: shelves(3) }), open('atlases', share(1), { shelves: shelves(2) })];
  return evaluatePiece(
    pieceDesign({
      name: 'Bookcase',
      wide: written('60'),
      high: written('72'),
      deep: written('12'),
      root: row('row', rest, cells, partitions(1, 'row')),
    }),
  );
}

export function fortyInARow(): Evaluation {
  const root = row('row', rest, manyDrawers(40, 'row'), partitions(39, 'row'));
  return evaluatePiece(pieceDesign({ wide: written('1000'), high: written('2'), bare: true, root }));
}

export function fortyInAStack(): Evaluation {
  const root = stack('stack', rest, manyDrawers(40, 'stack'), frames(39, 'stack'));
  return evaluatePiece(pieceDesign({ wide: written('30'), high: written('50'), root }));
}

export function needle(): Evaluation {
  const root = stack('stack', rest, manyDrawers(40, 'stack'), frames(39, 'stack'));
  return evaluatePiece(pieceDesign({ wide: written('2'), high: written('1000'), bare: true, root }));
}

/** Eight stacks of five, all with different divisions. */
export function wallOfForty(): Evaluation {
  const columns = Array.from({ length: 8 }, (_, column) => {
    const cells = Array.from({ length: 5 }, (_, at) =>
      drawer(`box ${column + 1}.${at + 1}`, share(1 + ((at + column) % 3)), { id: `${column}/${at}` }),
    );
    return stack(`column-${column}`, share(1), cells, frames(4, `column-${column}`));
  });
  return evaluatePiece(
    pieceDesign({
      name: 'Workshop wall',
      inMillimetres: true,
      wide: mm(2400),
      high: mm(1800),
      deep: mm(400),
      gap: mm(3),
      root: row('row', rest, columns, partitions(7, 'row')),
    }),
  );
}

export function spiceBox(): Evaluation {
  return evaluatePiece(
    pieceDesign({
      name: 'Spice box',
      inMillimetres: true,
      wide: mm(120),
      high: mm(90),
      deep: mm(60),
      gap: mm(1),
      bare: true,
      root: drawer('spice', rest),
    }),
  );
}

/** A wall cupboard: face frame, overlay doors, and a lid over them. */
export function wallCupboard(): Evaluation {
  const cells = [
    drawer('hatch', front('6'), { what: 'lid' }),
    door('plates', rest, { leaves: 2, shelves: shelves(2) }),
  ];
  const design = pieceDesign({
    name: 'Wall cupboard',
    wide: written('30'),
    high: written('36'),
    deep: written('13'),
    root: stack('stack', rest, cells, frames(1, 'stack')),
  });
  const { face } = design;
  if (face === undefined) throw new Error('the cupboard has a face');
  const { top, plinth, ...carcase } = design.carcase;
  if (top === undefined || plinth === undefined) throw new Error('the case has a top and a plinth to leave out');
  const fit = { kind: 'overlay', reveal: written('1/4'), gap: written('1/8'), how: 'by', by: written('1/4') } as const;
  const frame = { ...panel('3/4'), stiles: written('1-1/2'), topRail: written('1-1/2'), bottomRail: written('1-1/2') };
  return evaluatePiece({ ...design, carcase: { ...carcase, frame }, face: { ...face, fit } });
}

/** A layout whose second front was moved 1 inch up into the first, as no sound design would have it. */
export function overlappingFronts(): Evaluation {
  const cells = [drawer('upper', front('6')), drawer('lower', front('7')), drawer('rest', rest)];
  const evaluation = evaluatePiece(
    pieceDesign({ wide: written('20'), high: written('34'), root: stack('stack', rest, cells, frames(2, 'stack')) }),
  );
  const { face } = evaluation.layout;
  if (face === undefined) throw new Error('the face is laid out');
  const up = (span: Span): Span => ({ ...span, start: raised(span.start), end: raised(span.end) });
  const moved = face.cells.map((cell) =>
    cell.cell.name === 'lower' ? { ...cell, leaves: cell.leaves.map((leaf) => ({ ...leaf, y: up(leaf.y) })) } : cell,
  );
  return { ...evaluation, layout: { ...evaluation.layout, face: { ...face, cells: moved } } };
}

function raised(figure: Figure): Figure {
  return { ...figure, length: figure.length.plus(Length.inches(1)) };
}

export function caseOnly(): Evaluation {
  const { face, ...withoutFace } = sideboard();
  if (face === undefined) throw new Error('the sideboard has a face to leave out');
  return evaluatePiece(withoutFace);
}

export function withoutHeight(): Evaluation {
  const design = sideboard();
  const { height, ...size } = design.size;
  if (height === undefined) throw new Error('the sideboard has a height to leave out');
  return evaluatePiece({ ...design, size });
}

/** A name that wants to be markup, in every place a name can stand. */
export function named(name: string): Evaluation {
  const root = row(
    'row',
    rest,
    [drawer(name, share(1), { id: `row/${name}` }), door(name, share(2), { id: `row/${name}/2`, leaves: 2 })],
    partitions(1, 'row'),
  );
  return evaluatePiece(pieceDesign({ name, wide: written('40'), high: written('30'), root }));
}

export const gallery: Readonly<Record<string, () => Evaluation>> = {
  sideboard: evaluatedSideboard,
  'overfull sideboard': overfullSideboard,
  'pencil chest': pencilChest,
  vanity,
  bookcase,
  'wall cupboard': wallCupboard,
  'forty in a row': fortyInARow,
  'forty in a stack': fortyInAStack,
  needle,
  'wall of forty': wallOfForty,
  'spice box': spiceBox,
  'case only': caseOnly,
  'without height': withoutHeight,
};
