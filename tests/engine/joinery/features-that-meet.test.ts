import { type Feature, Length, type Part } from '@fettle/engine';
import type { Finding } from '@fettle/findings';
import { describe, expect, it } from 'vitest';
import { joineryFindings } from '../../../packages/engine/src/checks/joinery/joinery-findings.ts';
import { given } from '../../../packages/engine/src/design/derive.ts';
import { spanFrom, zeroAt } from '../../../packages/engine/src/layout/spans.ts';
import { slab } from '../../../packages/engine/src/parts/slab.ts';
import { boxOf, slotAlong } from '../../../packages/engine/src/solids/index.ts';
import { place } from '../design-builder.ts';
import { sideboard } from '../sideboard-design.ts';

// Worked by hand in millimetres; no published values.

const mm = (value: number) => Length.millimetres(Math.round(value * 1000), 1000);
const span = (size: Length) => spanFrom(zeroAt('here'), given(size, place()));
const side = (from: number, to: number) => ({ from: mm(from), to: mm(to) });

function part(x: Length, y: Length, z: Length, features: readonly Omit<Feature, 'part' | 'stage' | 'measures'>[]) {
  const made = slab({
    id: 'p',
    label: 'foot',
    role: 'foot',
    x: span(x),
    y: span(y),
    z: span(z),
    thin: 'x',
    grain: 'y',
    origin: place(),
  });
  return {
    ...made,
    features: features.map((each): Feature => ({ ...each, part: 'p', stage: 'on the loose part', measures: {} })),
  };
}

function found(made: Omit<Part, 'mark'>): readonly Finding[] {
  return joineryFindings(sideboard(), {
    unit: 'mm',
    mark: Length.millimetres(1),
    shop: { slides: [] },
    parts: [made],
    joints: [],
  });
}

function cut(kind: Feature['kind'], joint: string | undefined, entry: Feature['entry'], solid: Feature['solid']) {
  return {
    id: `p/${kind} ${joint} ${entry}`,
    kind,
    entry,
    solid,
    origin: place(),
    ...(joint === undefined ? {} : { joint }),
  };
}

const inchAndThreeQuarters = Length.inches(7, 4);

describe('two mortises in a foot of 1-3/4"', () => {
  // 44.45 mm: 8 mm thick around 22.225, from 18.225; the other one is 20 mm deep.
  const [low, high] = [18.225, 26.225];
  const fromLeft = cut('mortise', 'a', '-x', boxOf(side(0, 20), side(400, 460), side(low, high)));
  it('20 mm deep from adjacent faces meet by 1.775 mm', () => {
    const fromFront = cut('mortise', 'b', '-z', boxOf(side(low, high), side(400, 460), side(0, 20)));
    const [finding, ...others] = found(
      part(inchAndThreeQuarters, mm(500), inchAndThreeQuarters, [fromLeft, fromFront]),
    );
    expect(others).toEqual([]);
    expect(finding?.code).toBe('features-meet');
    expect(finding?.facts['by']).toEqual(mm(1.775));
  });
  it('14 mm deep leave 4.225 mm and are no finding', () => {
    const shallow = cut('mortise', 'a', '-x', boxOf(side(0, 14), side(400, 460), side(low, high)));
    const other = cut('mortise', 'b', '-z', boxOf(side(low, high), side(400, 460), side(0, 14)));
    expect(found(part(inchAndThreeQuarters, mm(500), inchAndThreeQuarters, [shallow, other]))).toEqual([]);
  });
  it('one above the other are no finding', () => {
    const below = cut('mortise', 'b', '-z', boxOf(side(low, high), side(300, 360), side(0, 20)));
    expect(found(part(inchAndThreeQuarters, mm(500), inchAndThreeQuarters, [fromLeft, below]))).toEqual([]);
  });
});

describe('a mortise 20 mm deep', () => {
  it('breaks through a side of 19.05 mm by 0.95 mm', () => {
    const mortise = cut('mortise', 'a', '-x', boxOf(side(0, 20), side(100, 160), side(40, 48)));
    const [finding, ...others] = found(part(mm(19.05), mm(500), mm(300), [mortise]));
    expect(others).toEqual([]);
    expect(finding?.code).toBe('joint-breaks-through');
    expect(finding?.facts['by']).toEqual(mm(0.95));
  });
  it('leaves a thin wall in 22 mm, and enough in 23 mm', () => {
    const mortise = cut('mortise', 'a', '-x', boxOf(side(0, 20), side(100, 160), side(40, 48)));
    const [finding] = found(part(mm(22), mm(500), mm(300), [mortise]));
    expect([finding?.code, finding?.facts['left']]).toEqual(['wall-too-thin', mm(2)]);
    expect(found(part(mm(23), mm(500), mm(300), [mortise]))).toEqual([]);
  });
});

describe('dadoes opposite each other in a partition of 3/4"', () => {
  const opposed = (depth: number) => [
    cut('dado', 'left', '-x', boxOf(side(0, depth), side(200, 219.05), side(0, 300))),
    cut('dado', 'right', '+x', boxOf(side(19.05 - depth, 19.05), side(200, 219.05), side(0, 300))),
  ];
  it('3/8" deep cut it in two', () => {
    const [finding, ...others] = found(part(mm(19.05), mm(500), mm(300), opposed(9.525)));
    expect(others).toEqual([]);
    expect([finding?.code, finding?.facts['left']]).toEqual(['wall-too-thin', mm(0)]);
  });
  it('a third deep leave a third', () => {
    expect(found(part(mm(19.05), mm(500), mm(300), opposed(6.35)))).toEqual([]);
  });
});

describe('hardware and joints in one part', () => {
  const tenon = cut('mortise', 'rail', '-x', boxOf(side(0, 15), side(400, 460), side(5, 13)));
  const groove = cut('groove', 'panel', '-x', boxOf(side(0, 8), side(0, 500), side(200, 206)));
  it('a hinge gain over a tenon meets it', () => {
    const gain = cut('gain', undefined, '-x', boxOf(side(0, 2), side(420, 480), side(0, 12)));
    expect(found(part(mm(60), mm(500), mm(300), [tenon, gain])).map(({ code }) => code)).toEqual(['features-meet']);
  });
  it('a cup hole through a groove meets it; rows of pin holes are asked after elsewhere', () => {
    const pin = (kind: 'cup-hole' | 'pin-hole') =>
      cut(kind, undefined, '-x', {
        kind: 'cylinder',
        axis: 'x',
        along: side(0, 10),
        centre: [mm(96), mm(203)],
        radius: mm(2.5),
      });
    const wood = (hole: ReturnType<typeof pin>) => found(part(mm(60), mm(500), mm(300), [groove, hole]));
    expect(wood(pin('cup-hole')).map(({ code }) => code)).toEqual(['features-meet']);
    expect(wood(pin('pin-hole'))).toEqual([]);
  });
  it('a screw into a loose tenon meets it', () => {
    const slot = cut(
      'mortise',
      'loose',
      '-x',
      slotAlong('x', side(0, 20), [mm(100), mm(50)], [mm(114), mm(50)], mm(3)),
    );
    const screw = cut('screw-hole', 'butt', '-z', {
      kind: 'cylinder',
      axis: 'z',
      along: side(0, 60),
      centre: [mm(15), mm(105)],
      radius: mm(1.5),
    });
    expect(found(part(mm(60), mm(500), mm(300), [slot, screw])).map(({ code }) => code)).toEqual(['features-meet']);
  });
  it('the groove of a back may cross a dado', () => {
    const dado = cut('dado', 'shelf', '-x', boxOf(side(0, 6), side(100, 118), side(0, 300)));
    expect(found(part(mm(60), mm(500), mm(300), [groove, dado]))).toEqual([]);
  });
});
