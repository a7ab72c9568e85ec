import { defineFinding } from '../finding.ts';

export const braceNotClosed = defineFinding<{
  readonly word: string;
  /** The text ends before it is closed. */
  readonly atEnd: boolean;
  /** How many around it are not closed either. */
  readonly others: number;
}>({
  code: 'brace-not-closed',
  severity: 'error',
  title: 'A brace that is not closed',
  headline: (facts) => {
    const others =
      facts.others === 0 ? '' : `, nor ${facts.others === 1 ? 'is the one' : `are ${facts.others}`} around it`;
    return facts.atEnd
      ? `the '{' after '${facts.word}' is not closed where the text ends${others}`
      : `the '{' after '${facts.word}' is never closed; by the way the lines are indented it ends before the next line at this depth`;
  },
  brief: (facts) => `'{' after '${facts.word}' not closed`,
  related: {},
  mends: { close: (values) => `Close it with '${'}'.repeat(Number(values['braces']))}'` },
  help: `
Every '{' needs its '}'. The braces of this text do not balance, so the indentation of the lines was taken as a guide, or the
end of the text.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case {
    sides thick 3/4
  face inset {
    open rest
  }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case {
    sides thick 3/4
  }
  face inset {
    open rest
  }
}
\`\`\`
`,
});
