import { defineFinding, type Measure } from '../finding.ts';

/** The size of a piece in bare numbers that make sense in another unit. */
export const sizeLooksLikeOtherUnit = defineFinding<{
  /** The number and its direction, as written. */
  readonly words: string;
  readonly size: Measure;
  readonly unit: string;
  readonly other: string;
}>({
  code: 'size-looks-like-other-unit',
  severity: 'warning',
  title: 'A size that looks like another unit',
  headline: (facts, say) =>
    `'${facts.words}' is ${say.length(facts.size)}, for bare numbers are ${facts.unit} here; it looks like ${facts.other}`,
  brief: (facts) => `${facts.unit} or ${facts.other}?`,
  related: {},
  mends: { say: (values) => `Write ${values['words']}` },
  help: `
A number without a unit counts the units of its piece: inches, unless the piece or its file says otherwise. A piece of
more than 200 inches, or of less than 100 millimetres, is most often one whose units were not said.

Say the units once, \`units mm\`, or beside the number, \`600mm\`. A piece that is really so large or so small says its
unit beside the number too. Parts that come out with no size left because of it are not told apart from this.

\`\`\`fettle wrong
piece "vanity" {
  size 32 wide, 24 high, 20 deep
  units mm
  case { sides thick 18 }
}
\`\`\`

\`\`\`fettle right
piece "vanity" {
  size 800 wide, 600 high, 500 deep
  units mm
  case { sides thick 18 }
}
\`\`\`
`,
});
