import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const cleatsTooHigh = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly height: Measure;
  readonly room: Measure;
  readonly difference: Measure;
}>({
  code: 'cleats-too-high',
  severity: 'error',
  title: 'Cleats higher than what is under their shelf',
  headline: (facts, say) => {
    const who = subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say);
    return `cleats ${say.length(facts.height)} high stand in the ${say.length(facts.room)} under a shelf of ${who}: ${say.length(facts.difference)} too high`;
  },
  brief: ({ difference }, say) => `${say.length(difference)} too high`,
  related: {},
  mends: { height: (values, say) => `Make them ${say.length(values['size'] as Measure)} high` },
  help: `
A cleat hangs under its shelf and ends above what lies below. 1" or 25 mm is high enough for its screws (common practice, no
source).

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset { open "books" { shelves 2 on cleats { cleats thick 1/2, 20 high } } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset { open "books" { shelves 2 on cleats { cleats thick 1/2, 1 high } } }
}
\`\`\`
`,
});
