import { defineFinding, type Measure } from '../finding.ts';

/** The screw that is named for the wall hardly reaches what is to hold it. */
export const wallScrewTooShort = defineFinding<{
  readonly screw: string;
  readonly length: Measure;
  readonly before: Measure;
  readonly needed: Measure;
  readonly by: Measure;
}>({
  code: 'wall-screw-too-short',
  severity: 'warning',
  title: 'A wall screw that is too short',
  headline: (facts, say) =>
    `${say.name(facts.screw)} is ${say.length(facts.length)} long and passes ${say.length(facts.before)} before it holds: ` +
    `it should be ${say.length(facts.needed)} long, ${say.length(facts.by)} more`,
  brief: (facts, say) => `${say.length(facts.by)} too short for the wall`,
  related: { screw: (values, say) => `${say.name(String(values['screw']))} is described here` },
  mends: {},
  help: `
The screw of a hung piece goes through the back, through the strip behind it and through the lining of the wall before it
holds. It is reckoned with 1/2" (12.5 mm) of lining and 1-1/2" (38 mm) in the stud: common practice, no source. Masonry
and hollow walls want the anchors that their maker names for the load; nothing here replaces what that maker and local practice say.

\`\`\`fettle wrong
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
screw "No. 8" 2 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall, by screws "No. 8"
    nailers 3 wide of "ply", by screws
  }
}
\`\`\`

\`\`\`fettle right
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
screw "No. 10" 3 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall, by screws "No. 10"
    nailers 3 wide of "ply", by screws
  }
}
\`\`\`
`,
});
