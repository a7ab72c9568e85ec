import { toSvg } from '@fettle/drawings';
import { evaluatePiece } from '@fettle/engine';
import { expect, it } from 'vitest';
import { written } from '../../engine/design-builder.ts';
import {
  caseOnly,
  evaluatedSideboard,
  gallery,
  named,
  pieceDesign,
  vanity,
  wallCupboard,
  withoutHeight,
} from '../pieces-to-draw.ts';
import { type Box, classes, elements, isInside, overlaps, readSvg, textBoxOf } from '../reading-svg.ts';
import { everySection, workshopDrawings } from './drawings-of-pieces.ts';

/** What holds for every drawing of every piece: it is well-formed, says whose everything is, and can be read. */

/** The largest have hundreds of parts: of those a few drawings will do. */
const LARGE = 150;

it.each(Object.entries(gallery))(
  'every drawing of %s names the part of all it draws, and can be read',
  (piece, make) => {
    const evaluation = make();
    const byId = new Map(evaluation.parts.map((part) => [part.id, part]));
    const drawings = Object.entries(workshopDrawings(evaluation));
    const some =
      evaluation.parts.length > LARGE ? drawings.filter(([name]) => /section|side|parts-1$/.test(name)) : drawings;
    for (const [name, draw] of some) {
      const svg = toSvg(draw());
      const root = readSvg(svg);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      const groups = elements(root, 'g').filter((group) => group.hasAttribute('data-part'));
      // Without a size, or inside a box that is all drawer, there is nothing to draw, and the sheet says so.
      if (groups.length === 0) {
        expect(['spice box', 'without height'], name).toContain(piece);
        expect(root.textContent, name).toContain('Nothing is drawn yet');
      }
      for (const group of groups) {
        const part = byId.get(group.getAttribute('data-part') ?? '');
        if (part === undefined) throw new Error(`${group.getAttribute('data-part')} is no part`);
        expect(group.getAttribute('aria-label')).toContain(`mark ${part.mark}`);
      }
      const ids = [root, ...elements(root, '*')].flatMap((element) => element.getAttribute('id') ?? []);
      expect(new Set(ids).size).toBe(ids.length);
      expect(faultsOfLettering(root), name).toEqual([]);
    }
  },
);

it.each([
  ['sideboard', evaluatedSideboard],
  ['vanity', vanity],
  ['wall cupboard', wallCupboard],
])('sections through each opening of the %s are as readable', (_, make) => {
  for (const drawing of everySection(make())) {
    expect(faultsOfLettering(readSvg(toSvg(drawing))), drawing.title).toEqual([]);
  }
});

it('draws the same twice', () => {
  for (const draw of Object.values(workshopDrawings(vanity()))) expect(toSvg(draw())).toBe(toSvg(draw()));
});

it('what cannot be drawn is said on the sheet', () => {
  for (const evaluation of [withoutHeight(), evaluatePiece(pieceDesign({ wide: written('0'), high: written('30') }))]) {
    for (const draw of Object.values(workshopDrawings(evaluation))) {
      const root = readSvg(toSvg(draw()));
      expect(
        elements(root, 'text')
          .map((text) => text.textContent)
          .join('\n'),
      ).toMatch(/Nothing is drawn yet/);
    }
  }
  expect(
    elements(readSvg(toSvg(workshopDrawings(caseOnly())['section']?.() ?? fail())), 'line').length,
  ).toBeGreaterThan(9);
});

it('names are text, whatever they hold', () => {
  const hostile = '</text><script>alert(1)</script>" onload="x" ]]>&#0; \u202e';
  for (const draw of Object.values(workshopDrawings(named(hostile)))) {
    const root = readSvg(toSvg(draw(), { standalone: true }));
    expect(elements(root, 'script')).toEqual([]);
    for (const element of elements(root, '*')) expect(element.hasAttribute('onload')).toBe(false);
  }
});

function fail(): never {
  throw new Error('every piece has a section');
}

function frameOf(root: ReturnType<typeof readSvg>): Box {
  const [, frame] = elements(root, 'g')
    .filter((group) => classes(group).includes('frame'))
    .flatMap((group) => [group, ...elements(group, 'polygon')]);
  const points = (frame?.getAttribute('points') ?? '').split(' ').map((pair) => pair.split(',').map(Number));
  const xs = points.map(([x = 0]) => x);
  const ys = points.map(([, y = 0]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Lettering on other lettering, and lettering beyond the frame. */
function faultsOfLettering(root: ReturnType<typeof readSvg>): readonly string[] {
  const frame = frameOf(root);
  const texts = elements(root, 'text').map((text) => ({ words: text.textContent, box: textBoxOf(text) }));
  const outside = texts.filter(({ box }) => !isInside(box, frame)).map(({ words }) => `${words} beyond the frame`);
  const pairs = texts.flatMap((one, at) =>
    texts
      .slice(at + 1)
      .filter((other) => overlaps(one.box, other.box))
      .map((other) => `${one.words} on ${other.words}`),
  );
  return [...outside, ...pairs];
}
