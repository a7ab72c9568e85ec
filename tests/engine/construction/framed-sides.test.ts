import { type Evaluation, evaluatePiece, type Part } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { drawer, front, inches, material, rest, stack, webFrame, written } from '../design-builder.ts';
import { caseWithFramedSides } from './framed-design.ts';

// Worked by hand: 20" less two stiles of 2-1/4" is 15-1/2". No published values.

function part({ parts }: Evaluation, id: string): Part {
  const found = parts.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no part ${id} among ${parts.map((each) => each.id).join(', ')}`);
  return found;
}
const sizes = ({ length, width, thickness }: Part) =>
  [length, width, thickness].map((figure) => figure.length.exactInches).join(' x ');

describe('sides of frame and panel, 20" deep', () => {
  const evaluation = evaluatePiece(caseWithFramedSides());

  it('have rails of 15-1/2" and two tenons of 3/8" less 1/32": 16-3/16"', () => {
    expect(sizes(part(evaluation, 'case/side-left/rail-top'))).toBe('259/16 x 3 x 3/4');
    expect(sizes(part(evaluation, 'case/side-right/rail-bottom'))).toBe('259/16 x 4 x 3/4');
  });
  it('have panels of 15-1/2" and two grooves of 3/8" less 1/16" at each edge: 16-1/8"', () => {
    // Between the rails 41-1/2" less 3" and 4" is 34-1/2", and 5/8" more in the grooves.
    expect(sizes(part(evaluation, 'case/side-left/panel'))).toBe('281/8 x 129/8 x 3/8');
  });
  it('have stiles as high as the side, grooved from end to end', () => {
    const stile = part(evaluation, 'case/side-left/stile-front');
    expect(sizes(stile)).toBe('83/2 x 9/4 x 3/4');
    const [groove] = stile.features.filter(({ kind }) => kind === 'groove');
    expect(groove?.solid).toEqual({
      kind: 'box',
      // A panel of 3/8" in the middle of 3/4".
      x: { from: inches('3/16'), to: inches('9/16') },
      y: { from: inches('0'), to: inches('41-1/2') },
      z: { from: inches('1-7/8'), to: inches('2-1/4') },
    });
  });
  it('let the back into the rear stile alone', () => {
    const grooved = evaluation.joints.filter(({ held, kind }) => held === 'case/back' && kind === 'groove');
    expect(grooved.map(({ holding }) => holding)).toEqual([
      'case/top',
      'case/side-left/stile-rear',
      'case/side-right/stile-rear',
      'case/bottom',
    ]);
  });
  it('hold by stub tenons and grooves, and nothing of that is assumed', () => {
    const inSide = evaluation.joints.filter(({ held }) => held.startsWith('case/side-left/'));
    expect(inSide.filter(({ kind }) => kind === 'stub-tenon')).toHaveLength(4);
    expect(inSide.filter(({ kind }) => kind === 'groove')).toHaveLength(4);
    expect(inSide.some(({ isAssumed }) => isAssumed)).toBe(false);
  });
});

describe('middle rails', () => {
  const drawers = stack(
    'stack',
    rest,
    [drawer('upper', front('10')), drawer('lower', rest)],
    [webFrame('between', '3/4', { material: material('3/4') })],
  );

  it('lie behind the middle of each divider', () => {
    const middleRails = {
      origin: { unit: 'piece', start: 0, end: 1 },
      width: written('2-1/2'),
      place: { kind: 'at-dividers' as const },
    };
    const evaluation = evaluatePiece(caseWithFramedSides({ middleRails }, drawers));
    const rail = part(evaluation, 'case/side-left/rail-middle');
    const frame = part(evaluation, 'between/rail-front');
    const middle = ({ box }: Part) => box.y.start.length.plus(box.y.end.length).dividedBy(2);
    expect(middle(rail)).toEqual(middle(frame));
    expect(sizes(rail)).toBe('259/16 x 5/2 x 3/4');
  });
  it('or are spread evenly, with panels of one height between them', () => {
    const middleRails = {
      origin: { unit: 'piece', start: 0, end: 1 },
      width: written('2-1/2'),
      place: { kind: 'even' as const, count: 2 },
    };
    const evaluation = evaluatePiece(caseWithFramedSides({ middleRails }));
    // 34-1/2" less two rails of 2-1/2" is 29-1/2", three panels of 9-5/6", each with 5/8" in its grooves.
    const panels = ['panel', 'panel-2', 'panel-3'].map((id) => part(evaluation, `case/side-right/${id}`));
    expect(panels.map(({ length }) => length.length.exactInches)).toEqual(['251/24', '251/24', '251/24']);
    expect(panels.map(({ grain }) => grain)).toEqual(['y', 'y', 'y']);
  });
});
