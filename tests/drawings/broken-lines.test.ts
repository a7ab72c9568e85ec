import fc from 'fast-check';
import { expect, it } from 'vitest';
import { brokenAround } from '../../packages/drawings/src/broken-lines.ts';
import { line } from '../../packages/drawings/src/primitives.ts';

const number = fc.double({ min: 0, max: 100, noNaN: true });
const box = fc
  .tuple(number, number, number, number)
  .map(([x, y, w, h]) => ({ left: x, top: y, right: x + w / 4 + 0.1, bottom: y + h / 4 + 0.1 }));

it('leaves a line open half a millimetre around a box', () => {
  const pieces = brokenAround(line('extension', 0, 0, 100, 0), [{ left: 40, right: 60, top: -2, bottom: 2 }]);
  expect(pieces.map(({ from, to }) => [from.x, to.x])).toEqual([
    [0, 39.5],
    [60.5, 100],
  ]);
});

it('leaves alone a line that passes by', () => {
  const whole = line('extension', 0, 0, 100, 0);
  expect(brokenAround(whole, [{ left: 40, right: 60, top: 3, bottom: 5 }])).toEqual([whole]);
});

it('draws nothing of a line inside a box', () => {
  expect(brokenAround(line('extension', 1, 1, 2, 2), [{ left: 0, right: 9, top: 0, bottom: 9 }])).toEqual([]);
});

it('keeps out of every box and stays on the line', () => {
  fc.assert(
    fc.property(number, number, number, number, fc.array(box, { maxLength: 6 }), (x1, y1, x2, y2, boxes) => {
      const whole = line('hidden', x1, y1, x2, y2);
      for (const { from, to } of brokenAround(whole, boxes)) {
        for (const t of [0.01, 0.25, 0.5, 0.75, 0.99]) {
          const x = from.x + t * (to.x - from.x);
          const y = from.y + t * (to.y - from.y);
          expect(boxes.some((b) => b.left < x && x < b.right && b.top < y && y < b.bottom)).toBe(false);
          const off = (x - x1) * (y2 - y1) - (y - y1) * (x2 - x1);
          expect(Math.abs(off)).toBeLessThan(1e-6 * 1e4);
        }
      }
    }),
  );
});
