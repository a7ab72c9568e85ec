import { defineFinding } from '../finding.ts';

/** A named value, or a value that a pattern takes, of which nothing makes use. */
export const valueNeverUsed = defineFinding<{
  readonly name: string;
  /** The word that names it: 'let' or 'takes'. */
  readonly by: 'let' | 'takes';
}>({
  code: 'value-never-used',
  severity: 'note',
  title: 'A value that nothing uses',
  headline: (facts, say) =>
    facts.by === 'takes'
      ? `the pattern takes ${say.name(facts.name)} and makes no use of it`
      : `nothing uses the value ${say.name(facts.name)}`,
  related: {},
  mends: { remove: (values, say) => `Take out the value ${say.name(String(values['name']))}` },
  help: `
A named value is worth its line when its name is said somewhere. A shop file holds values for others to use, so they are
not counted there.

\`\`\`fettle wrong
piece "shelf unit" {
  let "span" be 30
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  let "span" be 30
  size "span" wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
