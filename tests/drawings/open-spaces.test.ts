import { elevation, toSvg, walk } from '@fettle/drawings';
import { type Evaluation, evaluatePiece } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { LINE_TYPES } from '../../packages/drawings/src/line-types.ts';
import {
  door,
  drawer,
  front,
  open,
  opening,
  partition,
  rest,
  row,
  share,
  stack,
  written,
} from '../engine/design-builder.ts';
import { bookcase, evaluatedSideboard, pieceDesign } from './pieces-to-draw.ts';
import { elements, isInside, overlaps, partGroups, readSvg, surfaceOf, textBoxOf, withClass } from './reading-svg.ts';

/** Spaces without a front beside fronts: dimensioned by their openings, named, and never crossed by a leader. */

/** Over an open space a row of a drawer and another open space. */
function openRack(): Evaluation {
  const lower = row(
    'lower',
    front('6'),
    [drawer('cloves', opening('8')), open('jars', rest, { id: 'jars' })],
    [partition('lower/partition', '3/4')],
  );
  const root = stack(
    'stack',
    rest,
    [open('bottles', rest, { id: 'bottles' }), lower],
    [partition('stack/panel', '3/4')],
  );
  return evaluatePiece(pieceDesign({ wide: written('30'), high: written('34'), root }));
}

function words(evaluation: Evaluation, name: string): readonly (string | null)[] {
  return withClass(readSvg(toSvg(elevation(evaluation))), 'text', name).map((text) => text.textContent);
}

function singleDoor(hingeSide?: 'left' | 'right'): Evaluation {
  const cell = door('oats', rest, { id: 'oats', leaves: 1 });
  const root = row(
    'row',
    rest,
    [hingeSide === undefined ? cell : { ...cell, hingeSide }, drawer('rye', share(1))],
    [partition('row/partition', '3/4')],
  );
  return evaluatePiece(pieceDesign({ wide: written('40'), high: written('30'), root }));
}

describe('open spaces', () => {
  it('are dimensioned by their opening, in a lane that says so', () => {
    const evaluation = openRack();
    const jars = evaluation.layout.face?.cells[1]?.cells[1]?.opening.x.size.length.exactInches;
    // 30 less two overhangs and two sides of 3/4 is 27; less the opening 8 and the partition 3/4: 18-1/4.
    expect(jars).toBe('73/4');
    expect(words(evaluation, 'figure')).toContain('18-1/4"');
    expect(words(evaluation, 'caption')).toContain(`${markOf(evaluation, 'cloves/front')}, opening`);
    expect(words(evaluation, 'note').join(' ')).toContain(
      'Above: fronts and openings; right: fronts; below and left: case.',
    );
    expect(words(evaluatedSideboard(), 'note').join(' ')).toContain('Above and right: fronts; below and left: case.');
  });

  it('are never measured from the edge of a front to that of an opening', () => {
    const evaluation = openRack();
    const right = withClass(readSvg(toSvg(elevation(evaluation))), 'g', 'lane').filter((lane) =>
      (lane.getAttribute('id') ?? '').startsWith('elevation-lane-right'),
    );
    expect(right.flatMap((lane) => withClass(lane, 'text', 'figure'))).toHaveLength(1);
  });

  it('carry their name inside the space, off its shelves', () => {
    for (const [make, names] of [
      [openRack, ['bottles', 'jars']],
      [bookcase, ['novels', 'atlases']],
    ] as const) {
      const root = readSvg(toSvg(elevation(make())));
      const bays = withClass(root, 'g', 'bay').flatMap((bay) => elements(bay, 'text'));
      expect(bays.map((text) => text.textContent)).toEqual(names);
      const shelves = withClass(root, 'g', 'shelf').map(surfaceOf);
      const [outside] = withClass(root, 'rect', 'outside');
      if (outside === undefined) throw new Error('the outline is drawn');
      for (const text of bays) {
        const box = textBoxOf(text);
        expect(isInside(box, surfaceOf(outside.parentNode as typeof outside))).toBe(true);
        expect(shelves.filter((shelf) => overlaps(shelf, box))).toEqual([]);
      }
    }
  });

  it('are not crossed by the leader of a partition below them: its label stands beside it', () => {
    const evaluation = openRack();
    const root = readSvg(toSvg(elevation(evaluation)));
    const space = evaluation.layout.face?.cells[0]?.opening;
    const [label] = withClass(root, 'g', 'label');
    if (label === undefined || space === undefined) throw new Error('the partition is labelled');
    const [words] = elements(label, 'text').map((text) => text.textContent);
    expect(words).toBe(`${markOf(evaluation, 'lower/partition')}  partition`);
    const part = partGroups(root).get('lower/partition');
    if (part === undefined) throw new Error('the partition is drawn');
    const { top } = surfaceOf(part);
    for (const line of elements(label, 'line')) {
      expect(Number(line.getAttribute('y1'))).toBeGreaterThan(top);
      expect(Number(line.getAttribute('y2'))).toBeGreaterThan(top);
      expect(line.getAttribute('x1')).not.toBe(line.getAttribute('x2'));
    }
  });
});

describe('single doors', () => {
  it.each(['left', 'right'] as const)(
    'hinged at the %s: the swing meets there, and nothing is said to be missing',
    (side) => {
      const evaluation = singleDoor(side);
      const group = partGroups(readSvg(toSvg(elevation(evaluation)))).get('oats/front');
      if (group === undefined) throw new Error('the door is drawn');
      const box = surfaceOf(group);
      const ends = withClass(group, 'line', 'swing').flatMap((line) => [
        { x: Number(line.getAttribute('x1')), y: Number(line.getAttribute('y1')) },
        { x: Number(line.getAttribute('x2')), y: Number(line.getAttribute('y2')) },
      ]);
      const atHinge = ends.filter((end) => Math.abs(end.x - box[side]) < 0.002);
      expect(atHinge).toHaveLength(2);
      for (const end of atHinge) expect(Math.abs(end.y - (box.top + box.bottom) / 2)).toBeLessThan(0.002);
      expect(words(evaluation, 'note').join(' ')).not.toContain('hinge side');
    },
  );

  it('without a side are drawn without a swing, and the sheet says so', () => {
    const notes = words(singleDoor(), 'note').join(' ');
    expect(notes).toContain('hinge side of single doors not given');
    expect(notes).not.toContain('swing');
  });
});

describe('the notes', () => {
  it('explain the signs that the sheet has, and no others', () => {
    const sideboard = words(evaluatedSideboard(), 'note').join(' ');
    for (const sign of ['Dashed', 'two dots', 'double arrows']) expect(sideboard).toContain(sign);
    const bare = words(bookcase(), 'note').join(' ');
    for (const sign of ['two dots', 'arrows', 'fronts']) expect(bare).not.toContain(sign);
  });

  it('tell the swing by its two dots, long enough to be seen', () => {
    const [dash, , first, , second] = LINE_TYPES.swing.dashes ?? [];
    expect(LINE_TYPES.swing.width).toBe('narrow');
    expect(first).toBe(second);
    expect(first).toBeGreaterThanOrEqual(2);
    expect(dash).toBeGreaterThan(8 * (first ?? 0));
  });
});

it('says no size twice side by side: the finer lane leaves out what the next one says', () => {
  const lanes = [...walk(elevation(evaluatedSideboard()).content)].flatMap((drawn) =>
    drawn.kind === 'group' && drawn.id.startsWith('lane-left-') ? [drawn] : [],
  );
  const stretches = lanes.map((lane) =>
    [...walk(lane.children)].flatMap((drawn) =>
      drawn.kind === 'dimension' ? [`${drawn.line.from.y.toFixed(2)} ${drawn.line.to.y.toFixed(2)}`] : [],
    ),
  );
  expect(stretches.length).toBe(3);
  for (let at = 1; at < stretches.length; at++) {
    for (const stretch of stretches[at - 1] ?? []) expect(stretches[at]).not.toContain(stretch);
  }
});

function markOf(evaluation: Evaluation, id: string): string {
  const part = evaluation.parts.find((each) => each.id === id);
  if (part === undefined) throw new Error(`${id} is a part`);
  return part.mark;
}
