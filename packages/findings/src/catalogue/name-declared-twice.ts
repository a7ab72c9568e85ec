import { defineFinding } from '../finding.ts';

/** Two statements of one kind have the same name in the same place. */
export const nameDeclaredTwice = defineFinding<{
  readonly name: string;
  /** 'stock', 'slide', … in the reader's words. */
  readonly what: string;
}>({
  code: 'name-declared-twice',
  severity: 'warning',
  title: 'A name given twice',
  headline: (facts, say) =>
    `${say.name(facts.name)} is the name of a ${facts.what} already; whoever says it means the first`,
  brief: (facts, say) => `${say.name(facts.name)} given twice`,
  related: { first: (values, say) => `${say.name(String(values['name']))} is first given here` },
  mends: { rename: (values, say) => `Call this one ${say.name(String(values['name']))}` },
  help: `
A name stands for one thing. Where two of a kind have the same name, the first is meant wherever the name is said, and
in the cut list the two cannot be told apart.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" front 9 high
    drawer "linen" rest
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
