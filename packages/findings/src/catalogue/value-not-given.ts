import { defineFinding } from '../finding.ts';

/** A piece made from a pattern leaves out a value that the pattern needs. */
export const valueNotGiven = defineFinding<{ readonly name: string; readonly pattern: string }>({
  code: 'value-not-given',
  severity: 'error',
  title: 'A pattern needs a value that is not given',
  headline: (facts, say) =>
    `the pattern ${say.name(facts.pattern)} takes ${say.name(facts.name)}, and this piece does not give it`,
  brief: (facts, say) => `${say.name(facts.name)} not given`,
  related: {},
  mends: {},
  help: `
A pattern says what it takes: \`takes "width"\`. Each piece made from it gives the value,
\`piece "A1" from "wall case" with "width" 18\`, unless the pattern has one of its own: \`takes "width" or 24\`.

\`\`\`fettle wrong
pattern "wall case" {
  takes "width"
  size "width" wide, 30 high, 12 deep
  case { sides thick 3/4 }
}
piece "A1" from "wall case"
\`\`\`

\`\`\`fettle right
pattern "wall case" {
  takes "width"
  size "width" wide, 30 high, 12 deep
  case { sides thick 3/4 }
}
piece "A1" from "wall case" with "width" 18
\`\`\`
`,
});
