import { defineFinding } from '../finding.ts';

export const lidHingesNotPlaced = defineFinding<{
  /** Empty where none are named. */
  readonly hinge: string;
  readonly why: 'none' | 'no-butt' | 'sizes';
  /** The words of its entry that are missing. */
  readonly missing: readonly string[];
}>({
  code: 'lid-hinges-not-placed',
  severity: 'warning',
  title: 'A lid whose hinges have no place',
  headline: (facts, say) => {
    if (facts.why === 'none') return 'no hinges are named for the lid: none are placed, checked or bought';
    const hinge = say.name(facts.hinge);
    return facts.why === 'no-butt'
      ? `only butt hinges are placed on lids, and ${hinge} are none: they are bought, but neither placed nor checked`
      : `the entry of ${hinge} does not say ${facts.missing.map((each) => `'${each}'`).join(' or ')}: they are bought, but neither placed nor checked`;
  },
  brief: (facts) => (facts.why === 'none' ? 'no hinges named' : 'hinges neither placed nor checked'),
  related: { hinge: (values, say) => `${say.name(String(values['hinge']))} is described here` },
  mends: { 'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}` },
  help: `
A lid hangs on butt hinges along its back edge: one leaf let into its underside, the other into the wood that it lies on.
Where their gains lie follows from the length of a leaf, its width and the thickness of the closed hinge. Other hinges are
marked from the hinge itself.

\`\`\`fettle wrong
hinge "butt 3" butt, 3 long, screws 5/8 long, 3 screws in each leaf
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
    lid "pine" thick 3/4, 3/4 from wall { hinges "butt 3"   support torsion, 2 of them, carries 60 inch-pounds }
    sides "pine" thick 3/4   bottom "pine" thick 3/4, between sides   back "pine" thick 3/4, applied
  }
}
\`\`\`
`,
});
