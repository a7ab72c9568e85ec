import {
  assumed,
  derive,
  explain,
  type Figure,
  fromShop,
  given,
  Length,
  less,
  measured,
  plus,
  Rational,
  rootOrigin,
} from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { inches, place, written } from '../design-builder.ts';
import { say } from '../reading-layouts.ts';

const half = Rational.of(1, 2);

describe('a derived figure', () => {
  it('is the sum that it says it is', () => {
    const figure = derive('width of the face', [
      plus('width of the body', written('58-1/2')),
      less('thickness of the sides', written('3/4'), 2),
    ]);
    expect(figure.length.exactInches).toBe('57');
    expect(explain(figure, say)).toBe(
      [
        '57" = 117/2" (width of the body) − 2 × 3/4" (thickness of the sides)',
        '  117/2" (width of the body): written here',
        '  3/4" (thickness of the sides): written here',
      ].join('\n'),
    );
  });

  it('counts halves and other fractions exactly', () => {
    const figure = derive('', [plus('a', written('1'), half), plus('b', written('1'), Rational.of(1, 3))]);
    expect(figure.length.exactInches).toBe('5/6');
    expect(explain(figure, say).split('\n')[0]).toBe('5/6" = half of 1" (a) + 1/3 of 1" (b)');
    const more = derive('one and a half', [
      plus('a', written('1'), Rational.of(3, 2)),
      less('b', written('1'), Rational.of(5, 4)),
    ]);
    expect(explain(more, say).split('\n')[0]).toBe('1/4" = 1-1/2 × 1" (a) − 1-1/4 × 1" (b)');
  });

  it('names what stands beside the sum without counting it', () => {
    const figure = derive('', [plus('a', written('2'), 2), { sign: '', label: 'at most', figure: written('9') }]);
    expect(figure.length.exactInches).toBe('4');
    expect(explain(figure, say).split('\n')[0]).toBe('4" = 2 × 2" (a); at most: 9"');
  });

  it('of a single plain term is told by its rule', () => {
    expect(explain(derive('as deep as the slide is long', [plus('length of the slide', written('14'))]), say)).toBe(
      '14": as deep as the slide is long\n  14" (length of the slide): written here',
    );
  });

  it('of no terms is zero and told by its rule', () => {
    expect(explain(derive('the floor', []), say)).toBe('0": the floor');
  });

  it('leaves out terms that are nothing', () => {
    const figure = derive('', [
      plus('depth', written('17')),
      less('overhang', written('0')),
      less('back', written('1/4')),
    ]);
    expect(explain(figure, say).split('\n')[0]).toBe('67/4" = 17" (depth) − 1/4" (back)');
  });

  it('that begins with a term taken away says so', () => {
    expect(explain(derive('', [less('gap', written('1')), plus('lap', written('3'))]), say).split('\n')[0]).toBe(
      '2" = − 1" (gap) + 3" (lap)',
    );
  });
});

describe('the leaves of a derivation', () => {
  it.each<[string, Figure]>([
    ['1": written here', written('1')],
    ['1": measured', measured(inches('1'), place())],
    ['1": measured; 2" was planned', measured(inches('1'), place(), written('2'))],
    ['1": from shop entry "ash"', fromShop(inches('1'), 'ash', place('shop'))],
    ['1": assumed: common practice', assumed(inches('1'), 'common practice')],
  ])('say %s', (words, figure) => {
    expect(explain(figure, say)).toBe(words);
  });
});

describe('a derivation of any depth and breadth', () => {
  const deep = (levels: number) => {
    let figure = written('1');
    for (let level = 0; level < levels; level += 1)
      figure = derive('', [plus('below', figure), plus('more', written('1'))]);
    return figure;
  };

  it('is told four levels deep', () => {
    expect(
      explain(deep(50), say)
        .split('\n')
        .some((line) => line.startsWith(' '.repeat(8))),
    ).toBe(false);
    expect(explain(deep(50), say).split('\n')[0]).toBe('51" = 50" (below) + 1" (more)');
  });

  it('is told in at most 16 lines, with the number of terms left out', () => {
    const wide = derive(
      '',
      Array.from({ length: 40 }, (_, at) => plus(`term ${at}`, written('1'))),
    );
    const lines = explain(wide, say).split('\n');
    expect(lines.length).toBeLessThanOrEqual(16);
    expect(lines[0]).toMatch(/ and 28 more$/);
  });

  it('of twenty thousand levels does not exhaust the stack', () => {
    const figure = deep(20_000);
    expect(explain(figure, say).split('\n').length).toBeLessThanOrEqual(16);
    expect(rootOrigin(figure)).toBeDefined();
  });

  it('tells a figure that enters twice only once', () => {
    const gap = derive('the gap', [plus('gap of the face', written('3/32'), 2)]);
    const figure = derive('', [plus('left', gap), plus('right', gap)]);
    expect(
      explain(figure, say)
        .split('\n')
        .filter((line) => line.includes('gap of the face')),
    ).toHaveLength(2);
  });
});

describe('the words at the root of a figure', () => {
  it('are those of its first added term', () => {
    const origin = place();
    const figure = derive('', [less('gap', written('1')), plus('width', given(Length.inches(9), origin))]);
    expect(rootOrigin(figure)).toEqual(origin);
  });

  it('are none where the trail ends in an assumption', () => {
    expect(rootOrigin(derive('', [plus('a', assumed(inches('1'), 'habit'))]))).toBeUndefined();
  });
});
