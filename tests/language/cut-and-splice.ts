import fc from 'fast-check';
import { example, shop, sideboard } from './sideboard.ts';

/** Texts made of the examples by cutting, splicing, doubling and by marks thrown in: none of them is what anyone meant. */

const others = ['chest', 'vanity', 'wall-cupboard', 'metric-shop'].map((name) => example(`${name}.fettle`).text);
const sources = [sideboard, shop, `${shop}\n${sideboard}`, ...others];
const intruders = [
  '{',
  '}',
  '"',
  '“',
  ',',
  '(',
  ')',
  '-',
  '/*',
  '*/',
  '//',
  '\n',
  '\r\n',
  ' ',
  '  ',
  '3/4',
  '"x"',
  '½',
  ';',
  'é',
];

const cut = fc.record({ from: fc.nat({ max: 4000 }), length: fc.nat({ max: 400 }) });

const step = fc.oneof(
  fc.record({ kind: fc.constant('cut' as const), at: cut }),
  fc.record({ kind: fc.constant('double' as const), at: cut, to: fc.nat({ max: 4000 }) }),
  fc.record({ kind: fc.constant('insert' as const), what: fc.constantFrom(...intruders), to: fc.nat({ max: 4000 }) }),
);

/** `steps` at most; none at all gives the examples themselves. */
export function cutAndSpliced(steps: number): fc.Arbitrary<string> {
  return fc
    .record({ source: fc.constantFrom(...sources), steps: fc.array(step, { maxLength: steps }) })
    .map(({ source, steps: taken }) => taken.reduce(apply, source));
}

function apply(text: string, taken: typeof step extends fc.Arbitrary<infer Step> ? Step : never): string {
  const within = (offset: number) => offset % (text.length + 1);
  switch (taken.kind) {
    case 'cut': {
      const from = within(taken.at.from);
      return text.slice(0, from) + text.slice(from + taken.at.length);
    }
    case 'double': {
      const from = within(taken.at.from);
      const to = within(taken.to);
      return text.slice(0, to) + text.slice(from, from + taken.at.length) + text.slice(to);
    }
    case 'insert': {
      const to = within(taken.to);
      return text.slice(0, to) + taken.what + text.slice(to);
    }
    default: {
      const unknown: never = taken;
      return unknown;
    }
  }
}
