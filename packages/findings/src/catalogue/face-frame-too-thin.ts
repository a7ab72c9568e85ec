import { defineFinding, type Measure } from '../finding.ts';

/** A face frame is thinner than the trade builds it. */
export const faceFrameTooThin = defineFinding<{
  readonly thickness: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'face-frame-too-thin',
  severity: 'warning',
  title: 'A face frame that is too thin',
  headline: (facts, say) =>
    `the face frame is ${say.length(facts.thickness)} thick, at least ${say.length(facts.limit)} is asked: ${say.length(facts.difference)} too thin`,
  brief: (facts, say) => `frame ${say.length(facts.difference)} too thin`,
  related: {},
  mends: { thicken: (values, say) => `Make it ${say.length(values['size'] as Measure)} thick` },
  help: `
A face frame is of solid wood, at least 3/4" thick (Architectural Woodwork Standards, 1st ed., 2009, 10-4.4.25.4): it
carries the hinges and keeps the front of the case straight.

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    frame "cherry" thick 1/2 { stiles 1-1/2 wide }
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
