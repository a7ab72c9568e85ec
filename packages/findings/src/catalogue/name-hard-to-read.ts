import { defineFinding } from '../finding.ts';

/** Marks that are not seen, as people call them. */
const called: Readonly<Record<string, string>> = {
  'U+0009': 'a tab',
  'U+00AD': 'a soft hyphen',
  'U+061C': 'an Arabic letter mark',
  'U+200B': 'a blank without width',
  'U+200E': 'a left-to-right mark',
  'U+200F': 'a right-to-left mark',
  'U+202A': 'a left-to-right embedding',
  'U+202B': 'a right-to-left embedding',
  'U+202C': 'the end of a direction',
  'U+202D': 'a left-to-right override',
  'U+202E': 'a right-to-left override',
  'U+2060': 'a word joiner',
  'U+2066': 'a left-to-right isolate',
  'U+2067': 'a right-to-left isolate',
  'U+2068': 'a first-strong isolate',
  'U+2069': 'the end of an isolate',
  'U+FEFF': 'a byte order mark',
};

function markWords(character: string): string {
  const words = called[character];
  return words === undefined ? character : `${words}, ${character}`;
}

/** A name with marks in it that are not seen, or longer than anyone reads. */
export const nameHardToRead = defineFinding<{
  /** The name as it would be without them. */
  readonly name: string;
  readonly why: 'blanks-at-ends' | 'direction' | 'unseen' | 'long';
  /** The first unseen character, as U+202E. */
  readonly character: string;
  /** How many letters a name has that is too long. */
  readonly letters?: number;
}>({
  code: 'name-hard-to-read',
  severity: 'warning',
  title: 'A name that is not what it looks like',
  headline: (facts, say) => {
    switch (facts.why) {
      case 'blanks-at-ends':
        return `the name ${say.name(facts.name)} has blanks at its ends, which are not counted`;
      case 'direction':
        return `the name ${say.name(facts.name)} holds a mark that turns the direction of reading (${markWords(facts.character)})`;
      case 'unseen':
        return `the name ${say.name(facts.name)} holds a mark that is not seen (${markWords(facts.character)})`;
      case 'long':
        return `the name ${say.name(facts.name)} has ${facts.letters ?? 0} letters; drawings and lists show only its beginning`;
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
