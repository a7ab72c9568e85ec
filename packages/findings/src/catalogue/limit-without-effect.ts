import { defineFinding } from '../finding.ts';

/** A limit on a space that has a size of its own. */
export const limitWithoutEffect = defineFinding<{ readonly words: string; readonly size: string }>({
  code: 'limit-without-effect',
  severity: 'note',
  title: 'A limit without effect',
  headline: (facts) => `'${facts.size}' is fixed and keeps to '${facts.words}', so the limit changes nothing`,
  related: { size: () => 'the size is said here' },
  mends: { remove: (values) => `Take out '${values['words']}'` },
  help: `
\`at least\` and \`at most\` hold back a space that takes a share, the rest or as much as another. A space with a size of its
own does not move.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" front 9 high, at least 6
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
    drawer "blankets" rest, at least 6
    fronts thick 3/4
  }
}
\`\`\`
`,
});
