import { defineFinding, type Measure } from '../finding.ts';

/** Rows of the 32 mm system that are no whole number of pitches apart. */
export const rowsOffPitch = defineFinding<{
  readonly apart: Measure;
  readonly pitch: Measure;
  /** To two places. */
  readonly pitches: string;
}>({
  code: 'rows-off-pitch',
  severity: 'warning',
  title: 'Rows that are off the system',
  headline: (facts, say) =>
    `the rows stand ${say.length(facts.apart)} apart: ${facts.pitches} pitches of ${say.length(facts.pitch)}, not a whole number`,
  brief: (facts) => `${facts.pitches} pitches`,
  related: {},
  mends: { move: (values, say) => `Stand the back row ${say.length(values['size'] as Measure)} from the back` },
  help: `
In the 32 mm system everything sits on one grid: holes 32 mm apart in their row, and rows a whole number of 32 mm apart,
so that slides and hinge plates fit both rows. It is a convention of the trade that several makers describe; no standard
defines it. Without a distance from the back the back row finds its place by itself.

\`\`\`fettle wrong
piece "unit" {
  units mm to 0.5
  size 600 wide, 720 high, 560 deep
  case { sides thick 18   bottom thick 18, between sides }
  face overlay full { open "pots" { shelves 1 adjustable { pins system rows, 37 from back } } }
}
\`\`\`

\`\`\`fettle right
piece "unit" {
  units mm to 0.5
  size 600 wide, 720 high, 560 deep
  case { sides thick 18   bottom thick 18, between sides }
  face overlay full { open "pots" { shelves 1 adjustable { pins system rows } } }
}
\`\`\`
`,
});
