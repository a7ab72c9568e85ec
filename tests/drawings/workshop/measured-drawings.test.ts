import { explodedView, partDrawings, partSheets, planSection, toSvg, verticalSection, walk } from '@fettle/drawings';
import { expect, it } from 'vitest';
import { evaluatedSideboard, gallery, vanity } from '../pieces-to-draw.ts';
import { classes, elements, number, partGroups, readSvg, scaleOf, withClass } from '../reading-svg.ts';

/** Sections, parts and the exploded view are read back and measured against the piece. */

/** Coordinates are written to a thousandth of a millimetre on paper; a distance has two ends. */
const ROUNDING_MM = 0.0021;

type Group = ReturnType<typeof readSvg>;

/** From the ink of a cut part: its pen stays inside, so its outer border is the true edge. */
function cutReach(group: Group, axis: 'x' | 'y'): readonly [number, number] {
  const places = withClass(group, 'line', 'cut').flatMap((line) => [
    number(line, `${axis}1`),
    number(line, `${axis}2`),
  ]);
  return [Math.min(...places), Math.max(...places)];
}

it('the gaps between the drawers of the sideboard are 3/32 inch in its section', () => {
  const evaluation = evaluatedSideboard();
  const root = readSvg(toSvg(verticalSection(evaluation)));
  const scale = scaleOf(root);
  const groups = partGroups(root);
  const reaches = ['cards', 'dice', 'maps', 'blankets'].map((name) => {
    const group = groups.get(`${name}/front`);
    if (group === undefined) throw new Error(`${name} is not drawn`);
    return cutReach(group, 'y');
  });
  for (let at = 1; at < reaches.length; at++) {
    const gap = (reaches[at]?.[0] ?? 0) - (reaches[at - 1]?.[1] ?? 0);
    expect(Math.abs(gap - (3 / 32) * 25.4 * scale)).toBeLessThan(ROUNDING_MM);
  }
  const figures = withClass(root, 'text', 'figure').map((text) => text.textContent);
  // Worked by hand: fronts of 5, 6, 7 and 10-5/32 with five gaps of 3/32 fill 28-5/8.
  for (const figure of ['5"', '6"', '7"', '10-5/32"', '3/32"', '34"']) expect(figures).toContain(figure);
  expect(figures.filter((figure) => figure === '3/32"')).toHaveLength(5);
});

it('every part a section cuts reaches as far as its wood, and every part is inside the piece', () => {
  for (const make of [evaluatedSideboard, vanity]) {
    const evaluation = make();
    const root = readSvg(toSvg(planSection(evaluation)));
    const scale = scaleOf(root);
    const [outside] = withClass(root, 'rect', 'outside');
    if (outside === undefined) throw new Error('the outline is drawn');
    const left = number(outside, 'x');
    let cut = 0;
    for (const [id, group] of partGroups(root)) {
      const part = evaluation.parts.find((each) => each.id === id);
      if (part === undefined || !classes(group).includes('cut')) continue;
      const [from, to] = cutReach(group, 'x');
      const real = (figure: { length: { approximateInches: number } }): number =>
        left + figure.length.approximateInches * 25.4 * scale;
      // What is cut away at an end may be missing in the plane; nothing reaches farther than the wood.
      expect(from).toBeGreaterThan(real(part.blank.x.start) - 2 * ROUNDING_MM);
      expect(to).toBeLessThan(real(part.blank.x.end) + 2 * ROUNDING_MM);
      cut += 1;
      if (part.features.length > 0) continue;
      expect(from).toBeLessThan(real(part.blank.x.start) + 2 * ROUNDING_MM);
      expect(to).toBeGreaterThan(real(part.blank.x.end) - 2 * ROUNDING_MM);
      expect(from).toBeGreaterThanOrEqual(left - ROUNDING_MM);
      expect(to).toBeLessThanOrEqual(left + number(outside, 'width') + ROUNDING_MM);
    }
    expect(cut).toBeGreaterThan(2);
  }
});

it('a side shows the groove with the back in it, where the plan cuts both', () => {
  const groups = partGroups(readSvg(toSvg(planSection(evaluatedSideboard()))));
  const [side, back] = [groups.get('case/side-left'), groups.get('case/back')];
  if (side === undefined || back === undefined) throw new Error('side and back are cut');
  // A rectangle has four lines; a groove in one of them makes eight.
  expect(withClass(side, 'line', 'cut')).toHaveLength(8);
  expect(cutReach(back, 'x')[0]).toBeLessThan(cutReach(side, 'x')[1]);
});

it('sheet goods and solid wood are told apart by their lines', () => {
  const evaluation = evaluatedSideboard();
  const root = readSvg(toSvg(planSection(evaluation)));
  const slants = new Map<string, Set<string>>();
  for (const [id, group] of partGroups(root)) {
    const form = evaluation.parts.find((part) => part.id === id)?.stock?.form ?? 'board';
    for (const line of withClass(group, 'line', 'hatch')) {
      const isStraight =
        number(line, 'x1') === number(line, 'x2') || number(line, 'y1') === number(line, 'y2')
          ? 'straight'
          : 'slanting';
      slants.set(form, (slants.get(form) ?? new Set()).add(isStraight));
    }
  }
  for (const [form, kinds] of slants) expect([...kinds]).toEqual([form === 'sheet' ? 'straight' : 'slanting']);
  expect(slants.size).toBeGreaterThan(0);
});

it('every part of the exploded view carries its mark', () => {
  for (const make of [evaluatedSideboard, vanity]) {
    const evaluation = make();
    const written = new Set<string>();
    for (const primitive of walk(explodedView(evaluation).content)) {
      if (primitive.kind === 'text' && primitive.role === 'mark') written.add(primitive.text);
    }
    expect(evaluation.parts.filter(({ mark }) => !written.has(mark)).map(({ mark }) => mark)).toEqual([]);
  }
});

it('every part is on exactly one sheet of parts, with those that are cut alike', () => {
  for (const make of Object.values(gallery)) {
    const evaluation = make();
    const groups = partSheets(evaluation).flat();
    const drawn = groups.flatMap(({ same, mirrored }) => [...same, ...mirrored]);
    expect(drawn.map(({ id }) => id).sort()).toEqual(evaluation.parts.map(({ id }) => id).sort());
    for (const { same, mirrored } of groups) {
      const sizes = [...same, ...mirrored].map(({ length, width, thickness }) =>
        [length, width, thickness].map((figure) => figure.length.exactInches).join(' x '),
      );
      expect(new Set(sizes).size).toBe(1);
    }
  }
});

it('the face of each part is as large as its wood at the scale that stands over it', () => {
  const evaluation = evaluatedSideboard();
  for (const [index] of partSheets(evaluation).entries()) {
    const root = readSvg(toSvg(partDrawings(evaluation, index + 1)));
    for (const [id, group] of partGroups(root)) {
      const part = evaluation.parts.find((each) => each.id === id);
      const [face] = withClass(group, 'rect', 'wood');
      const scale = elements(group, 'text').flatMap((text) => /1 : (\d+)$/.exec(text.textContent ?? '')?.[1] ?? []);
      if (part === undefined || face === undefined) throw new Error(`${id} has no face`);
      const paper = part.length.length.approximateInches * (25.4 / Number(scale[0]));
      expect(Math.abs(number(face, 'width') - paper)).toBeLessThan(ROUNDING_MM);
      expect(
        Math.abs(number(face, 'height') - (part.width.length.approximateInches * 25.4) / Number(scale[0])),
      ).toBeLessThan(ROUNDING_MM);
    }
  }
});
