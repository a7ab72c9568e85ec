import { elevation, toSvg } from '@fettle/drawings';
import { evaluateDocument } from '@fettle/language';
import { expect, it } from 'vitest';
import { butt, caseWith } from '../language/doors/door-texts.ts';
import { openFixture } from '../language/harness/workbench.ts';

/** A door that is a frame is named on its panel, and swings as a plain one does. */
it('a pair of framed doors carries its name twice, and the lines of its swing', async () => {
  const text = caseWith(
    `inset, gap 3/32 {
    doors "press" { hinges "butt 2" }
    fronts "cherry" thick 3/4, frame-and-panel { stiles 2-1/4 wide   panel "cherry" thick 3/8 }
  }`,
    `${butt}\nboard "cherry" any thickness, 9 wide, 120 long`,
    '30 wide, 40 high, 16 deep',
  );
  const { services, document } = await openFixture({ files: [{ name: 'piece.fettle', text }] });
  const [piece] = evaluateDocument(services, document('piece.fettle')).pieces;
  if (piece === undefined) throw new Error('the text holds no piece');
  const svg = toSvg(elevation(piece.evaluation), { standalone: true });
  expect(svg.match(/>press</g)).toHaveLength(2);
  expect(svg).toContain('swing, meeting at the hinges');
});
