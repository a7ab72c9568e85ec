import { defineFinding } from '../finding.ts';

export const lidWithoutSupport = defineFinding<{
  /** From averages; empty where nobody knows what it is made of. */
  readonly weight: string;
  readonly moment: string;
}>({
  code: 'lid-without-support',
  severity: 'warning',
  title: 'A lid that nothing holds up',
  headline: (facts) =>
    `nothing is named that holds the lid${facts.weight === '' ? '' : `, which weighs about ${facts.weight}`}: it falls on hands and heads` +
    (facts.moment === '' ? '' : `; what holds it has to carry ${facts.moment}`),
  brief: () => 'nothing holds the lid',
  related: {},
  mends: {},
  help: `
A lid that is let go falls on the fingers at its edge and on whoever leans into the chest. What holds it has to carry its
moment: its weight times the distance of its middle from the hinges. A torsion support holds it wherever it is let go; a
stay only when it is open. Lids of up to 2 lb are not asked (common practice, no source). Weights are averages.

\`\`\`fettle wrong
hinge "butt 3" butt, 3 long, leaf 1/2 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf
board "pine" any thickness, 12 wide, 96 long
piece "chest" {
  size 40 wide, 20 high, 18 deep
  case {
    lid "pine" thick 3/4, 3/4 from wall { hinges "butt 3" }
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
    lid "pine" thick 3/4, 3/4 from wall { hinges "butt 3"   support torsion, 2 of them, carries 60 inch-pounds }
    sides "pine" thick 3/4   bottom "pine" thick 3/4, between sides   back "pine" thick 3/4, applied
  }
}
\`\`\`
`,
});
