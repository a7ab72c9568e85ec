import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** Two statements about the size of one space cannot both hold. */
export const limitsDisagree = defineFinding<{
  readonly name?: string;
  /** What it is called where it has no name. */
  readonly words: string;
  readonly clash: 'size-under-least' | 'size-over-most' | 'least-over-most';
  readonly axis: 'width' | 'height';
  /** The size it has, or the least that is asked for. */
  readonly size: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'limits-disagree',
  severity: 'error',
  title: 'A size and its limits disagree',
  headline: (facts, say) => {
    const who = subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say);
    const direction = facts.axis === 'width' ? 'wide' : 'high';
    const size = say.length(facts.size);
    const limit = say.length(facts.limit);
    const by = say.length(facts.difference);
    switch (facts.clash) {
      case 'size-under-least':
        return `${who} is ${size} ${direction}, it has to be at least ${limit}: ${by} too little`;
      case 'size-over-most':
        return `${who} is ${size} ${direction}, it may be at most ${limit}: ${by} too much`;
      case 'least-over-most':
        return `${who} has to be at least ${size} and at most ${limit} ${direction}: ${by} apart`;
      default: {
        const unknown: never = facts.clash;
        return String(unknown);
      }
    }
  },
  brief: (facts, say) =>
    `${say.length(facts.difference)} ` +
    { 'size-under-least': 'too little', 'size-over-most': 'too much', 'least-over-most': 'apart' }[facts.clash],
  related: { limit: (values, say) => `the limit of ${say.length(values['limit'] as Measure)} is set here` },
  mends: {
    'set-size': (values, say) => `Make ${subject(values, say)} ${say.length(values['size'] as Measure)}`,
    'move-limit': (values, say) => `Move the limit to ${say.length(values['size'] as Measure)}`,
  },
  help: `
A space may have a size and limits that its size must keep: at least so much, at most so much. Here two of these
statements exclude each other. The first of them was followed; change one of the two.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" front 9 high, at least 10
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" at least 10
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`
`,
});
