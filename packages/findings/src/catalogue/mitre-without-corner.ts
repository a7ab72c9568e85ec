import { defineFinding } from '../finding.ts';

/** Strips are to be mitred where none meets another. */
export const mitreWithoutCorner = defineFinding<{
  readonly part: string;
}>({
  code: 'mitre-without-corner',
  severity: 'warning',
  title: 'Mitres without a corner',
  headline: (facts) => `no two strips of the ${facts.part} meet at a corner: there is nothing to mitre`,
  brief: () => 'no corner to mitre',
  related: {},
  mends: { remove: () => `Leave 'mitred' away` },
  help: `
Strips are mitred where two of them meet at a corner of the part. With a strip along one edge, or along two that lie
opposite each other, there is no such corner.

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply" { edging "cherry" thick 1/4, at front, mitred }
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply" { edging "cherry" thick 1/4, at front }
  }
}
\`\`\`
`,
});
