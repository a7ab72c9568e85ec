import { defineFinding } from '../finding.ts';

/** What is said of a thing itself, inside the braces that hold its parts. */
export const saidInsideBraces = defineFinding<{
  readonly words: string;
  /** The statement that the words belong to. */
  readonly word: string;
}>({
  code: 'said-inside-braces',
  severity: 'error',
  title: 'Said inside the braces, not before them',
  headline: (facts) => `'${facts.words}' is said of the ${facts.word} itself: before its brace, not inside it`,
  brief: (facts) => `'${facts.words}' belongs before the brace`,
  related: {},
  mends: {
    'before-brace': (values) => `Say '${values['words']}' before the brace`,
    remove: (values) => `Take out '${values['words']}'`,
  },
  help: `
What a thing is stands before its brace; what it holds or is made of stands inside. These words tell what it is, so nothing
was computed from them where they stand.

\`\`\`fettle wrong
piece "cupboard" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    door "all" rest { hinged left   shelves 2 fixed thick 3/4 }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "cupboard" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    door "all" rest, hinged left { shelves 2 fixed thick 3/4 }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
