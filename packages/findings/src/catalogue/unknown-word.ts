import { defineFinding } from '../finding.ts';

function didYouMean(offers: readonly string[]): string {
  const quoted = offers.map((each) => `'${each}'`);
  const last = quoted.pop();
  if (last === undefined) return '';
  return `; did you mean ${quoted.length === 0 ? last : `${quoted.join(', ')} or ${last}`}?`;
}

/** Half a word is met while somebody types: what it may become is of more use than that it is nothing yet. */
function beginSo(begun: readonly string[]): string {
  const quoted = begun.slice(0, mostBegun).map((each) => `'${each}'`);
  const more = begun.length - quoted.length;
  if (more > 0) return `${quoted.join(', ')} and ${more} more begin so`;
  const last = quoted.pop();
  return quoted.length === 0 ? `${last} begins so` : `${quoted.join(', ')} and ${last} begin so`;
}

const mostBegun = 3;

/** Words that mean nothing where they stand. */
export const unknownWord = defineFinding<{
  readonly words: string;
  /** The statement or the body they stand in, in the reader's words. */
  readonly place: string;
  readonly nearest: string;
  /** What these words may be short for, where nothing is near. */
  readonly meant?: readonly string[];
  /** The words that may stand here and begin with these letters, where nothing else is likely. */
  readonly begun?: readonly string[];
}>({
  code: 'unknown-word',
  severity: 'error',
  title: 'Words that mean nothing here',
  headline: (facts) =>
    facts.begun !== undefined && facts.begun.length > 0
      ? `'${facts.words}' is no word yet: ${beginSo(facts.begun)}`
      : `'${facts.words}' means nothing in ${facts.place}` +
        didYouMean(facts.nearest === '' ? (facts.meant ?? []) : [facts.nearest]),
  brief: (facts) =>
    facts.begun !== undefined && facts.begun.length > 0
      ? `'${facts.words}' is half a word`
      : `'${facts.words}' means nothing here`,
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
