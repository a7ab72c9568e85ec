import { defineFinding } from '../finding.ts';

/** Understood, kept, and not computed yet. */
export const notCheckedYet = defineFinding<{ readonly words: string }>({
  code: 'not-checked-yet',
  severity: 'note',
  title: 'Understood, not checked yet',
  headline: (facts) => `'${facts.words}' is understood and not checked yet: no size or drawing takes it into account`,
  related: {},
  mends: {},
  help: `
The words are part of the language, and nothing is computed from them yet. They stay in the text unharmed.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
  site { window-sill 36 above floor }
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
