import { defineFinding, type Measure } from '../finding.ts';

/** Too little wood is left beside or behind a mortise or a hole. */
export const wallTooThin = defineFinding<{
  readonly part: string;
  readonly what: string;
  /** 'behind it', 'between it and the dado for the bottom' */
  readonly where: string;
  readonly left: Measure;
  readonly limit: Measure;
}>({
  code: 'wall-too-thin',
  severity: 'warning',
  title: 'A wall that is too thin',
  headline: (facts, say) =>
    `the ${facts.what} leaves ${say.length(facts.left)} of the ${facts.part} ${facts.where}: less than ` +
    `${say.length(facts.limit)} breaks out`,
  brief: (facts, say) => `only ${say.length(facts.left)} of wood left`,
  related: { other: (values) => `The ${String(values['what'])} comes from here` },
  mends: {},
  help: `
A wall of less than about 1/8" (3 mm) beside a mortise or a dowel breaks out when the hole is made, or when glue is
pressed into it. Textbooks ask for 1/8" to 1/4" behind a blind mortise (from memory).

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, by dowels, first 1/4 in, 4 apart
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, by dowels, first 1 in, 4 apart
  }
}
\`\`\`
`,
});
