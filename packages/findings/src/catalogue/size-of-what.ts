import { defineFinding } from '../finding.ts';

/** A size on a space that does not say whether it is the front's or the opening's. */
export const sizeOfWhat = defineFinding<{ readonly words: string; readonly fronted: boolean }>({
  code: 'size-of-what',
  severity: 'error',
  title: 'A size of the front or of the opening',
  headline: (facts) =>
    facts.fronted
      ? `'${facts.words}' does not say what it is the size of: of the front, or of the opening`
      : `'${facts.words}' does not say what it is the size of: here it is the opening's`,
  brief: (facts) => `'${facts.words}' of what?`,
  related: {},
  mends: { say: (values) => `Write '${values['words']}'` },
  help: `
An inset front is smaller than its opening by the gaps around it, one that overlaps is larger. Which of the two a number
means is said, not guessed: \`front 9 high\` or \`opening 9 high\`.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" 9 high
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" front 9 high
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`
`,
});
