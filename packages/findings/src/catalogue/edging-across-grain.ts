import { defineFinding, type Measure } from '../finding.ts';

/** A strip is glued across the grain of a solid part, at its end. */
export const edgingAcrossGrain = defineFinding<{
  readonly part: string;
  readonly width: Measure;
}>({
  code: 'edging-across-grain',
  severity: 'warning',
  title: 'Edging across the grain',
  headline: (facts, say) =>
    `the ${facts.part} is solid wood ${say.length(facts.width)} wide: a strip across its grain holds it fast at the end`,
  brief: () => 'a strip across the grain of solid wood',
  related: {},
  mends: {},
  help: `
Edging hides the core of a sheet. Solid wood has no core to hide; a strip glued along its end lies across its grain and
keeps it from moving, so that it splits or the strip comes off (common practice, no source).

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    top "cherry" thick 3/4, over sides { edging "cherry" thick 1/2, at ends   slotted behind }
    sides "ply"
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    top "cherry" thick 3/4, over sides { slotted behind }
    sides "ply"
  }
}
\`\`\`
`,
});
