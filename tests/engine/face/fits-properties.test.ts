import {
  type Divider,
  type Evaluation,
  evaluatePiece,
  type FrontFit,
  type GroupCell,
  type LaidCell,
  Length,
  type Span,
} from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatFace, nestedFace } from '../arbitrary-faces.ts';
import { anyFit, mixedFits, withFits } from '../arbitrary-fits.ts';
import { caseWithFace, drawers, inches, panel, written } from '../design-builder.ts';
import { allCells, errorsIn } from '../reading-layouts.ts';

// Properties of faces whose fronts sit in any way, alike or mixed, with and without a face frame. No published values.

const frame = { ...panel('7/8'), stiles: written('1-1/2'), topRail: written('2'), bottomRail: written('1') };
const wood = { case: inches('3/4'), stile: inches('1-1/2'), topRail: inches('2'), bottomRail: inches('1') };

function evaluated(root: GroupCell, fit: FrontFit, isFramed: boolean): Evaluation {
  const design = caseWithFace('120', '80', root, { fit, drawers: drawers({ corners: 'butt' }) });
  const evaluation = evaluatePiece(isFramed ? { ...design, carcase: { ...design.carcase, frame } } : design);
  fc.pre(errorsIn(evaluation).length === 0);
  return evaluation;
}

type Box = Readonly<Record<'x' | 'y' | 'z', readonly [Length, Length]>>;

const ends = (span: Span): readonly [Length, Length] => [span.start.length, span.end.length];

function meet(a: Box, b: Box): boolean {
  return (['x', 'y', 'z'] as const).every(
    (axis) => a[axis][0].compare(b[axis][1]) < 0 && b[axis][0].compare(a[axis][1]) < 0,
  );
}

/** Every part as the boxes it fills: a lipped front is its lip before the case and its body in the opening. */
function boxes(evaluation: Evaluation): readonly { readonly id: string; readonly box: Box }[] {
  const laid = new Map(allCells(evaluation).map((one) => [one.cell.id, one]));
  const plane = evaluation.layout.carcase?.facePlane.length ?? Length.zero;
  return evaluation.parts.flatMap((part) => {
    if (part.role === 'back' || part.role === 'drawer-bottom') return [];
    const box = { x: ends(part.box.x), y: ends(part.box.y), z: ends(part.box.z) };
    const cell = part.cell === undefined ? undefined : laid.get(part.cell);
    const isFront = part.role === 'door' || part.role === 'drawer-front';
    if (!isFront || cell?.bodies === undefined) return [{ id: part.id, box }];
    const body = cell.bodies[part.id.endsWith('leaf-right') ? 1 : 0];
    if (body === undefined) throw new Error(`no body for ${part.id}`);
    return [
      { id: `${part.id} lip`, box: { ...box, z: [box.z[0], plane] as const } },
      { id: `${part.id} body`, box: { x: ends(body.x), y: ends(body.y), z: [plane, box.z[1]] as const } },
    ];
  });
}

function clashes(evaluation: Evaluation): readonly string[] {
  const all = boxes(evaluation);
  return all.flatMap((a, at) =>
    all.slice(at + 1).flatMap((b) => (meet(a.box, b.box) ? [`${a.id} meets ${b.id}`] : [])),
  );
}

function outside(evaluation: Evaluation): readonly string[] {
  const space = evaluation.layout.carcase?.outside;
  if (space === undefined) throw new Error('no carcase');
  return evaluation.parts
    .filter((part) =>
      (['x', 'y', 'z'] as const).some(
        (axis) =>
          part.box[axis].start.length.compare(space[axis].start.length) < 0 ||
          part.box[axis].end.length.compare(space[axis].end.length) > 0,
      ),
    )
    .map((part) => part.id);
}

/** What is seen of a divider, or of the gap, between two fronts that sit alike. */
function between(fit: FrontFit, divider: Divider | undefined): Length {
  const gap = fit.gap.length;
  if (divider === undefined || divider.form === 'none') return gap;
  const thick = divider.material.thickness.length;
  switch (fit.kind) {
    case 'inset':
      return divider.mode === 'behind' ? gap : thick.plus(gap.times(2));
    case 'lipped':
      return thick.minus(fit.lip.length.times(2));
    case 'overlay':
      if (fit.how === 'by') return thick.minus(fit.by.length.times(2));
      if (divider.mode === 'behind') return gap;
      return fit.how === 'full' ? fit.reveal.length.times(2) : thick.dividedBy(2);
  }
}

function lapOf(fit: FrontFit, edge: Length): Length {
  switch (fit.kind) {
    case 'inset':
      return fit.gap.length.negated();
    case 'lipped':
      return fit.lip.length;
    case 'overlay':
      if (fit.how === 'by') return fit.by.length;
      return fit.how === 'full' ? edge.minus(fit.reveal.length) : edge.dividedBy(2);
  }
}

describe('fronts that sit alike', () => {
  it('add up, with what is seen between them, to the face and the laps at its ends', () => {
    fc.assert(
      fc.property(flatFace, anyFit, fc.boolean(), (root, fit, isFramed) => {
        const { face, carcase } = evaluated(root, fit, isFramed).layout;
        if (face === undefined || carcase === undefined) throw new Error('nothing is laid out');
        const isRow = root.kind === 'row';
        const axis = isRow ? 'x' : 'y';
        const [start, end] = isRow
          ? [isFramed ? wood.stile : wood.case, isFramed ? wood.stile : wood.case]
          : [isFramed ? wood.topRail : wood.case, isFramed ? wood.bottomRail : wood.case];
        const there = carcase.face[axis].size.length.plus(lapOf(fit, start)).plus(lapOf(fit, end));
        const fronts = face.cells.map((laid) => laid.front?.[axis].size.length ?? Length.zero);
        const seen = root.cells.slice(1).map((_, at) => between(fit, root.dividers[at]));
        expect(Length.sum([...fronts, ...seen]).exactInches).toBe(there.exactInches);
      }),
      { numRuns: 300 },
    );
  });
});

describe('fronts that sit in any way', () => {
  const mixed = fc.tuple(nestedFace, anyFit, mixedFits, fc.boolean()).map(
    ([root, fit, fits, isFramed]) =>
      () =>
        evaluated(withFits(root, fits), fit, isFramed),
  );

  it('leave openings and dividers that fill every row and stack exactly', () => {
    fc.assert(
      fc.property(mixed, (evaluate) => {
        for (const laid of allCells(evaluate())) {
          const { kind } = laid.cell;
          if (kind !== 'row' && kind !== 'stack') continue;
          const axis = kind === 'row' ? 'x' : 'y';
          const openings = laid.cells.map((inner: LaidCell) => inner.opening[axis].size.length);
          const dividers = laid.dividers.map(({ at }) => at[axis].size.length);
          expect(Length.sum([...openings, ...dividers]).exactInches).toBe(laid.opening[axis].size.length.exactInches);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('never meet, nor any other part', () => {
    fc.assert(
      fc.property(mixed, (evaluate) => {
        expect(clashes(evaluate())).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('stand inside the piece, and the foremost of them at its front', () => {
    fc.assert(
      fc.property(mixed, (evaluate) => {
        const evaluation = evaluate();
        expect(outside(evaluation)).toEqual([]);
        const foremost = evaluation.parts.reduce((least, part) => least.min(part.box.z.start.length), inches('10'));
        expect(foremost.exactInches).toBe('0');
      }),
      { numRuns: 100 },
    );
  });
});
