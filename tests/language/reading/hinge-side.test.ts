import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { openFixture } from '../harness/workbench.ts';

/** The side a door is hinged at reaches the design, and only that of a single door. */

async function frontsOf(door: string) {
  const text = `
piece "wall cupboard" {
  size 18 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { ${door}   fronts thick 3/4 }
}
`;
  const workbench = await openFixture({ files: [{ name: 'cupboard.fettle', text }] });
  const { pieces, findings } = evaluateDocument(workbench.services, workbench.document('cupboard.fettle'));
  const root = pieces[0]?.evaluation.design.face?.root;
  return {
    hingeSide: root?.kind === 'front' ? root.hingeSide : 'no front',
    codes: findings.filter(({ severity }) => severity !== 'note').map(({ code }) => code),
  };
}

describe('the hinge side of a door', () => {
  it.each(['left', 'right'] as const)('is %s where the door says so', async (side) => {
    expect(await frontsOf(`door "china" hinged ${side}`)).toEqual({ hingeSide: side, codes: [] });
  });

  it('is open where nothing is said', async () => {
    expect((await frontsOf('door "china"')).hingeSide).toBeUndefined();
  });

  it('is one of the two', async () => {
    expect((await frontsOf('door "china" hinged left, hinged right')).codes).toEqual(['cannot-be-both']);
  });
});
