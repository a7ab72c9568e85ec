import { defineFinding } from '../finding.ts';

const untold = {
  lid: "where it is screwed to the lid ('hole … forward')",
  case: "where it is screwed to the back ('hole … down') or to a side ('hole … forward, … down')",
  screws: "how long its screws are ('screws … long')",
  sides: '',
} as const;

export const lidSupportNotPlaced = defineFinding<{
  /** What its words do not tell; `sides`: each of two sides takes one, and there are more. */
  readonly missing: readonly ('lid' | 'case' | 'screws' | 'sides')[];
}>({
  code: 'lid-support-not-placed',
  severity: 'note',
  title: 'Supports of a lid that have no place yet',
  headline: ({ missing }) =>
    missing.includes('sides')
      ? 'each side of the case takes one support, and there are more than two: they are bought, but neither placed nor checked'
      : `nothing says ${missing.map((each) => untold[each]).join(' nor ')}: the supports are bought, but neither placed nor checked`,
  brief: () => 'neither placed nor checked',
  related: {},
  mends: { two: () => 'Take 2 of them' },
  help: `
Where a support is screwed on follows from its data sheet. In braces after its words say each of its holes and its screws:
a hole in the lid lies so far forward of the line on which the lid turns, a hole in the back so far down from the underside
of the closed lid, and a hole in a side of the case both forward and down. Then each screw is held against the wood behind
it, and drawn, scheduled and bought.

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
    lid "pine" thick 3/4, 3/4 from wall { hinges "butt 3"   support torsion, 2 of them, carries 60 inch-pounds {
      hole 1-1/2 forward   hole 3 forward   hole 1 down   hole 2 down   screws 1/2 long
    } }
    sides "pine" thick 3/4   bottom "pine" thick 3/4, between sides   back "pine" thick 3/4, applied
  }
}
\`\`\`
`,
});
