import { type Primitive, planSection, verticalSection, walk } from '@fettle/drawings';
import { expect, it } from 'vitest';
import { butt, caseWith, pieceIn } from '../../language/doors/door-texts.ts';

/** Sections show what doors hang on, what they are opened by, and in the plan where they swing. */

const knob = 'pull "knob" 1 wide, round, stands out 1-1/4, thread 3/8 deep';

async function drawn(make: typeof planSection) {
  // The opening of 18-1/2" less two gaps of 1/4": a door 18" wide.
  const face = 'inset, gap 1/4 { door "cups" hinged left { hinges "butt 2"   pulls "knob" }   fronts thick 3/4 }';
  const { evaluation } = await pieceIn(caseWith(face, `${butt.replace('5/32', '3/8')}\n${knob}`));
  const drawing = make(evaluation);
  const scale = drawing.paperPerReal ?? 0;
  const group = [...walk(drawing.content)].find((each) => each.kind === 'group' && each.id === 'fittings');
  const lines: readonly Primitive[] = group?.kind === 'group' ? group.children : [];
  const sizes = (role: string) =>
    lines.flatMap((each) => {
      if (each.kind !== 'polyline' || each.role !== role) return [];
      const reach = (axis: 'x' | 'y') => {
        const places = each.points.map((point) => point[axis]);
        return ((Math.max(...places) - Math.min(...places)) / scale / 25.4).toFixed(2);
      };
      return [[reach('x'), reach('y')]];
    });
  const notes = [...walk(drawing.content)].flatMap((each) =>
    each.kind === 'text' && each.role === 'note' ? [each.text] : [],
  );
  return { sizes, notes: notes.join(' ') };
}

it('the plan shows a door 18" wide swing through a quarter of a circle, its knob and what is let in for its hinge', async () => {
  const { sizes, notes } = await drawn(planSection);
  // Where lettering stands on the way it is left open, so that it may come in pieces; all of them are in 18" by 18".
  const swing = sizes('swing').map((size) => size.map(Number));
  expect(Math.max(...swing.map(([wide = 0]) => wide))).toBeGreaterThan(9);
  for (const [wide = 0, high = 0] of swing) {
    expect(wide).toBeLessThanOrEqual(18.001);
    expect(high).toBeLessThanOrEqual(18.001);
  }
  // The knob is over the cut. Closed 3/8 less a gap of 1/4: 1/16 into each, 5/8 from the front.
  expect(sizes('hidden')).toEqual([
    ['0.06', '0.63'],
    ['0.06', '0.63'],
    ['1.00', '1.25'],
  ]);
  expect(notes).toContain(
    'Dashes: what is let in for hinges, pulls this side of the cut; dashes with two dots: doors opening to a right angle.',
  );
});

it('the section shows the knob and the gains at their heights, and no swing', async () => {
  const { sizes, notes } = await drawn(verticalSection);
  expect(sizes('swing')).toEqual([]);
  expect(sizes('behind')).toEqual([]);
  expect(new Set(sizes('hidden').map((size) => size.join(' ')))).toEqual(new Set(['1.25 1.00', '0.63 2.00']));
  expect(notes).not.toContain('right angle');
});
