import { defineFinding } from '../finding.ts';

export const lidSupportHalfTold = defineFinding<{
  readonly missing: 'carries' | 'how';
  /** What they have to carry in all; empty where nobody knows what the lid weighs. */
  readonly moment: string;
}>({
  code: 'lid-support-half-told',
  severity: 'warning',
  title: 'Supports of a lid that are told by half',
  headline: (facts) =>
    facts.missing === 'how'
      ? "nothing says whether the support holds the lid wherever it is let go ('torsion') or only when it is open ('stay')"
      : `nothing says what the support carries ('carries … inch-pounds'), so whether it holds the lid is not checked` +
        (facts.moment === '' ? '' : `: the lid makes ${facts.moment} at half its depth`),
  brief: (facts) => (facts.missing === 'how' ? 'torsion or stay' : 'not checked: what it carries is not said'),
  related: {},
  mends: { say: (values) => `Say '${values['words']}'` },
  help: `
A torsion support holds a lid wherever it is let go, a stay only when it is open. Either is rated for a moment, which is
held against the weight of the lid at half its depth. Say both, from its data sheet.

\`\`\`fettle wrong
hinge "butt 3" butt, 3 long, leaf 1/2 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf
board "pine" any thickness, 12 wide, 96 long
piece "chest" {
  size 40 wide, 20 high, 18 deep
  case {
    lid "pine" thick 3/4, 3/4 from wall { hinges "butt 3"   support 2 of them, carries 60 inch-pounds }
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
