import { defineFinding } from '../finding.ts';

/** One statement says two things of which only one can be. */
export const cannotBeBoth = defineFinding<{ readonly words: string; readonly other: string; readonly place: string }>({
  code: 'cannot-be-both',
  severity: 'error',
  title: 'Two things that exclude each other',
  headline: (facts) => `${facts.place} cannot be both '${facts.other}' and '${facts.words}'`,
  brief: (facts) => `'${facts.other}' or '${facts.words}'`,
  related: { other: (values) => `'${values['words']}' is said here` },
  mends: { remove: (values) => `Take out '${values['words']}'` },
  help: `
A divider is shown between the fronts or lies behind them; a top lies over the sides or between them; a corner has one
joint; a case has a top or a lid. Where two such things are said in one statement, one of them has to go.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides, under sides }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
}
\`\`\`
`,
});
