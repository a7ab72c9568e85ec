import { describeElevation, elevation, toSvg } from '@fettle/drawings';
import { evaluatePiece, given, Length, type PieceDesign } from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  door,
  drawer,
  front,
  open,
  partition,
  place,
  rest,
  row,
  share,
  stack,
  webFrame,
  written,
} from '../engine/design-builder.ts';
import { sideboard } from '../engine/sideboard-design.ts';
import { caseOnly, evaluatedSideboard, pieceDesign, withoutHeight } from './pieces-to-draw.ts';
import { elements, readSvg } from './reading-svg.ts';

/** Pieces that are not finished, not possible or not sensible still give a sheet, and it says what is the matter. */

function sheetWords(design: PieceDesign): string {
  const root = readSvg(toSvg(elevation(evaluatePiece(design))));
  return elements(root, 'text')
    .map((text) => text.textContent)
    .join('\n');
}

describe('what is missing is said', () => {
  it('a size', () => {
    const root = readSvg(toSvg(elevation(withoutHeight())));
    expect(root.textContent).toContain('Nothing is drawn yet: the piece still lacks height.');
    expect(root.textContent).toContain('60" × ? × 17"');
  });

  it('all sizes', () => {
    const { size, ...design } = sideboard();
    expect(sheetWords({ ...design, size: { origin: size.origin } })).toContain('lacks width and height and depth');
  });

  it('the face', () => {
    expect(readSvg(toSvg(elevation(caseOnly()))).textContent).toContain(
      'No face is written, so only the case is drawn',
    );
  });

  it('every part', () => {
    const design = pieceDesign({ wide: written('20'), high: written('10'), bare: true });
    expect(sheetWords(design)).toContain('no part is known yet');
  });
});

describe('impossible sizes', () => {
  it.each([
    ['0', '30'],
    ['-5', '30'],
    ['30', '0'],
  ])('%s wide by %s high is refused in words', (wide, high) => {
    const words = sheetWords(pieceDesign({ wide: written(wide), high: written(high) }));
    expect(words).toContain('more than nothing');
  });

  it('fronts that leave no room for another are left out and the sheet warns', () => {
    const root = stack('stack', rest, [drawer('a', front('40')), drawer('b', rest)], [webFrame('frame', '3/4')]);
    const words = sheetWords(pieceDesign({ wide: written('30'), high: written('30'), root }));
    expect(words).toContain('Do not build from this sheet');
  });
});

describe('extreme sizes', () => {
  it.each([
    ['1000 by 2', 1000n, 2n],
    ['2 by 1000', 2n, 1000n],
    ['a mile', 63_360n, 63_360n],
    ['a tenth of a light year', 37_000_000_000_000_000n, 10n],
    ['beyond all numbers', 10n ** 400n, 10n ** 400n],
  ])('%s inches', (_, wide, high) => {
    const figure = (n: bigint) => given(Length.inches(n), place());
    const root = row('row', rest, [drawer('a', share(1)), drawer('b', share(1))], [partition('p', '3/4')]);
    const design = pieceDesign({ wide: figure(wide), high: figure(high), root });
    const svg = toSvg(elevation(evaluatePiece(design)));
    expect(/NaN|Infinity/.test(svg)).toBe(false);
    expect(readSvg(svg).getAttribute('viewBox')).toMatch(
      /^0 0 (215\.9 279\.4|279\.4 215\.9|279\.4 431\.8|431\.8 279\.4)$/,
    );
  });

  it('a thousandth of an inch', () => {
    const tiny = given(Length.inches(1, 1000), place());
    const svg = toSvg(
      elevation(evaluatePiece(pieceDesign({ wide: tiny, high: tiny, bare: true, root: drawer('a', rest) }))),
    );
    expect(/NaN|Infinity/.test(svg)).toBe(false);
    expect(elements(readSvg(svg), 'text').length).toBeGreaterThan(5);
  });
});

it('gives a well-formed sheet without stray numbers for any mixture of cells and sizes', () => {
  const leaf = (id: string) =>
    fc
      .tuple(
        fc.constantFrom('drawer', 'door', 'open'),
        fc.constantFrom(1 as const, 2 as const),
        fc.integer({ min: 1, max: 9 }),
      )
      .map(([kind, leaves, weight]) =>
        kind === 'drawer'
          ? drawer(id, share(weight))
          : kind === 'door'
            ? door(id, share(weight), { leaves })
            : open(id, share(weight)),
      );
  const group = (
    id: string,
    make: typeof row | typeof stack,
    inner: (id: string) => fc.Arbitrary<ReturnType<typeof drawer> | ReturnType<typeof row> | ReturnType<typeof open>>,
  ) =>
    fc.integer({ min: 1, max: 5 }).chain((count) =>
      fc.tuple(...Array.from({ length: count }, (_, at) => inner(`${id}/${at}`))).map((cells) =>
        make(
          id,
          share(1),
          cells,
          Array.from({ length: count - 1 }, (_, at) =>
            make === row ? partition(`${id}-p${at}`, '3/4') : webFrame(`${id}-w${at}`, '3/4'),
          ),
        ),
      ),
    );
  const root = group('r', row, (id) => fc.oneof(leaf(id), group(id, stack, leaf)));
  const inches = fc.integer({ min: 1, max: 4000 }).map((eighths) => given(Length.inches(eighths, 8), place()));
  fc.assert(
    fc.property(root, inches, inches, fc.boolean(), (cell, wide, high, bare) => {
      const evaluation = evaluatePiece(pieceDesign({ wide, high, bare, root: cell }));
      const svg = toSvg(elevation(evaluation));
      readSvg(svg);
      expect(/NaN|Infinity|undefined/.test(svg)).toBe(false);
    }),
    { numRuns: 60 },
  );
});

describe('in words', () => {
  it('tells the sideboard from left to right and from top to bottom', () => {
    const words = describeElevation(evaluatedSideboard());
    const order = [
      'Front elevation of Games sideboard',
      '“left”',
      'Partition',
      '“cards”',
      'Web frame',
      '“dice”',
      '“blankets”',
      '“right”',
    ];
    const places = order.map((word) => words.indexOf(word));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(words).toContain('Drawer “blankets”, 17-13/16" wide by 10-5/32" high');
  });

  it('does not invent what is not known', () => {
    expect(describeElevation(withoutHeight())).toBe(
      'Front elevation of Games sideboard. 60" wide and 17" deep over all. Nothing is drawn until width, height and depth are given.',
    );
  });
});
