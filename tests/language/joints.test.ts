import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { sharedWood } from '../engine/joinery/shared-wood.ts';
import { readFixture } from './harness/fixture.ts';
import { openFixture } from './harness/workbench.ts';

/** Joints as a maker says them, down to the parts. */

const shop = `
cutter "dado stack" blade, cuts 1/4 to 7/8 wide, at most 1 deep
dowel "8 mm" 8mm thick, 35mm long
screw "2 inch" 2 long, pilot 1/8, clearance 3/16
tenon "six" 6mm thick, 20mm wide, 40mm long
`;

async function box(statements: string, face = '') {
  const source = `${shop}\npiece "box" {\n  units inches to 1/32\n  size 25-1/2 wide, 20 high, 12 deep\n  case {\n    sides thick 3/4\n    ${statements}\n  }\n  ${face}\n}\n`;
  const { services, documents } = await openFixture(readFixture(source));
  const [document] = documents;
  if (document === undefined) throw new Error('the text holds no file');
  const evaluated = evaluateDocument(services, document);
  const [piece] = evaluated.pieces;
  if (piece === undefined) throw new Error('the text holds no piece');
  const { joints, parts } = piece.evaluation;
  return {
    kinds: joints.map(({ held, holding, kind }) => `${held} > ${holding}: ${kind}`),
    length: (id: string) => parts.find((part) => part.id === id)?.length.length.exactInches,
    features: (id: string) => parts.find((part) => part.id === id)?.features.map(({ kind }) => kind) ?? [],
    shared: sharedWood(parts),
    socketWidths: (id: string) =>
      (parts.find((part) => part.id === id)?.features ?? []).flatMap(({ kind, solid }) => {
        if (kind !== 'socket' || solid.kind !== 'convex') return [];
        return [...new Set([...solid.corners].sort((a, b) => a.x.compare(b.x)).map(({ x }) => x.exactInches))].map(
          (x) => {
            const [low, high] = solid.corners
              .filter((corner) => corner.x.exactInches === x)
              .map(({ y }) => y)
              .sort((a, b) => a.compare(b))
              .filter((_, at, all) => at === 0 || at === all.length - 1);
            return low === undefined ? undefined : high?.minus(low).exactInches;
          },
        );
      }),
    told: evaluated.findings.map(({ code, sentence }) => `${code}: ${sentence}`),
  };
}

describe('a bottom', () => {
  it('in a dado without a depth goes in a third of the side: 24 and twice 1/4', async () => {
    const { kinds, length, told } = await box('bottom thick 3/4, between sides, in dado');
    expect(kinds).toEqual(['case/bottom > case/side-left: dado', 'case/bottom > case/side-right: dado']);
    expect(length('case/bottom')).toBe('49/2');
    expect(told).toEqual([]);
  });
  it('in a stopped dado is notched at its front corners', async () => {
    const { features } = await box('bottom thick 3/4, between sides, in dado 1/4 deep, stopped 3/8 from front');
    expect(features('case/bottom')).toEqual(['notch', 'notch']);
    expect(features('case/side-left')).toEqual(['rabbet']);
  });
  it('with a tongue has shoulders on both faces', async () => {
    const { features } = await box('bottom thick 3/4, between sides, in dado 1/4 deep, tongue 1/4 thick');
    expect(features('case/bottom')).toEqual([
      'tongue-shoulder',
      'tongue-shoulder',
      'tongue-shoulder',
      'tongue-shoulder',
    ]);
  });
  it('by dowels has as many holes as fit, in it and in the sides, and keeps its length', async () => {
    const { features, length } = await box('bottom thick 3/4, between sides, by dowels "8 mm", first 2 in, 4 apart');
    expect(length('case/bottom')).toBe('24');
    // 12" deep: middles at 2, 6 and 10 inches.
    expect(features('case/side-left')).toEqual(['dowel-hole', 'dowel-hole', 'dowel-hole']);
    expect(features('case/bottom').length).toBe(6);
  });
  it('by screws has pilot holes, and the sides have clearance holes', async () => {
    const { features, kinds } = await box('bottom thick 3/4, between sides, by screws "2 inch"');
    expect(kinds).toEqual(['case/bottom > case/side-left: butt', 'case/bottom > case/side-right: butt']);
    expect(features('case/side-right')).toEqual(['screw-hole', 'screw-hole', 'screw-hole']);
  });
  it('says otherwise than the case for its own ends', async () => {
    const { kinds } = await box(
      'top thick 3/4, between sides\n    bottom thick 3/4, between sides, by loose tenons "six"\n    join dado 1/4 deep',
    );
    expect([...kinds].sort()).toEqual([
      'case/bottom > case/side-left: loose-tenon',
      'case/bottom > case/side-right: loose-tenon',
      'case/top > case/side-left: dado',
      'case/top > case/side-right: dado',
    ]);
  });
  it('cannot be joined in two ways', async () => {
    const { told } = await box('bottom thick 3/4, between sides, in dado 1/4 deep, by dowels');
    expect(told.map((each) => each.split(':')[0])).toEqual(['cannot-be-both']);
  });
});

describe('the corners of a plinth', () => {
  it('mitred, its ends run to the outer corner: 12 deep, no set-back', async () => {
    const { length, kinds, features } = await box('plinth 3 high, thick 3/4, mitred corners   bottom thick 3/4');
    expect(length('case/plinth-end-left')).toBe('12');
    expect(features('case/plinth-front')).toEqual(['mitre', 'mitre']);
    expect(kinds).toContain('case/plinth-end-left > case/plinth-front: mitre');
  });
});

describe('a divider', () => {
  const face = (words: string) =>
    `face inset, gap 1/8 { stack { drawer "upper" share 1   divider web-frame of thick 3/4, rails 2 wide, shown${words}   drawer "lower" share 1 } fronts thick 3/4   drawers { sides thick 1/2 } }`;
  const open = (words: string) => box('bottom thick 3/4, between sides', face(words));

  it('dovetailed has tails a third of the side long on its front rail, 1 in 8: 24 and twice 1/4', async () => {
    const { kinds, length, features, socketWidths, shared } = await open(', dovetailed');
    const [rail] = kinds.filter((kind) => kind.endsWith('sliding-dovetail'));
    const id = rail?.split(' > ')[0] ?? '';
    expect(kinds.filter((kind) => kind.endsWith('sliding-dovetail')).length).toBe(2);
    expect(length(id)).toBe('49/2');
    expect(features(id).filter((kind) => kind === 'tail-cheek').length).toBe(4);
    // 3/4 at the tip, and 1/32 less on both faces at the shoulder.
    expect(socketWidths('case/side-left')).toEqual(['3/4', '11/16']);
    expect(socketWidths('case/side-right')).toEqual(['11/16', '3/4']);
    expect(shared).toEqual([]);
  });
  it('dovetailed so deep grows by as much, and its runners merely meet the sides', async () => {
    const { kinds, length } = await open(', dovetailed 3/8 deep');
    const rail = kinds.find((kind) => kind.endsWith('sliding-dovetail'))?.split(' > ')[0] ?? '';
    expect(length(rail)).toBe('99/4');
    expect(
      kinds
        .filter((kind) => kind.includes('runner') && kind.includes('side-left'))
        .every((kind) => kind.endsWith('butt')),
    ).toBe(true);
  });
});
