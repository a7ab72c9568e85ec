import {
  type FrameState,
  frameOf,
  isPictureFrame,
  type Picture,
  type PictureFinding,
  withFrame,
} from '@fettle/protocol';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packedSvg, unpackedSvg } from '../../packages/protocol/src/packed-svg.ts';
import { chest, picture, redrawn } from './pictures.ts';

/** What an edit sends: what it changed, and little else. */

function sentAfter(before: Picture, now: Picture) {
  const sent: FrameState = { frame: 1, picture: before };
  const frame = structuredClone(frameOf(now, sent));
  expect(isPictureFrame(frame)).toBe(true);
  expect(withFrame(sent, frame)?.picture).toEqual(now);
  return frame;
}

function finding(piece: number, start: number, sentence = 'The drawer is too high'): PictureFinding {
  return {
    code: 'size-absurd',
    severity: 'error',
    sentence,
    span: { start, end: start + 5 },
    piece,
    parts: [`front/${piece}`],
  };
}

describe('a frame', () => {
  test('of a key in one of many pieces tells the findings of that piece, and how far the others have moved', () => {
    const found = Array.from({ length: 100 }, (_, piece) => finding(piece, piece * 50));
    const now = found.flatMap((each, piece) => {
      if (piece === 40) return [finding(40, 2000, 'The drawer is 1" too high'), finding(40, 2010)];
      const { start, end } = each.span;
      return piece < 40 ? [each] : [{ ...each, span: { start: start + 1, end: end + 1 } }];
    });
    const frame = sentAfter(picture(1, { findings: found }), picture(2, { findings: now }));
    expect(frame.findings).toEqual([
      { from: 0, count: 40, moved: 0 },
      finding(40, 2000, 'The drawer is 1" too high'),
      { from: 40, count: 1, moved: 10 },
      { from: 41, count: 59, moved: 1 },
    ]);
  });

  test('names the parts that stayed as they were, and sends the others', () => {
    const piece = chest();
    const parts = piece.parts.map((part) =>
      part.id === 'front/dice' ? { ...part, sizes: ['80"', '21"', '3/4"'] } : { ...part },
    );
    const frame = sentAfter(picture(1, { pieces: [piece] }), picture(2, { pieces: [{ ...piece, parts }] }));
    expect(frame.pieces[0]?.parts).toEqual(['front/cards', parts[1], 'front/maps', 'front/blankets']);
    expect(frame.pieces[0]?.sheets).toBeUndefined();
  });

  test('names a sheet that was made anew and is the same', () => {
    const piece = chest();
    const same = structuredClone(piece.sheets);
    const frame = sentAfter(picture(1, { pieces: [piece] }), picture(2, { pieces: [{ ...piece, sheets: same }] }));
    expect(frame.pieces[0]?.sheets).toEqual(['elevation', 'cut-list']);
    const drawn = redrawn(piece, (svg) => svg.replace('x="10"', 'x="11"'));
    const other = sentAfter(picture(1, { pieces: [piece] }), picture(2, { pieces: [drawn] }));
    expect(other.pieces[0]?.sheets).toMatchObject([{ id: 'elevation' }, 'cut-list']);
  });

  test('that keeps findings there never were presumes what never came', () => {
    const sent = { frame: 1, picture: picture(1, { findings: [finding(0, 0)] }) };
    const frame = frameOf(picture(2, { findings: [] }), sent);
    expect(withFrame(sent, { ...frame, findings: [{ from: 0, count: 2, moved: 0 }] })).toBeUndefined();
  });

  test('whatever is found before and after, the list arrives as it is', () => {
    const some = fc.record({
      piece: fc.nat(2),
      start: fc.nat(300),
      sentence: fc.constantFrom('too high', 'too wide', 'no room'),
    });
    const list = fc.array(
      some.map(({ piece, start, sentence }) => finding(piece, start, sentence)),
      { maxLength: 20 },
    );
    fc.assert(
      fc.property(list, list, (before, now) => {
        sentAfter(picture(1, { findings: before }), picture(2, { findings: now }));
      }),
    );
  });
});

describe('a drawing on its way', () => {
  const line = (x: number) => `<line class="edge" x1="${x}" x2="9" fill="none" stroke="var(--ink, currentColor)"/>`;

  test('tells each pen once', () => {
    const svg = Array.from({ length: 200 }, (_, x) => line(x)).join('\n');
    const { ends, text } = packedSvg(svg);
    expect(ends).toEqual([' fill="none" stroke="var(--ink, currentColor)"/>']);
    expect(text.length).toBeLessThan(svg.length / 2);
    expect(unpackedSvg({ ends, text })).toBe(svg);
  });

  test('comes out as it went in, whatever stands in it and however many pens there are', () => {
    const word = fc.oneof(
      fc.string(),
      fc.constantFrom(' fill="', ' stroke="', '>', '/>', '\u007f', '\u007f0', '$&', '\n'),
      fc.nat(200).map((pen) => ` fill="${pen}"/>`),
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 300, size: 'max' }), (words) => {
        const text = words.join('');
        expect(unpackedSvg(packedSvg(text))).toBe(text);
      }),
    );
  });
});
