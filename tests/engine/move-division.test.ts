import {
  type Cell,
  divisionsOf,
  type Evaluation,
  evaluatePiece,
  given,
  Length,
  moveDivision,
  type PieceDesign,
  sizeAlong,
} from '@fettle/engine';
import type { Change } from '@fettle/findings';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nestedFace } from './arbitrary-faces.ts';
import { caseWithFace, inches } from './design-builder.ts';
import { errorsIn } from './reading-layouts.ts';
import { sideboard } from './sideboard-design.ts';

/** A line between two neighbours taken elsewhere: worked by hand in the sideboard, and by applying what is proposed. */

function applied(design: PieceDesign, changes: readonly Change[]): Evaluation {
  const resize = (cell: Cell): Cell => {
    const { along } = cell;
    const change = changes.find(
      (each) =>
        each.kind === 'set-length' &&
        along.kind === 'fixed' &&
        along.figure.reason.kind === 'given' &&
        along.figure.reason.origin.start === each.at.start,
    );
    const to = change?.kind === 'set-length' ? Length.fromMeasure(change.to) : undefined;
    const now =
      to === undefined || along.kind !== 'fixed' || change?.kind !== 'set-length'
        ? cell
        : { ...cell, along: { ...along, figure: given(to, change.at) } };
    return now.kind === 'row' || now.kind === 'stack' ? { ...now, cells: now.cells.map(resize) } : now;
  };
  const { face } = design;
  return evaluatePiece(face === undefined ? design : { ...design, face: { ...face, root: resize(face.root) } });
}

function lineAfter(evaluation: Evaluation, before: string) {
  const line = divisionsOf(evaluation).find(({ beforeLabel }) => beforeLabel === before);
  if (line === undefined) throw new Error(`no line after ${before}`);
  return line;
}

describe('in the sideboard', () => {
  const evaluation = evaluatePiece(sideboard());

  test('5 and 6 become 5-1/4 and 5-3/4, and stay 11', () => {
    const moved = moveDivision(evaluation, lineAfter(evaluation, '"cards"').id, inches('1/4'));
    if (moved.kind !== 'changes') throw new Error(JSON.stringify(moved));
    expect([moved.before.size.exactInches, moved.after.size.exactInches]).toEqual(['21/4', '23/4']);
    expect(moved.changes).toHaveLength(2);
    expect(moved.moved.exactInches).toBe('1/4');
  });

  test('before a front that takes the rest only the written size changes', () => {
    const moved = moveDivision(evaluation, lineAfter(evaluation, '"maps"').id, inches('1/2').negated());
    if (moved.kind !== 'changes') throw new Error(JSON.stringify(moved));
    // 10-5/32 and the half inch that "maps" gives up.
    expect([moved.before.size.exactInches, moved.after.size.exactInches]).toEqual(['13/2', '341/32']);
    expect(moved.changes).toHaveLength(1);
  });

  test('a line that is not there, and one that leaves nothing, are refused', () => {
    expect(moveDivision(evaluation, 'nowhere', inches('1'))).toEqual({
      kind: 'refused',
      why: { kind: 'no-such-line' },
    });
    const far = moveDivision(evaluation, lineAfter(evaluation, '"cards"').id, inches('6'));
    expect(far).toEqual({ kind: 'refused', why: { kind: 'no-room', label: '"dice"' } });
  });
});

test('whatever the face: what is proposed, once applied, moves the line just so far, the right way, onto a mark', () => {
  const ruler = inches('1/32');
  let changed = 0;
  fc.assert(
    fc.property(nestedFace, fc.integer({ min: -20, max: 20 }), fc.nat(30), (root, steps, which) => {
      fc.pre(steps !== 0);
      const design = caseWithFace('120', '80', root);
      const before = evaluatePiece(design);
      fc.pre(errorsIn(before).length === 0);
      const lines = divisionsOf(before);
      const line = lines[which % Math.max(1, lines.length)];
      if (line === undefined) return;
      const moved = moveDivision(before, line.id, ruler.times(steps));
      if (moved.kind === 'refused') return;
      changed += 1;
      expect(moved.moved.sign()).toBe(Math.sign(steps));
      for (const change of moved.changes) {
        if (change.kind !== 'set-length') throw new Error('only lengths change');
        expect(Length.fromMeasure(change.to)?.isPositive()).toBe(true);
      }
      const after = divisionsOf(applied(design, moved.changes)).find(({ id }) => id === line.id);
      if (after === undefined) throw new Error('the line is gone');
      expect(sizeAlong(after.before, after.group).exactInches).toBe(moved.before.size.exactInches);
      expect(sizeAlong(after.after, after.group).exactInches).toBe(moved.after.size.exactInches);
      // The first size that is written anew is a mark of the ruler.
      const [first] = moved.changes;
      const to = first?.kind === 'set-length' ? Length.fromMeasure(first.to) : undefined;
      expect(to?.ratioTo(ruler).isWhole()).toBe(true);
    }),
    { numRuns: 300 },
  );
  expect(changed).toBeGreaterThan(20);
});
