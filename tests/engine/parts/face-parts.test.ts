import type { Part } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import {
  caseWithFace,
  door,
  drawer,
  front,
  material,
  open,
  opening,
  partition,
  place,
  rest,
  row,
  stack,
  stock,
  webFrame,
  written,
} from '../design-builder.ts';
import { evaluateSound, partWithId, sizeOf } from '../reading-layouts.ts';
import { sideboard } from '../sideboard-design.ts';

// Expected numbers: the sideboard worked out by hand, common practice, no source. Exact inches in lowest terms.

const evaluation = evaluateSound(sideboard());
const stretch = (part: Part, axis: 'x' | 'y' | 'z') =>
  `${part.box[axis].start.length.exactInches} to ${part.box[axis].end.length.exactInches}`;

describe('fronts', () => {
  it.each([
    ['left/leaf-left', '455/16 x 591/64 x 1/2', 'left door "left"', 'y'],
    ['right/leaf-right', '455/16 x 591/64 x 1/2', 'right door "right"', 'y'],
    ['cards/front', '285/16 x 5 x 1/2', 'drawer front "cards"', 'x'],
    ['blankets/front', '285/16 x 325/32 x 1/2', 'drawer front "blankets"', 'x'],
  ])('%s is %s', (id, size, label, grain) => {
    const part = partWithId(evaluation, id);
    expect({ size: sizeOf(part), label: part.label, grain: part.grain }).toEqual({ size, label, grain });
  });

  it('stand flush with the front of the body', () => {
    for (const part of evaluation.parts.filter(({ role }) => role === 'door' || role === 'drawer-front')) {
      expect(stretch(part, 'z')).toBe('3/4 to 5/4');
    }
  });

  it('without a stock are 3/4 thick by assumption', () => {
    const design = caseWithFace('20', '10', drawer('only', rest));
    const { fronts: _none, ...face } = design.face ?? { fronts: undefined };
    const { thickness } = partWithId(
      evaluateSound({ ...design, face: face as typeof design.face & object }),
      'only/front',
    );
    expect(thickness.length.exactInches).toBe('3/4');
    expect(thickness.reason.kind).toBe('assumed');
  });
});

describe('partitions and dividers', () => {
  it('a shown partition comes forward to the front of the body and goes back to the back', () => {
    const part = partWithId(evaluation, 'left-partition');
    expect(sizeOf(part)).toBe('229/8 x 31/2 x 3/4');
    expect(stretch(part, 'z')).toBe('3/4 to 65/4');
    expect(stretch(part, 'y')).toBe('15/4 to 259/8');
    expect(part.label).toBe('partition beside "left"');
  });

  it('a web frame behind fronts has two rails and two runners between them', () => {
    const ids = ['rail-front', 'rail-rear', 'runner-start', 'runner-end'].map((id) => `under-cards/${id}`);
    const parts = ids.map((id) => partWithId(evaluation, id));
    // From the fronts, 1/2 thick, to the back: 15 deep; rails 2-1/2 wide leave 10 between them, and
    // the runners have stub tenons of 11/32 at each end: grooves 3/8 deep, 1/32 short.
    expect(parts.map(sizeOf)).toEqual(['18 x 5/2 x 3/4', '18 x 5/2 x 3/4', '171/16 x 5/2 x 3/4', '171/16 x 5/2 x 3/4']);
    expect(parts.map((part) => stretch(part, 'z'))).toEqual([
      '5/4 to 15/4',
      '55/4 to 65/4',
      '15/4 to 55/4',
      '15/4 to 55/4',
    ]);
    expect(parts.map((part) => stretch(part, 'x'))).toEqual(['21 to 39', '21 to 39', '21 to 47/2', '73/2 to 39']);
    expect(parts.map((part) => part.grain)).toEqual(['x', 'x', 'z', 'z']);
  });

  it('a web frame in a row stands upright', () => {
    const root = row('row', rest, [drawer('a', rest), drawer('b', rest)], [webFrame('w', '3/4', { mode: 'shown' })]);
    const upright = evaluateSound(caseWithFace('20', '10', root));
    const rail = partWithId(upright, 'w/rail-front');
    expect(sizeOf(rail)).toBe('10 x 5/2 x 3/4');
    expect(rail.grain).toBe('y');
    expect(partWithId(upright, 'w/runner-start').label).toBe('lower runner between "a" and "b"');
  });

  it('a web frame in an opening of 4 has runners of half that', () => {
    const inner = stack('stack', opening('4'), [drawer('a', rest), drawer('b', rest)], [webFrame('w', '3/4')]);
    const root = row('row', rest, [inner, drawer('c', rest)], [partition('p', '3/4')]);
    const narrow = evaluateSound(caseWithFace('20', '20', root));
    expect(
      ['w/rail-front', 'w/runner-start', 'w/runner-end'].map((id) => stretch(partWithId(narrow, id), 'x')),
    ).toEqual(['3/4 to 19/4', '3/4 to 11/4', '11/4 to 19/4']);
  });

  it('a web frame without rail width has rails of 2 inches by assumption', () => {
    const { railWidth: _none, ...frame } = webFrame('w', '3/4');
    const root = stack('stack', rest, [drawer('a', rest), drawer('b', rest)], [frame]);
    const { width } = partWithId(evaluateSound(caseWithFace('20', '20', root)), 'w/rail-front');
    expect(width.length.exactInches).toBe('2');
    expect(width.reason.kind).toBe('assumed');
  });

  it('a covered divider between open spaces comes forward, there is no front to cover it', () => {
    const root = stack(
      'stack',
      rest,
      [open('a', rest), open('b', rest)],
      [partition('p', '3/4', { form: 'panel', mode: 'behind' })],
    );
    const part = partWithId(evaluateSound(caseWithFace('20', '20', root)), 'p');
    expect(stretch(part, 'z')).toBe('0 to 69/4');
    expect(part.role).toBe('divider-panel');
  });
});

describe('shelves', () => {
  it('behind doors are shy at both ends, clear of the front, and spread evenly', () => {
    const shelves = ['left/shelf-1', 'left/shelf-2'].map((id) => partWithId(evaluation, id));
    // 18-3/4 less 2 x 1/16; 15-1/2 less the door 1/2 and 1/8 clear of it.
    expect(shelves.map(sizeOf)).toEqual(['149/8 x 119/8 x 3/4', '149/8 x 119/8 x 3/4']);
    // 28-5/8 less two shelves of 3/4 in three equal spaces of 217/24.
    const starts = shelves.map((part) => part.box.y.start.length);
    const face = evaluation.layout.carcase?.face.y.start.length;
    expect(starts.map((start) => face && start.minus(face).exactInches)).toEqual(['217/24', '113/6']);
  });

  it('in an open space come forward to the front of the body', () => {
    const shelves = {
      origin: place(),
      count: 1,
      adjustable: false,
      material: material('3/4'),
      shyEachEnd: written('0'),
    };
    const part = partWithId(evaluateSound(caseWithFace('20', '20', open('o', rest, { shelves }))), 'o/shelf-1');
    expect(sizeOf(part)).toBe('20 x 69/4 x 3/4');
    expect(part.label).toBe('shelf in "o"');
  });

  it.each([0, -3, 1.5, Number.NaN, Number.POSITIVE_INFINITY])('of a count of %s make no parts', (count) => {
    const shelves = { origin: place(), count, adjustable: false, material: material('3/4'), shyEachEnd: written('0') };
    const design = caseWithFace('20', '20', open('o', rest, { shelves }));
    expect(evaluateSound(design).parts.filter(({ role }) => role === 'shelf')).toEqual([]);
  });
});

describe('grain', () => {
  it('does not matter in stock without grain: then the longer edge is the length', () => {
    const board = stock('fibreboard', 'sheet', 'none');
    const fronts = { origin: place(), thickness: written('3/4'), stock: board };
    const root = row('row', rest, [door('wide', rest), drawer('narrow', front('4'))], [partition('p', '3/4')]);
    const built = evaluateSound(caseWithFace('40', '10', root, { fronts }));
    const wide = partWithId(built, 'wide/front');
    expect(wide.grain).toBe('none');
    expect(wide.length.length.compare(wide.width.length)).toBe(1);
    expect(sizeOf(partWithId(built, 'narrow/front'))).toBe('157/16 x 4 x 3/4');
  });
});
