import { explain, type PieceDesign, type Span } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { panel, written } from '../design-builder.ts';
import { evaluateSound, partWithId, say, sizeOf } from '../reading-layouts.ts';
import { sideboard } from '../sideboard-design.ts';

// Expected numbers: the sideboard worked out by hand, common practice, no source. Exact inches in lowest terms.

const spans = (span: Span) => [span.start, span.size, span.end].map((figure) => figure.length.exactInches);

function carcaseOf(design: PieceDesign) {
  const carcase = evaluateSound(design).layout.carcase;
  if (carcase === undefined) throw new Error('no carcase');
  return carcase;
}

/** The sideboard's case with some of its parts changed, and no face: its cells are made for the original. */
function caseWith(change: Partial<PieceDesign['carcase']>): PieceDesign {
  const { face: _face, ...design } = sideboard();
  return { ...design, carcase: { ...design.carcase, ...change } };
}

function without(...missing: readonly (keyof PieceDesign['carcase'])[]): PieceDesign {
  const { face: _face, ...design } = sideboard();
  const carcase = Object.fromEntries(
    Object.entries(design.carcase).filter(([key]) => !missing.some((one) => one === key)),
  ) as unknown as PieceDesign['carcase'];
  return { ...design, carcase };
}

describe('the carcase of the sideboard', () => {
  const carcase = carcaseOf(sideboard());

  it('has a body of 58-1/2 x 30-1/8 x 16-1/4 that stands on the plinth, behind the overhang', () => {
    expect(spans(carcase.body.x)).toEqual(['3/4', '117/2', '237/4']);
    expect(spans(carcase.body.y)).toEqual(['3', '241/8', '265/8']);
    expect(spans(carcase.body.z)).toEqual(['3/4', '65/4', '17']);
  });

  it('has a face of 57 x 28-5/8 between sides, bottom and stretchers', () => {
    expect(spans(carcase.face.x)).toEqual(['3/2', '57', '117/2']);
    expect(spans(carcase.face.y)).toEqual(['15/4', '229/8', '259/8']);
  });

  it('is 15-1/2 deep inside: 16-1/4 less 1/2 behind the back and the back itself', () => {
    expect(spans(carcase.inside.z)).toEqual(['3/4', '31/2', '65/4']);
  });

  it('explains the width of the face down to the words of the text', () => {
    expect(explain(carcase.face.x.size, say).split('\n')).toEqual([
      '57" = 117/2" (width of the body) − 2 × 3/4" (thickness of the sides)',
      '  117/2" (width of the body) = 60" (width of the piece) − 2 × 3/4" (overhang of the top at each end)',
      '    60" (width of the piece): written here',
      '    3/4" (overhang of the top at each end): written here',
      '  3/4" (thickness of the sides): written here',
    ]);
  });
});

describe('parts of the sideboard’s carcase', () => {
  const evaluation = evaluateSound(sideboard());
  it.each([
    ['case/top', '60 x 17 x 7/8', 'x'],
    ['case/side-left', '241/8 x 65/4 x 3/4', 'y'],
    ['case/side-right', '241/8 x 65/4 x 3/4', 'y'],
    ['case/bottom', '57 x 65/4 x 3/4', 'x'],
    ['case/stretcher-front', '57 x 7/2 x 3/4', 'x'],
    ['case/stretcher-rear', '57 x 7/2 x 3/4', 'x'],
    ['case/plinth-front', '117/2 x 3 x 3/4', 'x'],
    ['case/plinth-back', '117/2 x 3 x 3/4', 'x'],
    // 16-1/4 deep, set back 2, less two thicknesses.
    ['case/plinth-end-left', '51/4 x 3 x 3/4', 'z'],
    ['case/plinth-end-right', '51/4 x 3 x 3/4', 'z'],
    // 57 and 28-5/8 and a groove of 1/4 at each edge.
    ['case/back', '233/8 x 115/2 x 1/4', 'y'],
  ])('%s is %s', (id, size, grain) => {
    const part = partWithId(evaluation, id);
    expect(sizeOf(part)).toBe(size);
    expect(part.grain).toBe(grain);
  });
});

describe('other ways to build the carcase', () => {
  it('a top between the sides takes its thickness from the face and nothing from the body', () => {
    const top = {
      ...panel('7/8'),
      placement: 'between',
      overhangFront: written('3/4'),
      overhangEnds: written('3/4'),
      overhangBack: written('0'),
    } as const;
    const design = caseWith({ top });
    const { body, face } = carcaseOf(design);
    expect(spans(body.x)).toEqual(['0', '60', '60']);
    expect(spans(body.y)).toEqual(['3', '31', '34']);
    // 31 less bottom 3/4, stretchers 3/4 and top 7/8.
    expect(spans(face.y)).toEqual(['15/4', '229/8', '259/8']);
    const part = partWithId(evaluateSound(design), 'case/top');
    expect(sizeOf(part)).toBe('117/2 x 17 x 7/8');
    expect(spans(part.box.y)).toEqual(['265/8', '7/8', '34']);
  });

  it('a bottom under the sides is as wide as the body and shortens the sides', () => {
    const design = caseWith({ bottom: { ...panel('3/4'), placement: 'under' } });
    const evaluation = evaluateSound(design);
    expect(sizeOf(partWithId(evaluation, 'case/bottom'))).toBe('117/2 x 65/4 x 3/4');
    expect(sizeOf(partWithId(evaluation, 'case/side-left'))).toBe('235/8 x 65/4 x 3/4');
    expect(spans(carcaseOf(design).face.y)).toEqual(['15/4', '229/8', '259/8']);
  });

  it('an applied back covers the body and takes its thickness from the depth', () => {
    const back = { ...panel('1/4'), fixing: 'applied', depth: written('0'), inset: written('0') } as const;
    const design = caseWith({ back });
    const { body, inside } = carcaseOf(design);
    expect(spans(body.z)).toEqual(['3/4', '16', '67/4']);
    expect(spans(inside.z)).toEqual(['3/4', '16', '67/4']);
    const part = partWithId(evaluateSound(design), 'case/back');
    expect(sizeOf(part)).toBe('241/8 x 117/2 x 1/4');
    expect(spans(part.box.z)).toEqual(['67/4', '1/4', '17']);
  });

  it('a back in a rabbet lies flush and reaches into it', () => {
    const back = { ...panel('1/4'), fixing: 'rabbet', depth: written('3/8'), inset: written('0') } as const;
    const part = partWithId(evaluateSound(caseWith({ back })), 'case/back');
    expect(sizeOf(part)).toBe('235/8 x 231/4 x 1/4');
    expect(spans(part.box.z)).toEqual(['67/4', '1/4', '17']);
  });

  it.each([
    ['without a top', ['top'], ['60', '31', '17'], ['117/2', '59/2']],
    ['without a plinth', ['plinth'], ['117/2', '265/8', '65/4'], ['57', '253/8']],
    ['without stretchers', ['stretchers'], ['117/2', '241/8', '65/4'], ['57', '235/8']],
    ['without sides', ['sides'], ['117/2', '241/8', '65/4'], ['117/2', '229/8']],
    ['without a bottom', ['bottom'], ['117/2', '241/8', '65/4'], ['57', '235/8']],
    ['of nothing', ['top', 'plinth', 'stretchers', 'sides', 'bottom', 'back'], ['60', '34', '17'], ['60', '34']],
  ] as const)('%s each missing part takes nothing', (_, missing, body, face) => {
    const layout = carcaseOf(without(...missing));
    const sizes = (...all: readonly Span[]) => all.map((span) => span.size.length.exactInches);
    expect(sizes(layout.body.x, layout.body.y, layout.body.z)).toEqual(body);
    expect(sizes(layout.face.x, layout.face.y)).toEqual(face);
  });

  it('a back without sides and bottom to hold it ends with the body', () => {
    const part = partWithId(evaluateSound(without('sides', 'bottom')), 'case/back');
    // The body's 30-1/8 less the stretchers 3/4, and one groove in them; 58-1/2 wide without grooves.
    expect(sizeOf(part)).toBe('237/8 x 117/2 x 1/4');
  });

  it.each(['width', 'height', 'depth'] as const)('is unknown while the %s is missing', (which) => {
    const design = sideboard();
    const { [which]: _missing, ...size } = design.size;
    const evaluation = evaluateSound({ ...design, size });
    expect(evaluation.layout).toEqual({});
    expect(evaluation.parts).toEqual([]);
  });
});
