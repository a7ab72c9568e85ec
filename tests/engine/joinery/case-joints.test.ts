import { type Evaluation, evaluatePiece, type Feature, type Length, type Part } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { inches, place, written } from '../design-builder.ts';
import { sideboard } from '../sideboard-design.ts';

// Worked by hand from the sideboard: dadoes 1/4" deep, so whatever goes in grows by 1/4" at each end. No published values.

const plain = sideboard();
const design = {
  ...plain,
  carcase: { ...plain.carcase, join: { kind: 'dado' as const, origin: place(), depth: written('1/4') } },
};
const evaluation = evaluatePiece(design);
const axes = ['x', 'y', 'z'] as const;

function part(id: string): Part {
  const found = evaluation.parts.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no part ${id}`);
  return found;
}

describe('a sideboard joined by dadoes 1/4" deep', () => {
  it('has a partition of 28-5/8" and two dadoes', () => {
    expect(part('left-partition').length.length).toEqual(inches('29-1/8'));
  });
  it('has a bottom and stretchers of 57" and two dadoes', () => {
    for (const id of ['case/bottom', 'case/stretcher-front', 'case/stretcher-rear']) {
      expect(part(id).length.length, id).toEqual(inches('57-1/2'));
    }
  });
  it('lets web frames into the partitions: rails grow, runners move and keep their width', () => {
    expect(part('under-cards/rail-front').length.length).toEqual(inches('18-1/2'));
    const runner = part('under-cards/runner-start');
    expect(runner.width.length).toEqual(inches('2-1/2'));
    expect(runner.blank.x.start.length).toEqual(runner.box.x.start.length.minus(inches('1/4')));
  });
  it('cuts one dado for a whole frame', () => {
    const dadoes = part('left-partition').features.filter(({ kind }) => kind === 'dado');
    expect(dadoes.map(({ id }) => id)).toEqual([
      'left-partition/dado under-cards',
      'left-partition/dado under-dice',
      'left-partition/dado under-maps',
    ]);
  });
  it('grooves what the back reaches into, 1/4" deep and from end to end', () => {
    const groove = part('case/side-left').features.find(({ kind }) => kind === 'groove');
    expect(groove?.measures.depth?.length).toEqual(inches('1/4'));
    expect(groove?.solid.kind === 'box' && groove.solid.y.to.minus(groove.solid.y.from)).toEqual(inches('30-1/8'));
  });
  it('has parts that share room only where something is cut away', () => {
    expect(sharedWood(evaluation)).toEqual([]);
  });
  it('leaves a top that lies over the sides, and what lies under the case, as they were', () => {
    expect(part('case/top').features).toEqual([]);
    expect(part('case/side-left').length.length).toEqual(inches('30-1/8'));
  });
});

/** Pairs of parts of the case whose blanks overlap where neither is cut. */
function sharedWood({ parts }: Evaluation): readonly string[] {
  const fixed = parts.filter(({ role }) => !role.startsWith('drawer'));
  return fixed.flatMap((a, at) =>
    fixed.slice(at + 1).flatMap((b) => {
      const shared = axes.map((axis) => ({
        axis,
        from: a.blank[axis].start.length.max(b.blank[axis].start.length),
        to: a.blank[axis].end.length.min(b.blank[axis].end.length),
      }));
      if (shared.some(({ from, to }) => from.compare(to) >= 0)) return [];
      const isCut = [...a.features, ...b.features].some((feature) => holds(feature, shared));
      return isCut ? [] : [`${a.id} and ${b.id}`];
    }),
  );
}

function holds(
  { solid }: Feature,
  space: readonly { readonly axis: 'x' | 'y' | 'z'; readonly from: Length; readonly to: Length }[],
): boolean {
  return (
    solid.kind === 'box' &&
    space.every(({ axis, from, to }) => solid[axis].from.compare(from) <= 0 && to.compare(solid[axis].to) <= 0)
  );
}
