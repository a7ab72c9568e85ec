import { evaluatePiece, type Part } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { inches, place, written } from '../design-builder.ts';
import { sideboard } from '../sideboard-design.ts';
import { sharedWood } from './shared-wood.ts';

// Worked by hand from the sideboard: dadoes 1/4" deep, so whatever goes in grows by 1/4" at each end. No published values.

const plain = sideboard();
const design = {
  ...plain,
  carcase: { ...plain.carcase, join: { kind: 'dado' as const, origin: place(), depth: written('1/4') } },
};
const evaluation = evaluatePiece(design);

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
  it('lets a partition into both stretchers, and takes away what would stand between them', () => {
    const notches = part('left-partition').features.filter(({ kind }) => kind === 'notch');
    // Stretchers 3-1/2" wide at the front and at the back of a body 16-1/4" deep: a notch from 3-1/2" to 12-3/4".
    const front = part('case/stretcher-front').box.z;
    const rear = part('case/stretcher-rear').box.z;
    expect(notches.map(({ solid }) => solid.kind === 'box' && [solid.z.from, solid.z.to])).toEqual([
      [front.end.length, rear.start.length],
    ]);
    expect(rear.start.length.minus(front.end.length)).toEqual(inches('9-1/4'));
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
    expect(sharedWood(evaluation.parts)).toEqual([]);
  });
  it('leaves a top that lies over the sides, and what lies under the case, as they were', () => {
    expect(part('case/top').features).toEqual([]);
    expect(part('case/side-left').length.length).toEqual(inches('30-1/8'));
  });
});
