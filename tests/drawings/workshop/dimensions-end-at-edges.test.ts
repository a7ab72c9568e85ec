import { type Drawing, insideElevation, planSection, sideElevation, toSvg, verticalSection } from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';
import { expect, it } from 'vitest';
import { evaluatedSideboard, gallery } from '../pieces-to-draw.ts';
import { classes, elements, number, readSvg, rectBox, scaleOf, withClass } from '../reading-svg.ts';

/** A dimension from nowhere to nowhere cannot be checked against the drawing: each of its ends is where a line is. */

/** The border of a wide outline is the true edge, its middle half a pen away; both on paper, in mm. */
const PEN_MM = 0.2;
/** Of these there is no case, so that their sizes over all have nothing to end at. */
const BARE = ['forty in a row', 'needle', 'spice box'];
const DRAWN = ['edge', 'cut', 'behind', 'hidden', 'before', 'floor'];

const drawings: readonly (readonly [string, (evaluation: Evaluation) => Drawing])[] = [
  ['plan section', planSection],
  ['vertical section', verticalSection],
  ['inside elevation', insideElevation],
  ['side elevation', sideElevation],
];

/** Where lines are, along an axis: ends of lines, corners of outlines and sides of frames. */
function placesAlong(root: ReturnType<typeof readSvg>, axis: 'x' | 'y'): readonly number[] {
  const lines = elements(root, 'line').filter((line) => classes(line).some((word) => DRAWN.includes(word)));
  const outlines = [...elements(root, 'polygon'), ...elements(root, 'polyline')].filter((outline) =>
    classes(outline).some((word) => DRAWN.includes(word)),
  );
  const frames = withClass(root, 'rect', 'edge').map(rectBox);
  return [
    ...lines.flatMap((line) => [number(line, `${axis}1`), number(line, `${axis}2`)]),
    ...outlines.flatMap((outline) =>
      (outline.getAttribute('points') ?? '')
        .split(' ')
        .map((pair) => Number(pair.split(',')[axis === 'x' ? 0 : 1] ?? Number.NaN)),
    ),
    ...frames.flatMap(({ left, right, top, bottom }) => (axis === 'x' ? [left, right] : [top, bottom])),
  ];
}

it.each(drawings)('every dimension of a %s ends at lines of the drawing', (_, draw) => {
  let ends = 0;
  const loose: string[] = [];
  for (const [name, make] of Object.entries(gallery)) {
    if (BARE.includes(name)) continue;
    const root = readSvg(toSvg(draw(make())));
    const places = { x: placesAlong(root, 'x'), y: placesAlong(root, 'y') };
    for (const measure of withClass(root, 'g', 'measure')) {
      const axis = classes(measure).includes('x') ? 'x' : 'y';
      const [line] = elements(measure, 'line');
      if (line === undefined) continue;
      for (const end of [number(line, `${axis}1`), number(line, `${axis}2`)]) {
        ends += 1;
        const nearest = Math.min(...places[axis].map((place) => Math.abs(place - end)));
        if (nearest >= PEN_MM)
          loose.push(`${name}: ${axis} ${end}, ${nearest.toFixed(2)} mm off, of ${(measure.textContent ?? '').trim()}`);
      }
    }
  }
  expect(loose).toEqual([]);
  expect(ends).toBeGreaterThan(50);
});

it('the plan of the sideboard has the outline of its top, which it takes away, and says whose it is', () => {
  const root = readSvg(toSvg(planSection(evaluatedSideboard())));
  const scale = scaleOf(root);
  const lines = withClass(root, 'line', 'before');
  const reach = (axis: 'x' | 'y'): number => {
    const ends = lines.flatMap((line) => [number(line, `${axis}1`), number(line, `${axis}2`)]);
    return Math.max(...ends) - Math.min(...ends);
  };
  // 60 wide, 17 deep, of which the case beneath is 58-1/2 and 16-1/4.
  expect(reach('x')).toBeCloseTo(60 * 25.4 * scale, 2);
  expect(reach('y')).toBeCloseTo(17 * 25.4 * scale, 2);
  const notes = withClass(root, 'text', 'note').map((text) => text.textContent);
  expect(notes.join(' ')).toMatch(/ashes with two dots: [^.]*\bA, above the cut/);
});
