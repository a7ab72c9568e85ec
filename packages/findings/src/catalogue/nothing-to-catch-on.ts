import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

export const nothingToCatchOn = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly what: 'catch' | 'stop';
  readonly where: 'over' | 'under';
}>({
  code: 'nothing-to-catch-on',
  severity: 'error',
  title: 'A catch or a stop with nothing to hold it',
  headline: (facts, say) =>
    `there is no wood ${facts.where} ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)}, behind it, for its ${facts.what} to be fastened to`,
  brief: (facts) => `no wood for the ${facts.what}`,
  related: {},
  mends: {
    top: () => 'Put it at the top',
    bottom: () => 'Put it at the bottom',
  },
  help: `
A catch and a stop are fastened behind the door to what is over or under its opening, near the closing edge. Between two
openings with nothing between them there is nothing to fasten them to; in a stack, a divider does.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 3/32 { stack { doors "linen" rest { catch magnet, at bottom }   drawer "sheets" front 7 high }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 3/32 { stack { doors "linen" rest { catch magnet, at top }   drawer "sheets" front 7 high }   fronts thick 3/4 }
}
\`\`\`
`,
});
