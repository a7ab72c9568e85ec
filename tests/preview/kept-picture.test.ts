import { KeptPicture, moveSpan, type SpanEdit, tabSeparated } from '@fettle/extension';
import { type FrameState, frameOf, type PieceView, withFrame } from '@fettle/protocol';
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

  test('finds the part of a click that was made before the picture was made anew, if it is still there', () => {
    const kept = new KeptPicture();
    kept.receive(frame(picture(1, { pieces: [chest([20, 30])], findings: [tooHigh] })), 9);
    kept.edited(2, [{ start: 0, removed: 0, inserted: 10 }]);
    const other = { ...chest([20]), key: 'Other' };
    kept.receive(frame(picture(2, { pieces: [other, chest([20, 30])], findings: [tooHigh] })), 9);
    // It stands behind another piece now, which has a part of that name as well.
    expect(kept.wordsOf(choose(1))).toEqual(kept.wordsOf(choose(2, 'front/dice', 1)));
    expect(kept.wordsOf(choose(1))).toBeDefined();
    // Which finding stood at that place then, nobody knows any more.
    expect(kept.wordsOf({ kind: 'choose-finding', uri, version: 2, finding: 0 })).toBeDefined();
    expect(kept.wordsOf({ kind: 'choose-finding', uri, version: 1, finding: 0 })).toBeUndefined();
    kept.receive(frame(picture(3, { pieces: [other] })), 9);
    expect(kept.wordsOf(choose(1))).toBeUndefined();
    // Opened again, its versions count from the start: an old one may be any of them.
    kept.countAnew();
    expect(kept.wordsOf(choose(1))).toBeUndefined();
    expect(kept.wordsOf(choose(2))).toBeUndefined();
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

describe('frames', () => {
  const second = { ...chest([40, 40]), key: 'Second', name: 'Second', span: { start: 400, end: 700 } };
  const broken = { ...chest(), parts: [], sheets: [] };
  const error = { ...tooHigh, piece: 0, span: { start: 0, end: 5 }, parts: [] };

  test('put together give the picture that was taken apart, whatever changed in between', () => {
    const piece = fc.record({ name: fc.constantFrom('A', 'B', 'C'), heights: fc.array(fc.nat(40), { maxLength: 3 }) });
    fc.assert(
      fc.property(fc.array(fc.array(piece, { maxLength: 3 }), { minLength: 1, maxLength: 8 }), (states) => {
        let sent: FrameState | undefined;
        let received: FrameState | undefined;
        const made = new Map<string, PieceView>();
        states.forEach((pieces, version) => {
          const views = pieces.map(({ name, heights }, at) => {
            // The same objects while nothing changes, as whoever draws them keeps them.
            const id = `${name} ${at} ${heights}`;
            const view = made.get(id) ?? { ...chest(heights), key: `${name} ${at}`, name };
            made.set(id, view);
            return { ...view, span: { start: version, end: version + 10 } };
          });
          const whole = picture(version, { pieces: views });
          const travelling = structuredClone(frameOf(whole, sent));
          sent = { frame: travelling.frame, picture: whole };
          received = withFrame(received, travelling);
          expect(received?.picture).toEqual(whole);
        });
      }),
    );
  });

  test('that presume what never came are lost, and a full one sets it right', () => {
    const kept = new KeptPicture();
    const first = { frame: 1, picture: picture(1) };
    expect(kept.receive(frameOf(picture(2), first), 9)).toEqual({ kind: 'lost' });
    expect(kept.shown).toBeUndefined();
    expect(kept.receive(frame(picture(2)), 9)).toEqual({ kind: 'taken', anew: false });
  });

  test('of an older version are noted although they are not shown', () => {
    const kept = new KeptPicture();
    kept.receive(frame(picture(1)), 1);
    kept.countAnew();
    const later = frameOf(picture(6, { pieces: [chest([9])] }), { frame: 1, picture: picture(1) });
    expect(kept.receive(later, 1)).toEqual({ kind: 'dropped' });
    const after = frameOf(picture(1, { pieces: [chest([8])] }), { frame: later.frame, picture: picture(6) });
    expect(kept.receive(after, 1)).toEqual({ kind: 'taken', anew: true });
    expect(kept.shown?.pieces[0]?.parts).toHaveLength(1);
  });

  test('a piece that is wrong and has lost its parts keeps those it had, marked; the others go on', () => {
    const kept = new KeptPicture();
    kept.receive(frame(picture(1, { pieces: [chest(), second] })), 9);
    kept.receive(frame(picture(2, { pieces: [broken, { ...second, parts: [] }], findings: [error] })), 9);
    expect(kept.shown?.readable).toBe(true);
    expect(kept.shown?.pieces.map(({ stale, parts }) => [stale, parts.length])).toEqual([
      [true, 4],
      [undefined, 0],
    ]);
    kept.receive(frame(picture(3, { pieces: [chest(), second] })), 9);
    expect(kept.shown?.pieces.map(({ stale }) => stale)).toEqual([undefined, undefined]);
  });

  test('a piece that is emptied on purpose is empty', () => {
    const kept = new KeptPicture();
    kept.receive(frame(picture(1)), 9);
    kept.receive(frame(picture(2, { pieces: [broken] })), 9);
    expect(kept.shown?.pieces[0]?.parts).toEqual([]);
  });

  test('what was kept over a reload stands in while the text is broken, and no longer', () => {
    const kept = new KeptPicture();
    kept.startFrom(uri, chest());
    expect(kept.shown?.readable).toBe(false);
    kept.receive(frame(picture(1, { readable: false, pieces: [broken, second] })), 1);
    expect(kept.shown?.pieces.map(({ key, parts }) => [key, parts.length])).toEqual([
      ['Chest', 4],
      ['Second', 2],
    ]);
    kept.receive(frame(picture(2)), 2);
    expect(kept.shown?.pieces.map(({ key }) => key)).toEqual(['Chest']);
  });
});

describe('a table for the clipboard', () => {
  test('keeps its cells apart, and no cell is a formula', () => {
    const rows = [{ parts: [], cells: ['=1+1', 'two\tlines\nof "names"', '-3'] }];
    const text = tabSeparated({ kind: 'table', id: 't', title: 'T', columns: ['A', 'B', 'C'], rows });
    expect(text).toBe('A\tB\tC\n\'=1+1\ttwo lines of "names"\t\'-3\n');
  });
});
