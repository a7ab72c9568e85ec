import { assumed, Length } from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Backing, backingsOf, holeOf } from '../../../packages/engine/src/hardware/backing.ts';
import type { Screw } from '../../../packages/engine/src/hardware/placed-hardware.ts';
import type { Feature } from '../../../packages/engine/src/joinery/feature.ts';
import { spanFrom } from '../../../packages/engine/src/layout/spans.ts';
import { slab, type UnmarkedPart } from '../../../packages/engine/src/parts/slab.ts';
import { boxOf, insideOf, meets } from '../../../packages/engine/src/solids/index.ts';
import { inches, place } from '../design-builder.ts';

/** What a screw of 5/8" finds that is driven towards the left: a side of 3/4", its inner face at x = 3/4". */

const farthest = Length.inches(3);

function board(id: string, x: [string, string], y: [string, string], z: [string, string], role = 'side' as const) {
  const span = ([from, size]: [string, string]) =>
    spanFrom(assumed(inches(from), 'a test'), assumed(inches(size), 'a test'));
  return slab({ id, label: id, role, x: span(x), y: span(y), z: span(z), thin: 'x', grain: 'y', origin: place() });
}

function screw(at: { x: string; y: string; z: string }, more: Partial<Screw> = {}): Screw {
  return {
    id: 'screw',
    at: { x: inches(at.x), y: inches(at.y), z: inches(at.z) },
    towards: '-x',
    diameter: inches('1/8'),
    length: inches('5/8'),
    ...more,
  };
}

function judged(one: Screw, parts: readonly UnmarkedPart[]): Backing {
  const [backing] = backingsOf([one], parts, farthest);
  if (backing === undefined) throw new Error('each screw has its backing');
  return backing;
}

const side = board('side', ['0', '3/4'], ['0', '30'], ['0', '16']);
const inSide = screw({ x: '3/4', y: '10', z: '2' });

describe('a screw into a side', () => {
  it('holds in the wood', () => {
    expect(judged(inSide, [side])).toEqual({ kind: 'solid', parts: [side] });
  });

  it('finds only air beyond its end', () => {
    expect(judged(screw({ x: '3/4', y: '31', z: '2' }), [side])).toEqual({ kind: 'air' });
  });

  it('finds the side set back by a quarter of an inch', () => {
    expect(judged(screw({ x: '1', y: '10', z: '2' }), [side])).toEqual({
      kind: 'behind-gap',
      part: side,
      gap: inches('1/4'),
    });
  });

  it('finds nothing to pack out to beyond three inches, nor on the box of another drawer', () => {
    expect(judged(screw({ x: '4', y: '10', z: '2' }), [side])).toEqual({ kind: 'air' });
    const box = { ...side, role: 'drawer-side' as const };
    expect(judged(screw({ x: '1', y: '10', z: '2' }), [box])).toEqual({ kind: 'air' });
  });

  it('breaks through where it is as long as the wood is thick, and not a hair before', () => {
    const long = { ...inSide, length: inches('3/4') };
    expect(judged(long, [side])).toEqual({
      kind: 'breaks-through',
      part: side,
      by: Length.zero,
      wood: inches('3/4'),
    });
    expect(judged({ ...inSide, length: inches('47/64') }, [side]).kind).toBe('solid');
    expect(judged({ ...inSide, length: inches('1') }, [side])).toMatchObject({ by: inches('1/4') });
  });

  it('goes on from a packer into the side that it lies on', () => {
    const packer = board('packer', ['3/4', '1/4'], ['9', '2'], ['0', '16']);
    const backing = judged(screw({ x: '1', y: '10', z: '2' }), [side, packer]);
    expect(backing).toEqual({ kind: 'solid', parts: [packer, side] });
  });

  it('wants its own thickness of wood beside its hole', () => {
    // The hole is 1/8" wide: its rim is 1/16" nearer to the edge than its middle.
    expect(judged(screw({ x: '3/4', y: '3/16', z: '2' }), [side]).kind).toBe('solid');
    expect(judged(screw({ x: '3/4', y: '1/8', z: '2' }), [side])).toMatchObject({
      kind: 'near-edge',
      left: inches('1/16'),
      limit: inches('1/8'),
    });
    expect(judged(screw({ x: '3/4', y: '0', z: '2' }), [side])).toMatchObject({ kind: 'near-edge', left: Length.zero });
  });

  it('meets a dado that it runs into, and not one that it only touches', () => {
    const dado = (from: string): Feature => ({
      id: 'dado',
      kind: 'dado',
      part: side.id,
      entry: '+x',
      measures: {},
      stage: 'on the loose part',
      joint: 'bottom>side',
      origin: place(),
      solid: boxOf(
        { from: inches('1/2'), to: inches('3/4') },
        { from: inches(from), to: inches(from).plus(inches('3/4')) },
        { from: Length.zero, to: inches('16') },
      ),
    });
    const cut = { ...side, features: [dado('9-1/2')] };
    expect(judged(inSide, [cut])).toEqual({ kind: 'meets-joint', part: cut, feature: cut.features[0] });
    expect(judged(inSide, [{ ...side, features: [dado('10-1/16')] }]).kind).toBe('solid');
  });
});

describe('whatever is not found wrong', () => {
  const eighths = (most: number) => fc.integer({ min: 0, max: most * 8 }).map((count) => Length.inches(count, 8));
  it('lies in solid wood, all of its hole', () => {
    fc.assert(
      fc.property(eighths(2), eighths(4), eighths(4), eighths(1), fc.boolean(), (x, y, z, length, isTurned) => {
        const boards = [
          board('one', ['0', '3/4'], ['0', '2'], ['0', '4']),
          board('two', ['3/4', '1/2'], ['1', '2'], ['1', '3']),
        ];
        const one: Screw = {
          id: 'one',
          at: { x, y, z },
          towards: isTurned ? '+x' : '-x',
          diameter: inches('1/4'),
          length: length.plus(inches('1/8')),
        };
        const backing = judged(one, boards);
        if (backing.kind !== 'solid') return;
        const hole = holeOf(one);
        let covered = Length.zero;
        for (const part of backing.parts) {
          const { x: along, y: up, z: deep } = part.blank;
          const from = hole.along.from.max(along.start.length);
          const to = hole.along.to.min(along.end.length);
          const within = boxOf(
            { from, to },
            { from: up.start.length, to: up.end.length },
            { from: deep.start.length, to: deep.end.length },
          );
          expect(insideOf({ ...hole, along: { from, to } }, within)).toBe(true);
          expect(part.features.some(({ solid }) => meets(solid, hole))).toBe(false);
          covered = covered.plus(to.minus(from));
        }
        // The boards do not overlap: together they are as long as the hole.
        expect(covered).toEqual(one.length);
      }),
    );
  });
});
