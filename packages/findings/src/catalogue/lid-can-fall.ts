import { defineFinding } from '../finding.ts';

export const lidCanFall = defineFinding<{
  readonly isTorsion: boolean;
}>({
  code: 'lid-can-fall',
  severity: 'note',
  title: 'Fingers and heads under a lid',
  headline: (facts) =>
    facts.isTorsion
      ? 'a lid can pinch fingers and fall: try on the real piece that its supports hold it wherever it is let go, and ask what applies to chests for toys and blankets where it will stand'
      : 'a lid can pinch fingers and fall: hold it with torsion or other safety supports, which keep it wherever it is let go, and ask what applies to chests for toys and blankets where it will stand',
  brief: () => 'a lid can pinch and fall',
  related: {},
  mends: {},
  help: `
A caution, never a certification. Children climb into chests and pull themselves up at their edges: a lid must not drop
when it is let go, must leave air inside when it is closed, and must have no catch that holds it shut. In the USA ASTM F963
has requirements for the lid supports of toy chests, and other rules apply elsewhere: they are met by tests on the real
piece, and nothing here tests or replaces them. Lids of up to 2 lb are not spoken of.

\`\`\`fettle wrong
hinge "butt 3" butt, 3 long, leaf 1/2 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf
board "pine" any thickness, 12 wide, 96 long
piece "chest" {
  size 40 wide, 20 high, 18 deep
  case {
    lid "pine" thick 3/4, 3/4 from wall { hinges "butt 3"   support torsion, 2 of them, carries 60 inch-pounds }
    sides "pine" thick 3/4   bottom "pine" thick 3/4, between sides   back "pine" thick 3/4, applied
  }
}
\`\`\`

\`\`\`fettle right
hinge "butt 3" butt, 3 long, leaf 1/2 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf
board "pine" any thickness, 12 wide, 96 long
piece "chest" {
  size 40 wide, 20 high, 18 deep
  case {
    top "pine" thick 3/4, over sides
    sides "pine" thick 3/4   bottom "pine" thick 3/4, between sides   back "pine" thick 3/4, applied
  }
}
\`\`\`
`,
});
