import { defineFinding } from '../finding.ts';

/** A face frame is cut from sheet stock. */
export const faceFrameNotSolid = defineFinding<{
  readonly stock: string;
}>({
  code: 'face-frame-not-solid',
  severity: 'warning',
  title: 'A face frame of sheet stock',
  headline: (facts, say) =>
    `the face frame is of ${say.name(facts.stock)}, a sheet: its edges show, and screws of hinges hold badly in them`,
  brief: () => 'a face frame of sheet stock',
  related: { stock: (values, say) => `${say.name(String(values['stock']))} is a sheet` },
  mends: { 'use-stock': (values, say) => `Use ${say.name(String(values['stock']))}` },
  help: `
A face frame is of solid wood, the grain of its stiles upright and that of its rails level (Architectural Woodwork
Standards, 1st ed., 2009, 10-4.4.25.4). Cut from a sheet, every edge shows plies or core.

\`\`\`fettle wrong
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    frame "ply" { stiles 1-1/2 wide }
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    frame "cherry" thick 3/4 { stiles 1-1/2 wide }
  }
}
\`\`\`
`,
});
