import { type DrawerDesign, type GroupCell, type PieceDesign, Rational } from '@fettle/engine';
import {
  door,
  drawer,
  drawers,
  front,
  material,
  opening,
  panel,
  partition,
  place,
  rest,
  row,
  sameAs,
  share,
  sideMount,
  stack,
  stock,
  webFrame,
  written,
} from './design-builder.ts';

/** The sideboard for board games as a design: the one piece whose numbers were all worked out by hand. */

const ash = stock('ash', 'board');
const ashPanel = stock('ash panel', 'sheet');
const thinAshPanel = stock('ash panel 1/2', 'sheet');
const poplar = stock('poplar', 'board');
const maple = stock('maple', 'board');
const birchPly = stock('birch ply 1/4', 'sheet');

export const sideMount14 = sideMount('side mount 14', '14');
export const sideMount12 = sideMount('side mount 12', '12');

export function gameDrawers(more: Partial<DrawerDesign> = {}): DrawerDesign {
  return drawers({ sides: panel('1/2', maple), bottom: panel('1/4', birchPly), slides: sideMount14, ...more });
}

/** Cards 5, dice 6, maps 7 inches high, and blankets what is asked. */
export function drawerStack(blankets = rest): GroupCell {
  const frame = (id: string) => webFrame(id, '3/4', { material: material('3/4', poplar) });
  return stack(
    'row/stack',
    opening('18'),
    [drawer('cards', front('5')), drawer('dice', front('6')), drawer('maps', front('7')), drawer('blankets', blankets)],
    [frame('under-cards'), frame('under-dice'), frame('under-maps')],
  );
}

export function sideboard(middle: GroupCell = drawerStack(), drawersOfAll: DrawerDesign = gameDrawers()): PieceDesign {
  const shelves = {
    origin: place(),
    count: 2,
    adjustable: true,
    material: material('3/4', ashPanel),
    shyEachEnd: written('1/16'),
  };
  const post = (id: string) => partition(id, '3/4', { material: material('3/4', ashPanel) });
  return {
    name: 'Games sideboard',
    origin: place(),
    units: { unit: 'in', ruler: Rational.of(1, 32) },
    size: { origin: place(), width: written('60'), height: written('34'), depth: written('17') },
    carcase: {
      origin: place(),
      top: {
        ...panel('7/8', ash),
        placement: 'over',
        overhangFront: written('3/4'),
        overhangEnds: written('3/4'),
        overhangBack: written('0'),
      },
      plinth: { ...panel('3/4', ash), height: written('3'), setBack: written('2') },
      sides: panel('3/4', ashPanel),
      bottom: { ...panel('3/4', ashPanel), placement: 'between' },
      stretchers: { ...panel('3/4', poplar), width: written('3-1/2') },
      back: { ...panel('1/4', birchPly), fixing: 'groove', depth: written('1/4'), inset: written('1/2') },
    },
    face: {
      origin: place(),
      fit: { kind: 'inset', gap: written('3/32') },
      root: row(
        'row',
        rest,
        [door('left', share(1), { leaves: 2, shelves }), middle, door('right', sameAs('left'), { leaves: 2 })],
        [post('left-partition'), post('right-partition')],
      ),
      fronts: panel('1/2', thinAshPanel),
      drawers: drawersOfAll,
    },
    unchecked: [],
  };
}
