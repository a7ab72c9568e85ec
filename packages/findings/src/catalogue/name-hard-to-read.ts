import { defineFinding } from '../finding.ts';

/** A name with marks in it that are not seen. */
export const nameHardToRead = defineFinding<{
  /** The name as it would be without them. */
  readonly name: string;
  readonly why: 'blanks-at-ends' | 'direction' | 'unseen';
  /** The first unseen character, as U+202E. */
  readonly character: string;
}>({
  code: 'name-hard-to-read',
  severity: 'warning',
  title: 'A name that is not what it looks like',
  headline: (facts, say) => {
    switch (facts.why) {
      case 'blanks-at-ends':
        return `the name ${say.name(facts.name)} has blanks at its ends, which are not counted`;
      case 'direction':
        return `the name ${say.name(facts.name)} holds a mark that turns the direction of reading (${facts.character})`;
      case 'unseen':
        return `the name ${say.name(facts.name)} holds a mark that is not seen (${facts.character})`;
      default: {
        const unknown: never = facts.why;
        return String(unknown);
      }
    }
  },
  brief: () => 'a name hard to read',
  related: {},
  mends: { clean: (values, say) => `Write ${say.name(String(values['name']))} wherever it is said here` },
  help: `
Two names are the same when their letters are. Marks that are not seen make two names differ that look alike, or make a
name read differently from what it is.

\`\`\`fettle wrong
piece "shelf unit " {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
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
