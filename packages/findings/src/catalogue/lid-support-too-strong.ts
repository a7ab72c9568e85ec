import { defineFinding } from '../finding.ts';

export const lidSupportTooStrong = defineFinding<{
  readonly weight: string;
  readonly moment: string;
  readonly count: number;
  readonly rated: string;
  /** How many times the moment of the lid is the most. */
  readonly most: string;
}>({
  code: 'lid-support-too-strong',
  severity: 'warning',
  title: 'Supports that lift the lid by themselves',
  headline: (facts) =>
    `the lid weighs about ${facts.weight}, which at half its depth makes ${facts.moment}; what holds it is rated for ` +
    `${facts.rated}${facts.count > 1 ? ' in all' : ''}, more than ${facts.most} times as much: it is hard to close, and ` +
    'may spring open by itself and pull at its hinges',
  brief: () => 'may lift the lid by itself',
  related: {},
  mends: {
    weaker: (values) => `Take supports that carry ${values['each']} each`,
    fewer: (values) => `Take ${values['count']} of them`,
  },
  help: `
A torsion support holds the lid by a force of its own. It needs a little more than the moment of the lid: its weight times
the distance of its middle from the hinges. With more than twice as much the lid is hard to close and may spring up by
itself (common practice, no source; the data sheet of the support goes before it). Take fewer of them, or weaker ones. Weights are
averages: try it on the real piece.

\`\`\`fettle wrong
hinge "butt 3" butt, 3 long, leaf 1/2 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf
board "pine" any thickness, 12 wide, 96 long
piece "chest" {
  size 40 wide, 20 high, 18 deep
  case {
    lid "pine" thick 3/4, 3/4 from wall { hinges "butt 3"   support torsion, 2 of them, carries 90 inch-pounds }
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
