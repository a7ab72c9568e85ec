import { defineFinding } from '../finding.ts';

/** Words that are one word here, written apart; they are read as that word. */
export const hyphenLeftOut = defineFinding<{
  readonly words: string;
  /** The one word that they are. */
  readonly word: string;
}>({
  code: 'hyphen-left-out',
  severity: 'error',
  title: 'One word that was written as several',
  headline: ({ words, word }) => `'${words}' is one word here: '${word}'`,
  brief: ({ word }) => `'${word}' written apart`,
  related: {},
  mends: { join: ({ word }) => `Write '${String(word)}'` },
  help: `
Some terms of the trade are two or three words in speech and one word here, held together by hyphens, so that each can
be told from the words around it. Written apart they are read as what they mean; the mend adds the hyphens.

\`\`\`fettle wrong
piece "cupboard" {
  size 24 wide, 36 high, 14 deep
  case {
    sides thick 3/4   bottom thick 3/4, between sides
    toe space thick 3/4, 4 high, 3 deep
  }
}
\`\`\`

\`\`\`fettle right
piece "cupboard" {
  size 24 wide, 36 high, 14 deep
  case {
    sides thick 3/4   bottom thick 3/4, between sides
    toe-space thick 3/4, 4 high, 3 deep
  }
}
\`\`\`
`,
});
