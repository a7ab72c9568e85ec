import { defineFinding } from '../finding.ts';

/** Words that the language knows, in a place that does not. */
export const wordBelongsElsewhere = defineFinding<{
  readonly words: string;
  /** The statement or the body they stand in, in the reader's words. */
  readonly place: string;
  /** Where they belong, nearest first: `'face'`, `a file`. */
  readonly belongs: readonly string[];
  /** A word that may stand here and looks almost the same; empty where there is none. */
  readonly nearest: string;
  /** The language's own word for it there, where these words are another of the trade. */
  readonly called?: string;
}>({
  code: 'word-belongs-elsewhere',
  severity: 'error',
  title: 'A word in the wrong place',
  headline: (facts) =>
    (facts.called === undefined
      ? `'${facts.words}' belongs`
      : `for '${facts.words}' the word is '${facts.called}': it belongs`) +
    ` in ${facts.belongs.join(' or ')}, not in ${facts.place}` +
    (facts.nearest === '' ? '' : `; here it may be '${facts.nearest}'`),
  brief: (facts) => `'${facts.words}' in the wrong place`,
  related: {},
  mends: {
    'put-into': (values) => `Put '${values['words']}' into '${values['word']}'`,
    wrap: (values) => `Write '${values['word']} { }' around '${values['words']}'`,
    'say-there': (values) => `Say '${values['words']}' of '${values['word']}'`,
    'use-nearest': (values) => `Write '${values['word']}'`,
    remove: (values) => `Take out '${values['words']}'`,
  },
  help: `
Each statement has its own words. This one is a word of the language, and it means something elsewhere; where it stands
nothing was computed from it.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  sides thick 3/4
  case { bottom thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4 }
}
\`\`\`
`,
});
