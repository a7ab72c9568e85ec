import { defineFinding } from '../finding.ts';

export const lidSupportTooWeak = defineFinding<{
  readonly weight: string;
  readonly moment: string;
  readonly count: number;
  readonly rated: string;
  readonly missing: string;
}>({
  code: 'lid-support-too-weak',
  severity: 'error',
  title: 'Supports that do not carry the lid',
  headline: (facts) =>
    `the lid weighs about ${facts.weight}, which at half its depth makes ${facts.moment}; what holds it is rated for ` +
    `${facts.rated}${facts.count > 1 ? ' in all' : ''}: ${facts.missing} too little`,
  brief: (facts) => `${facts.missing} too little to hold the lid`,
  related: {},
  mends: {
    stronger: (values) => `Take supports that carry ${values['each']} each`,
    more: (values) => `Take ${values['count']} of them`,
  },
  help: `
The moment of a lid that stands out level is its weight times the distance of its middle from the hinges. Supports are
rated for a moment each. Take more of them, or stronger ones. Weights are averages: leave something to spare.

\`\`\`fettle wrong
hinge "butt 3" butt, 3 long, leaf 1/2 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf
board "pine" any thickness, 12 wide, 96 long
piece "chest" {
  size 40 wide, 20 high, 18 deep
  case {
    lid "pine" thick 3/4, 3/4 from wall { hinges "butt 3"   support torsion, 2 of them, carries 30 inch-pounds }
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
