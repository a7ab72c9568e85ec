import { KeptPicture, moveSpan, type SpanEdit } from '@fettle/extension';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chest, frame, picture, tooHigh, uri } from './pictures.ts';

/** What the extension keeps of a picture while the text moves on underneath it. */

/** The oracle: every character remembers whether it was inside. */
function moveSpanByMarks(length: number, start: number, end: number, edit: SpanEdit): readonly boolean[] {
  const marks = Array.from({ length }, (_, at) => start <= at && at < end);
  const removed = marks.slice(edit.start, edit.start + edit.removed);
  // New text belongs to the span when it stands between two characters of it, or takes the place of some of it.
  const inside =
    (marks[edit.start - 1] === true && marks[edit.start + edit.removed] === true) || removed.includes(true);
  marks.splice(edit.start, edit.removed, ...Array.from({ length: edit.inserted }, () => inside));
  return marks;
}

describe('a span carried along with an edit', () => {
  test('covers what a marking of every character covers', () => {
    const length = 40;
    const within = fc.nat({ max: length });
    fc.assert(
      fc.property(within, within, within, within, fc.nat({ max: 8 }), (a, b, c, d, inserted) => {
        const span = { start: Math.min(a, b), end: Math.max(a, b) };
        fc.pre(span.start < span.end);
        const edit = { start: Math.min(c, d), removed: Math.abs(c - d), inserted };
        const marks = moveSpanByMarks(length, span.start, span.end, edit);
        const moved = moveSpan(span, edit);
        expect(moved.end).toBeLessThanOrEqual(marks.length);
        expect(marks.map((_, at) => moved.start <= at && at < moved.end)).toEqual(marks);
      }),
      { numRuns: 2000 },
    );
  });

  test('at either end of the words, new text stays outside', () => {
    const span = { start: 10, end: 20 };
    expect(moveSpan(span, { start: 10, removed: 0, inserted: 3 })).toEqual({ start: 13, end: 23 });
    expect(moveSpan(span, { start: 20, removed: 0, inserted: 3 })).toEqual(span);
  });
});

describe('the picture that is kept', () => {
  const choose = (version: number, part = 'front/dice', piece = 0) =>
    ({ kind: 'choose', uri, version, piece, part }) as const;

  test('finds the words of a part, moved along with edits on either side of its arrival', () => {
    const kept = new KeptPicture();
    // Two edits were made before the picture of the first of them arrives.
    kept.edited(2, [{ start: 0, removed: 0, inserted: 5 }]);
    kept.edited(3, [{ start: 0, removed: 0, inserted: 7 }]);
    kept.receive(frame(picture(2)), 9);
    expect(kept.wordsOf(choose(2))).toEqual({ start: 127, end: 142 });
    kept.edited(4, [{ start: 0, removed: 2, inserted: 0 }]);
    expect(kept.wordsOf(choose(2))).toEqual({ start: 125, end: 140 });
  });

  test('knows nothing of parts, pieces, versions and documents it was not asked for', () => {
    const kept = new KeptPicture();
    expect(kept.wordsOf(choose(1))).toBeUndefined();
    kept.receive(frame(picture(1)), 9);
    expect(kept.wordsOf(choose(2))).toBeUndefined();
    expect(kept.wordsOf(choose(1, 'front/none'))).toBeUndefined();
    expect(kept.wordsOf(choose(1, 'front/dice', 7))).toBeUndefined();
    expect(kept.wordsOf({ ...choose(1), uri: `${uri}x` })).toBeUndefined();
  });

  test('keeps the last good pieces while the text is broken, with the findings of now', () => {
    const kept = new KeptPicture();
    kept.receive(frame(picture(1)), 9);
    kept.edited(2, [{ start: 0, removed: 0, inserted: 10 }]);
    kept.receive(frame(picture(2, { readable: false, pieces: [], findings: [tooHigh], verdict: 'broken' })), 9);
    expect(kept.shown?.readable).toBe(false);
    expect(kept.shown?.pieces[0]?.parts).toHaveLength(4);
    const { piece: _, ...ofNoPiece } = tooHigh;
    expect(kept.shown?.findings).toEqual([ofNoPiece]);
    expect(kept.wordsOf(choose(2))).toEqual({ start: 130, end: 145 });
    kept.receive(frame(picture(3, { pieces: [chest([20])] })), 9);
    expect(kept.shown?.pieces[0]?.parts).toHaveLength(1);
  });

  test('of a text that was broken from the start there is only what was sent', () => {
    const kept = new KeptPicture();
    kept.receive(frame(picture(1, { readable: false, pieces: [] })), 9);
    expect(kept.shown?.pieces).toEqual([]);
  });

  test('drops what is older, until the text is opened again', () => {
    const kept = new KeptPicture();
    expect(kept.receive(frame(picture(5)), 6)).toEqual({ kind: 'taken', anew: false });
    expect(kept.receive(frame(picture(4)), 6)).toEqual({ kind: 'dropped' });
    expect(kept.receive(frame(picture(5)), 6)).toEqual({ kind: 'taken', anew: false });
    kept.countAnew();
    // One that was still under way when the text was closed and opened.
    expect(kept.receive(frame(picture(6)), 1)).toEqual({ kind: 'dropped' });
    expect(kept.receive(frame(picture(1)), 1)).toEqual({ kind: 'taken', anew: true });
    expect(kept.receive(frame(picture(2)), 2)).toEqual({ kind: 'taken', anew: false });
  });

  test('of a closed text takes what comes last', () => {
    const kept = new KeptPicture();
    expect(kept.receive(frame(picture(5)), undefined)).toEqual({ kind: 'taken', anew: true });
    expect(kept.receive(frame(picture(0)), undefined)).toEqual({ kind: 'taken', anew: true });
    expect(kept.receive(frame(picture(1)), 1)).toEqual({ kind: 'taken', anew: true });
  });

  test('the caret stands in the parts whose words hold it most closely', () => {
    const kept = new KeptPicture();
    expect(kept.partsAt(5)).toEqual({ piece: 0, parts: [] });
    const piece = chest();
    const bare = { mark: '', sizes: [], material: '', derivation: '' };
    const whole = { ...bare, id: 'case', label: 'case', span: { start: 0, end: 400 } };
    const twin = { ...bare, id: 'box/dice', label: 'box', span: { start: 120, end: 135 } };
    kept.receive(frame(picture(1, { pieces: [{ ...piece, parts: [whole, ...piece.parts, twin] }] })), 9);
    expect(kept.partsAt(125)).toEqual({ piece: 0, parts: ['front/dice', 'box/dice'] });
    expect(kept.partsAt(137)).toEqual({ piece: 0, parts: ['case'] });
    expect(kept.partsAt(500)).toEqual({ piece: 0, parts: [] });
  });
});
