import { defineFinding } from '../finding.ts';

/** A piece that has neither a case nor a face. */
export const nothingToMake = defineFinding<{ readonly name: string }>({
  code: 'nothing-to-make',
  severity: 'note',
  title: 'A piece with nothing to make',
  headline: (facts, say) => `${say.name(facts.name)} has neither a case nor a face yet, so there is nothing to make`,
  related: {},
  mends: {},
  help: `
Parts come from the case and from the face of a piece. Its size alone makes an outline.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
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
