import { defineFinding, type Measure } from '../finding.ts';

/** A measure of pin holes that leaves no hole or no row. */
export const pinsWithoutSize = defineFinding<{
  readonly what: 'width' | 'depth' | 'pitch';
  readonly size: Measure;
}>({
  code: 'pins-without-size',
  severity: 'error',
  title: 'Pin holes of no size',
  headline: (facts, say) => `a ${facts.what} of ${say.length(facts.size)} leaves no row of pin holes`,
  brief: (facts) => `${facts.what} of pin holes`,
  related: {},
  mends: { usual: (values, say) => `Make it ${say.length(values['size'] as Measure)}` },
  help: `
The width and the depth of pin holes, and the pitch from one to the next, are more than nothing.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable { pins holes 0 wide } } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable { pins holes 1/4 wide } } }
}
\`\`\`
`,
});
