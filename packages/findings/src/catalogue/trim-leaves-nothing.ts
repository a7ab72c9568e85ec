import { defineFinding, type Measure } from '../finding.ts';

/** What is trimmed off the edges of a sheet is all of it. */
export const trimLeavesNothing = defineFinding<{
  readonly what: string;
  readonly trim: Measure;
  readonly axis: 'long' | 'wide';
  readonly size: Measure;
}>({
  code: 'trim-leaves-nothing',
  severity: 'error',
  title: 'A trim that leaves nothing of a sheet',
  headline: (facts, say) =>
    `${say.length(facts.trim)} off each edge leaves nothing of ${say.name(facts.what)}, ${say.length(facts.size)} ${facts.axis}`,
  brief: () => 'nothing left of a sheet',
  related: {},
  mends: {},
  help: `
Each of the four edges of a sheet is trimmed by this much before anything is cut from it. What is left between two edges
is what parts are cut from.

\`\`\`fettle wrong
sheet "ply" actual 3/4, 96 long, 48 wide, trim 24
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`

\`\`\`fettle right
sheet "ply" actual 3/4, 96 long, 48 wide, trim 1/4
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`
`,
});
