import { defineFinding } from '../finding.ts';

/** A unit written as a word of its own behind its number. */
export const unitApart = defineFinding<{ readonly words: string; readonly written: string }>({
  code: 'unit-apart',
  severity: 'error',
  title: 'A unit written as a word',
  headline: (facts) => `'${facts.words}' is no length as it stands; it is written ${facts.written}`,
  brief: (facts) => `'${facts.words}', written ${facts.written}`,
  related: {},
  mends: { write: (values) => `Write ${values['written']}` },
  help: `
A unit stands right behind its number: \`17"\` or \`17in\`, \`5'\` or \`5ft\`, \`19mm\`, \`4.5cm\`. The piece says once what a
number without a unit counts: \`units inches\`.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 inches wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size 30" wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
