import { elevation, insideElevation, toSvg, walk } from '@fettle/drawings';
import { type Evaluation, evaluatePiece } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { drawer, front, rest, stack, webFrame, written } from '../engine/design-builder.ts';
import {
  evaluatedSideboard,
  gallery,
  overfullSideboard,
  overlappingFronts,
  pieceDesign,
  vanity,
  wallCupboard,
  wallOfForty,
} from './pieces-to-draw.ts';
import {
  type Box,
  classes,
  elements,
  isInside,
  number,
  partGroups,
  readSvg,
  scaleOf,
  surfaceOf,
  textBoxOf,
  withClass,
} from './reading-svg.ts';

/** The picture is read back and measured: what was asked must be there, to the rounding of the numbers written. */

/** Coordinates are written to a thousandth of a millimetre on paper; a distance has two ends. */
const ROUNDING_MM = 0.0021;

const FRONT_ROLES = ['door', 'drawer-front', 'false-front'];

function drawn(evaluation: Evaluation) {
  const root = readSvg(toSvg(elevation(evaluation)));
  return { root, groups: partGroups(root), scale: scaleOf(root) };
}

function surfaceOfPart(groups: ReturnType<typeof partGroups>, id: string): Box {
  const group = groups.get(id);
  if (group === undefined) throw new Error(`${id} is not drawn`);
  return surfaceOf(group);
}

describe('the sideboard', () => {
  const evaluation = evaluatedSideboard();
  const { root, groups, scale } = drawn(evaluation);
  const inch = 25.4 * scale;
  const frontOf = (id: string): Box => surfaceOfPart(groups, id);

  it('leaves 3/32 inch between neighbouring fronts and around them', () => {
    const gap = (3 / 32) * inch;
    const names = ['cards', 'dice', 'maps', 'blankets'].map((name) => frontOf(`${name}/front`));
    for (let at = 1; at < names.length; at++) {
      const upper = names[at - 1];
      const lower = names[at];
      if (upper === undefined || lower === undefined) throw new Error('four fronts');
      expect(Math.abs(lower.top - upper.bottom - gap)).toBeLessThan(ROUNDING_MM);
    }
    const leftLeaf = frontOf('left/leaf-left');
    const rightLeaf = frontOf('left/leaf-right');
    expect(Math.abs(rightLeaf.left - leftLeaf.right - gap)).toBeLessThan(ROUNDING_MM);
    const side = frontOf('case/side-left');
    const bottom = frontOf('case/bottom');
    const stretcher = frontOf('case/stretcher-front');
    expect(Math.abs(leftLeaf.left - side.right - gap)).toBeLessThan(ROUNDING_MM);
    expect(Math.abs(bottom.top - leftLeaf.bottom - gap)).toBeLessThan(ROUNDING_MM);
    expect(Math.abs(leftLeaf.top - stretcher.bottom - gap)).toBeLessThan(ROUNDING_MM);
  });

  it.each([
    ['left/leaf-left', 591 / 64, 455 / 16],
    ['right/leaf-right', 591 / 64, 455 / 16],
    ['cards/front', 285 / 16, 5],
    ['dice/front', 285 / 16, 6],
    ['maps/front', 285 / 16, 7],
    ['blankets/front', 285 / 16, 325 / 32],
    ['case/top', 60, 7 / 8],
    ['case/plinth-front', 117 / 2, 3],
    ['case/bottom', 57, 3 / 4],
    ['case/side-left', 3 / 4, 241 / 8],
  ])('draws %s as large as it was worked out by hand', (id, wide, high) => {
    const box = frontOf(id);
    expect(Math.abs(box.right - box.left - wide * inch)).toBeLessThan(ROUNDING_MM);
    expect(Math.abs(box.bottom - box.top - high * inch)).toBeLessThan(ROUNDING_MM);
  });

  it('keeps the ink of a front inside its true edge, so that the gap stays clear', () => {
    const leaf = groups.get('left/leaf-left');
    const [edge] = leaf === undefined ? [] : withClass(leaf, 'rect', 'edge');
    if (leaf === undefined || edge === undefined) throw new Error('the leaf has an outline');
    const half = number(edge, 'stroke-width') / 2;
    const surface = surfaceOf(leaf);
    expect(number(edge, 'x') - half).toBeGreaterThanOrEqual(surface.left - ROUNDING_MM);
    expect(number(edge, 'x') + number(edge, 'width') + half).toBeLessThanOrEqual(surface.right + ROUNDING_MM);
  });

  it('writes the numbers worked out by hand', () => {
    const figures = withClass(root, 'text', 'figure').map((text) => text.textContent);
    for (const figure of ['60"', '34"', '58-1/2"', '30-1/8"', '28-5/8"', '18-3/4"', '18"', '17-13/16"']) {
      expect(figures).toContain(figure);
    }
    for (const figure of ['5"', '6"', '7"', '10-5/32"', '28-7/16"', '3"', '7/8"']) expect(figures).toContain(figure);
    expect(figures.filter((figure) => figure === '9-7/32" + 1/64"')).toHaveLength(4);
  });

  it('shows shelves and covered dividers by narrow dashes, and visible edges by wide lines', () => {
    const shelf = groups.get('left/shelf-1');
    const rail = groups.get('under-cards/rail-front');
    if (shelf === undefined || rail === undefined) throw new Error('shelf and rail are drawn');
    const [wide] = withClass(root, 'rect', 'edge').map((edge) => number(edge, 'stroke-width'));
    for (const group of [shelf, rail]) {
      const dashes = withClass(group, 'line', 'hidden');
      expect(dashes.length).toBeGreaterThan(1);
      for (const dash of dashes) {
        expect(dash.getAttribute('stroke-dasharray')).toMatch(/^[\d.]+ [\d.]+$/);
        expect((wide ?? 0) / number(dash, 'stroke-width')).toBeCloseTo(2, 0);
      }
      expect(withClass(group, 'line', 'edge')).toHaveLength(0);
    }
  });

  it('writes the mark of what is hidden on that, never beside it on a front; the inside elevation has the others', () => {
    let onHidden = 0;
    for (const make of Object.values(gallery)) {
      const evaluation = make();
      for (const group of partGroups(readSvg(toSvg(elevation(evaluation)))).values()) {
        const places = withClass(group, 'line', 'hidden').flatMap((dash) => [number(dash, 'y1'), number(dash, 'y2')]);
        if (places.length === 0 || withClass(group, 'line', 'leader').length > 0) continue;
        if (withClass(group, 'rect', 'surface').length > 0) continue;
        for (const mark of withClass(group, 'text', 'mark')) {
          const { top, bottom } = textBoxOf(mark);
          onHidden += 1;
          expect((top + bottom) / 2).toBeGreaterThan(Math.min(...places));
          expect((top + bottom) / 2).toBeLessThan(Math.max(...places));
        }
      }
    }
    expect(onHidden).toBeGreaterThan(3);
    const inside = new Set<string>();
    for (const primitive of walk(insideElevation(evaluatedSideboard()).content)) {
      if (primitive.kind === 'text') inside.add(primitive.text.split(' ')[0] ?? '');
    }
    for (const mark of ['J1', 'J5', 'J9']) {
      expect(withClass(root, 'text', 'mark').map((text) => text.textContent)).not.toContain(mark);
      expect(inside).toContain(mark);
    }
  });

  it('points the swing of each leaf of a pair at its outer edge, and gives drawers none', () => {
    for (const [id, side] of [
      ['left/leaf-left', 'left'],
      ['left/leaf-right', 'right'],
    ] as const) {
      const group = groups.get(id);
      if (group === undefined) throw new Error(`${id} is drawn`);
      const box = surfaceOf(group);
      const middle = (box.top + box.bottom) / 2;
      const ends = withClass(group, 'line', 'swing').flatMap((line) => [
        { x: number(line, 'x1'), y: number(line, 'y1') },
        { x: number(line, 'x2'), y: number(line, 'y2') },
      ]);
      expect(
        ends.filter((end) => Math.abs(end.x - box[side]) < 0.002 && Math.abs(end.y - middle) < 0.002),
      ).toHaveLength(2);
    }
    const cards = groups.get('cards/front');
    expect(cards === undefined ? [] : withClass(cards, 'line', 'swing')).toHaveLength(0);
  });

  it('lays the grain arrow of a door upright and that of a drawer front across', () => {
    const arrow = (id: string) => {
      const group = groups.get(id);
      const [shaft] = group === undefined ? [] : withClass(group, 'line', 'grain');
      if (shaft === undefined) throw new Error(`${id} has a grain arrow`);
      return { dx: number(shaft, 'x2') - number(shaft, 'x1'), dy: number(shaft, 'y2') - number(shaft, 'y1') };
    };
    expect(arrow('left/leaf-left').dx).toBe(0);
    expect(Math.abs(arrow('left/leaf-left').dy)).toBeGreaterThan(1.5);
    expect(arrow('cards/front').dy).toBe(0);
    expect(Math.abs(arrow('cards/front').dx)).toBeGreaterThan(1.5);
  });
});

describe.each(Object.entries(gallery).filter(([name]) => name !== 'without height'))('%s', (name, make) => {
  const evaluation = make();
  const { root, groups, scale } = drawn(evaluation);

  it('draws every front and every part of the case that a front view shows, each once', () => {
    const roles = ['top', 'side', 'partition', 'bottom', ...FRONT_ROLES];
    const expected = evaluation.parts.filter((part) => roles.includes(part.role)).map((part) => part.id);
    for (const id of expected) expect([...groups.keys()]).toContain(id);
    const ids = elements(root, 'g').map((group) => group.getAttribute('data-part'));
    const named = ids.filter((id) => id !== null);
    expect(new Set(named).size).toBe(named.length);
  });

  it('names for every drawn part the words that made it', () => {
    const byId = new Map(evaluation.parts.map((part) => [part.id, part]));
    const parts = [...walk(elevation(evaluation).content)].flatMap((primitive) =>
      primitive.kind === 'group' && primitive.part !== undefined ? [primitive.part] : [],
    );
    expect(parts.map((part) => part.id).sort()).toEqual([...groups.keys()].sort());
    for (const part of parts) expect(part.origin).toBe(byId.get(part.id)?.origin);
  });

  it('stays inside the outline of the piece', () => {
    const [outside] = withClass(root, 'rect', 'outside');
    if (outside === undefined) throw new Error('the outline is drawn');
    const outline = surfaceOf(outside.parentNode as typeof outside);
    for (const group of groups.values()) {
      for (const surface of withClass(group, 'rect', 'surface')) {
        const box = surfaceOf(surface.parentNode as typeof surface);
        expect(isInside(box, outline), `${group.getAttribute('data-part')} in ${name}`).toBe(true);
      }
      for (const edge of elements(group, 'line').filter((line) =>
        ['edge', 'hidden', 'swing'].some((word) => classes(line).includes(word)),
      )) {
        for (const x of ['x1', 'x2']) expect(number(edge, x)).toBeGreaterThanOrEqual(outline.left - 0.002);
        for (const x of ['x1', 'x2']) expect(number(edge, x)).toBeLessThanOrEqual(outline.right + 0.002);
      }
    }
  });

  it('draws each part at its place and to scale', () => {
    const [outside] = withClass(root, 'rect', 'outside');
    if (outside === undefined) throw new Error('the outline is drawn');
    const outline = surfaceOf(outside.parentNode as typeof outside);
    let measured = 0;
    for (const part of evaluation.parts) {
      const group = groups.get(part.id);
      if (group === undefined || withClass(group, 'rect', 'surface').length === 0) continue;
      const box = surfaceOf(group);
      const real = (figure: { length: { approximateInches: number } }): number =>
        figure.length.approximateInches * 25.4;
      expect(Math.abs(box.left - outline.left - real(part.box.x.start) * scale)).toBeLessThan(ROUNDING_MM);
      expect(Math.abs(box.right - outline.left - real(part.box.x.end) * scale)).toBeLessThan(2 * ROUNDING_MM);
      expect(Math.abs(outline.bottom - box.bottom - real(part.box.y.start) * scale)).toBeLessThan(2 * ROUNDING_MM);
      expect(Math.abs(outline.bottom - box.top - real(part.box.y.end) * scale)).toBeLessThan(2 * ROUNDING_MM);
      measured += 1;
    }
    expect(measured).toBeGreaterThan(0);
  });
});

it('points the swing of a lid at its upper edge', () => {
  const group = drawn(wallCupboard()).groups.get('hatch/front');
  if (group === undefined) throw new Error('the lid is drawn');
  const box = surfaceOf(group);
  const tops = withClass(group, 'line', 'swing').flatMap((line) => [
    { x: number(line, 'x1'), y: number(line, 'y1') },
    { x: number(line, 'x2'), y: number(line, 'y2') },
  ]);
  const atHinge = tops.filter((end) => Math.abs(end.y - box.top) < 0.002);
  expect(atHinge).toHaveLength(2);
  for (const end of atHinge) expect(Math.abs(end.x - (box.left + box.right) / 2)).toBeLessThan(0.002);
});

it('says on the sheet that errors stand against the piece', () => {
  const { root } = drawn(overfullSideboard());
  const warnings = withClass(root, 'text', 'warning').map((text) => text.textContent);
  expect(warnings).toEqual(['Do not build from this sheet: 1 error stands against the piece.']);
  expect(withClass(drawn(evaluatedSideboard()).root, 'text', 'warning')).toHaveLength(0);
});

it('says so by weight, size and a box with a sign, not by colour alone', () => {
  const { root } = drawn(overfullSideboard());
  const [warning] = withClass(root, 'text', 'warning');
  const notes = withClass(root, 'text', 'note');
  if (warning === undefined || notes.length === 0) throw new Error('nothing is noted');
  expect(warning.getAttribute('font-weight')).toBe('700');
  for (const note of notes) expect(number(warning, 'font-size')).toBeGreaterThan(number(note, 'font-size') * 1.3);
  const group = elements(root, 'g').find((each) => each.getAttribute('class') === 'notes');
  const corners = group === undefined ? [] : elements(group, 'polygon').map((each) => each.getAttribute('points'));
  expect(corners.map((points) => points?.split(' ').length)).toEqual([4, 3]);
  const ys = (corners[0] ?? '').split(' ').map((point) => Number(point.split(',')[1]));
  expect(Math.min(...ys)).toBeLessThan(number(warning, 'y') - 3.5);
  expect(Math.max(...ys)).toBeGreaterThan(number(warning, 'y'));
  for (const note of notes) expect(number(note, 'y')).toBeGreaterThan(Math.max(...ys) + 2);
});

it('stays where it is when what is written around it grows', () => {
  // 5", and then 5-1/64", which no rule of 1/32" carries: its figure is longer.
  const places = [front('5'), front('321/64')].map((high) => {
    const design = pieceDesign({
      wide: written('30'),
      high: written('24'),
      root: stack('stack', rest, [drawer('a', high), drawer('b', rest)], [webFrame('frame', '3/4')]),
    });
    const [outside] = withClass(drawn(evaluatePiece(design)).root, 'rect', 'outside');
    return [outside?.getAttribute('x'), outside?.getAttribute('y')];
  });
  expect(places[1]).toEqual(places[0]);
});

it('tells what one looks at: the piece with all its dimensions, and neither frame nor title block', () => {
  const { root } = drawn(evaluatedSideboard());
  const [left = 0, top = 0, width = 0, height = 0] = (root.getAttribute('data-focus') ?? '').split(' ').map(Number);
  const figures = withClass(root, 'text', 'figure');
  expect(figures.length).toBeGreaterThan(10);
  for (const figure of figures) {
    expect(number(figure, 'x')).toBeGreaterThanOrEqual(left);
    expect(number(figure, 'x')).toBeLessThanOrEqual(left + width);
    expect(number(figure, 'y')).toBeGreaterThanOrEqual(top);
    expect(number(figure, 'y')).toBeLessThanOrEqual(top + height);
  }
  for (const words of [...withClass(root, 'text', 'heading'), ...withClass(root, 'text', 'note')]) {
    expect(number(words, 'y')).toBeGreaterThan(top + height);
  }
});

it('takes the paper and the projection from the units', () => {
  expect(elevation(evaluatedSideboard())).toMatchObject({ width: 279.4, height: 215.9 });
  expect(elevation(vanity())).toMatchObject({ width: 297, height: 210 });
  expect(elevation(wallOfForty())).toMatchObject({ width: 420, height: 297 });
  const words = (evaluation: Evaluation) => elements(drawn(evaluation).root, 'text').map((text) => text.textContent);
  expect(words(evaluatedSideboard())).toContain('Third angle');
  expect(words(vanity())).toContain('First angle');
  expect(words(vanity())).toContain('900 × 820 × 480 mm');
});

it('dimensions every front, also those that overlap by mistake', () => {
  const figures = withClass(drawn(overlappingFronts()).root, 'text', 'figure').map((text) => text.textContent);
  expect(figures).toContain('6"');
  expect(figures).toContain('7"');
});
