import { defineFinding } from '../finding.ts';

function didYouMean(offers: readonly string[]): string {
  const quoted = offers.map((each) => `'${each}'`);
  const last = quoted.pop();
  if (last === undefined) return '';
  return `; did you mean ${quoted.length === 0 ? last : `${quoted.join(', ')} or ${last}`}?`;
}

/** Words that mean nothing where they stand. */
export const unknownWord = defineFinding<{
  readonly words: string;
  /** The statement or the body they stand in, in the reader's words. */
  readonly place: string;
  readonly nearest: string;
  /** What these words may be short for, where nothing is near. */
  readonly meant?: readonly string[];
}>({
  code: 'unknown-word',
  severity: 'error',
  title: 'Words that mean nothing here',
  headline: (facts) =>
    `'${facts.words}' means nothing in ${facts.place}` +
    didYouMean(facts.nearest === '' ? (facts.meant ?? []) : [facts.nearest]),
  brief: (facts) => `'${facts.words}' means nothing here`,
  related: {},
  mends: {
    'use-nearest': (values) => `Write '${values['word']}'`,
    remove: (values) => `Take out '${values['words']}'`,
  },
  help: `
Each statement knows its own words. These are not among them, so nothing was computed from them; everything around them
was read as if they were not there.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep, painted
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
