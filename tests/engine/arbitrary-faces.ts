import type { Cell, Divider, GroupCell, SizeAsked } from '@fettle/engine';
import fc from 'fast-check';
import {
  door,
  drawer,
  front,
  material,
  open,
  partition,
  rest,
  row,
  share,
  stack,
  webFrame,
  written,
} from './design-builder.ts';

/**
 * Random faces: rows and stacks, two deep, of drawers, doors, pairs and open spaces, with shown and covered dividers.
 * Written sizes are small beside the face, and the last cell of each row or stack shares, so that nearly all of them
 * come out.
 */

interface DividerSeed {
  readonly form: 'partition' | 'web-frame' | 'panel' | 'none';
  readonly mode: 'shown' | 'behind';
  readonly anchor: 'centre' | 'start' | 'end';
  readonly thickness: string;
}

type CellSeed =
  | { readonly kind: 'drawer' | 'door' | 'pair' | 'open'; readonly size: SizeSeed; readonly shelves: number }
  | {
      readonly kind: 'group';
      readonly size: SizeSeed;
      readonly cells: readonly CellSeed[];
      readonly dividers: readonly DividerSeed[];
    };

type SizeSeed =
  | { readonly kind: 'share'; readonly weight: number }
  | { readonly kind: 'front'; readonly sixteenths: number }
  | { readonly kind: 'rest' };

const size: fc.Arbitrary<SizeSeed> = fc.oneof(
  fc.record({ kind: fc.constant('share' as const), weight: fc.integer({ min: 1, max: 3 }) }),
  fc.record({ kind: fc.constant('front' as const), sixteenths: fc.integer({ min: 40, max: 90 }) }),
  fc.constant({ kind: 'rest' as const }),
);

const divider: fc.Arbitrary<DividerSeed> = fc.record({
  form: fc.constantFrom('partition', 'web-frame', 'panel', 'none'),
  mode: fc.constantFrom('shown', 'behind'),
  anchor: fc.constantFrom('centre', 'start', 'end'),
  thickness: fc.constantFrom('1/2', '3/4', '13/16', '1'),
});

const leaf: fc.Arbitrary<CellSeed> = fc.record({
  kind: fc.constantFrom('drawer', 'door', 'pair', 'open'),
  size,
  shelves: fc.integer({ min: 0, max: 2 }),
});

function group(inner: fc.Arbitrary<CellSeed>): fc.Arbitrary<CellSeed> {
  return fc.record({
    kind: fc.constant('group' as const),
    size,
    cells: fc.array(inner, { minLength: 1, maxLength: 4 }),
    dividers: fc.array(divider, { minLength: 3, maxLength: 3 }),
  });
}

/** A row whose cells may be stacks whose cells may be rows. */
export const nestedFace: fc.Arbitrary<GroupCell> = group(fc.oneof(leaf, group(leaf))).map((seed) =>
  build(seed, 'row', 'face'),
);

/** One row or one stack of fronts only. */
export const flatFace: fc.Arbitrary<GroupCell> = fc
  .tuple(group(leaf.filter((seed) => seed.kind !== 'open')), fc.constantFrom<'row' | 'stack'>('row', 'stack'))
  .map(([seed, kind]) => build(seed, kind, 'face'));

function build(seed: CellSeed, kind: 'row' | 'stack', id: string): GroupCell {
  if (seed.kind !== 'group') throw new Error('a face begins with a row or a stack');
  const count = seed.cells.length;
  const cells = seed.cells.map((inner, at): Cell => {
    const asked = at === count - 1 ? rest : sizeAsked(inner.size);
    const innerId = `${id}/${at}`;
    if (inner.kind === 'group') return { ...build(inner, kind === 'row' ? 'stack' : 'row', innerId), along: asked };
    return leafCell(inner, innerId, asked);
  });
  const dividers = seed.dividers.slice(0, count - 1).map((one, at) => dividerOf(one, `${id}/divider-${at}`));
  return kind === 'row' ? row(id, rest, cells, dividers) : stack(id, rest, cells, dividers);
}

function leafCell(seed: Exclude<CellSeed, { kind: 'group' }>, id: string, asked: SizeAsked): Cell {
  const origin = { unit: 'piece', start: 0, end: 1 };
  const made = {
    origin,
    count: seed.shelves,
    adjustable: true,
    material: material('1/2'),
    shyEachEnd: written('1/16'),
  };
  const shelves = seed.shelves === 0 ? {} : { shelves: made };
  switch (seed.kind) {
    case 'drawer':
      return drawer(id, asked);
    case 'door':
      return door(id, asked, shelves);
    case 'pair':
      return door(id, asked, { ...shelves, leaves: 2 });
    case 'open':
      return open(id, asked, shelves);
  }
}

function dividerOf(seed: DividerSeed, id: string): Divider {
  const more = { form: seed.form, mode: seed.mode, anchor: seed.anchor };
  return seed.form === 'web-frame' ? webFrame(id, seed.thickness, more) : partition(id, seed.thickness, more);
}

function sizeAsked(seed: SizeSeed): SizeAsked {
  switch (seed.kind) {
    case 'share':
      return share(seed.weight);
    case 'front':
      return front(`${seed.sixteenths}/16`);
    case 'rest':
      return rest;
  }
}
