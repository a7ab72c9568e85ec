import {
  assumed,
  type Cell,
  type Divider,
  type Evaluation,
  evaluatePiece,
  type Figure,
  type FrontCell,
  given,
  Length,
  type Material,
  type PanelDesign,
  type PieceDesign,
  Rational,
  type SizeAsked,
} from '@fettle/engine';
import type { Origin } from '@fettle/findings';

/**
 * Pieces to draw, written as designs and run through the engine: the games sideboard, and makers of odd ones. Origins
 * are made up but distinct, as if each statement stood on a line of its own.
 */

let line = 0;
export function origin(): Origin {
  line += 1;
  return { unit: 'piece', start: line * 100, end: line * 100 + 20 };
}

export function inches(n: number, d = 1): Figure {
  return given(Length.inches(n, d), origin());
}

export function panel(n: number, d: number): PanelDesign {
  return { origin: origin(), thickness: inches(n, d) };
}

function material(n: number, d: number): Material {
  return { thickness: inches(n, d) };
}

export function common(id: string, along: SizeAsked, name?: string) {
  return { id, along, origin: origin(), sizeOrigin: origin(), ...(name === undefined ? {} : { name }) };
}

export const rest: SizeAsked = { kind: 'rest' };
export const share = (weight: number): SizeAsked => ({ kind: 'share', weight: Rational.of(weight) });
export const front = (n: number, d = 1): SizeAsked => ({ kind: 'fixed', basis: 'front', figure: inches(n, d) });
export const opening = (n: number, d = 1): SizeAsked => ({ kind: 'fixed', basis: 'opening', figure: inches(n, d) });

export function drawer(id: string, along: SizeAsked, name?: string): FrontCell {
  return { ...common(id, along, name), kind: 'front', what: 'drawer', leaves: 1 };
}

export function doors(id: string, along: SizeAsked, name?: string, leaves: 1 | 2 = 2, shelves = 0): FrontCell {
  return {
    ...common(id, along, name),
    kind: 'front',
    what: 'door',
    leaves,
    ...(shelves === 0
      ? {}
      : {
          shelves: {
            origin: origin(),
            count: shelves,
            adjustable: true,
            material: material(3, 4),
            shyEachEnd: assumed(Length.inches(1, 16), 'room to lift it out'),
          },
        }),
  };
}

export function partition(id: string): Divider {
  return { id, origin: origin(), form: 'partition', material: material(3, 4), mode: 'shown', anchor: 'centre' };
}

export function webFrame(id: string): Divider {
  return {
    id,
    origin: origin(),
    form: 'web-frame',
    material: material(3, 4),
    mode: 'behind',
    anchor: 'centre',
    railWidth: inches(5, 2),
  };
}

export function between(count: number, make: (id: string) => Divider, prefix: string): Divider[] {
  return Array.from({ length: Math.max(0, count - 1) }, (_, at) => make(`${prefix}/divider-${at + 1}`));
}

export interface Asked {
  readonly name?: string;
  readonly wide?: Figure;
  readonly high?: Figure;
  readonly deep?: Figure;
  readonly units?: PieceDesign['units'];
  readonly root?: Cell;
  readonly gap?: Figure;
  readonly carcase?: PieceDesign['carcase'];
}

export const inchesTo32: PieceDesign['units'] = { unit: 'in', ruler: Rational.of(1, 32) };
export const millimetres: PieceDesign['units'] = { unit: 'mm', ruler: Rational.of(1, 2) };

export function caseAsInSideboard(): PieceDesign['carcase'] {
  return {
    origin: origin(),
    top: {
      ...panel(7, 8),
      placement: 'over',
      overhangFront: inches(3, 4),
      overhangEnds: inches(3, 4),
      overhangBack: inches(0),
    },
    plinth: { ...panel(3, 4), height: inches(3), setBack: inches(2) },
    sides: panel(3, 4),
    bottom: { ...panel(3, 4), placement: 'between' },
    stretchers: { ...panel(3, 4), width: inches(7, 2) },
    back: { ...panel(1, 4), fixing: 'groove', depth: inches(1, 4), inset: inches(1, 2) },
  };
}

export function design(asked: Asked): PieceDesign {
  return {
    name: asked.name ?? 'Trial piece',
    origin: origin(),
    units: asked.units ?? inchesTo32,
    size: {
      origin: origin(),
      ...(asked.wide === undefined ? {} : { width: asked.wide }),
      ...(asked.high === undefined ? {} : { height: asked.high }),
      ...(asked.deep === undefined ? {} : { depth: asked.deep }),
    },
    carcase: asked.carcase ?? caseAsInSideboard(),
    ...(asked.root === undefined
      ? {}
      : {
          face: {
            origin: origin(),
            fit: { kind: 'inset', gap: asked.gap ?? inches(3, 32) },
            root: asked.root,
            fronts: panel(1, 2),
            drawers: {
              origin: origin(),
              sides: panel(1, 2),
              bottom: panel(1, 4),
              corners: 'dovetail',
              clearBelow: inches(1, 4),
              clearAbove: inches(1, 4),
              bottomGroove: inches(1, 4),
              bottomShy: inches(1, 16),
              slides: {
                name: 'side mount 14',
                origin: { unit: 'side mount 14', start: 0, end: 10 },
                mounting: 'side',
                length: inches(14),
                clearanceEachSide: inches(1, 2),
                extraDepth: inches(0),
              },
            },
          },
        }),
    unchecked: [],
  };
}

/** The demo: 60 wide, 34 high, 17 deep, inset fronts with gaps of 3/32 inch. */
export function sideboardDesign(blankets: SizeAsked = rest): PieceDesign {
  const names = ['cards', 'dice', 'maps', 'blankets'] as const;
  const heights = [front(5), front(6), front(7), blankets];
  return design({
    name: 'Games sideboard',
    wide: inches(60),
    high: inches(34),
    deep: inches(17),
    root: {
      ...common('row', rest),
      kind: 'row',
      cells: [
        doors('row/left', share(1), 'left', 2, 2),
        {
          ...common('row/stack2', opening(18)),
          kind: 'stack',
          cells: names.map((name, at) => drawer(`row/stack2/${name}`, heights[at] ?? rest, name)),
          dividers: between(4, webFrame, 'row/stack2'),
        },
        doors('row/right', { kind: 'same', basis: 'opening', as: 'left', origin: origin() }, 'right', 2, 2),
      ],
      dividers: between(3, partition, 'row'),
    },
  });
}

export function sideboard(): Evaluation {
  return evaluatePiece(sideboardDesign());
}
