import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** A size asked of the fronts of a row or stack that one of them cannot have, because it sits otherwise at its edges. */
export const frontSizeNotMet = defineFinding<{
  readonly name?: string;
  /** Where it has no name. */
  readonly words: string;
  readonly axis: 'wide' | 'high';
  readonly asked: Measure;
  readonly front: Measure;
  readonly difference: Measure;
}>({
  code: 'front-size-not-met',
  severity: 'warning',
  title: 'A front that is not as large as is asked for',
  headline: (facts, say) =>
    `fronts ${say.length(facts.asked)} ${facts.axis} are asked for, the front of ${subject(facts, say)} is ` +
    `${say.length(facts.front)}: it sits otherwise at its edges and differs by ${say.length(facts.difference)}`,
  brief: (facts, say) => `a front ${say.length(facts.front)}, not ${say.length(facts.asked)}`,
  related: { front: (values, say) => `${subject(values, say)} stands here` },
  mends: {
    'ask-opening': (values, say) =>
      `Ask for an opening ${say.length(values['opening'] as Measure)} ${String(values['axis'])}, as it comes out now`,
  },
  help: `
All fronts of a row stand in openings of one height. Where one of them is inset and another laps the edges they cannot
be equally high as well: the height that is asked for is given to as many of them as can have it. Ask for the height of
the opening instead, or let them all sit in the same way.

\`\`\`fettle wrong
piece "hall" {
  size 16 wide, 20 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 3/32 {
    row front 8 high {
      door "gloves"
      partition thick 3/4
      door "hats" overlay full
    }
    divider thick 3/4
    open "shoes" rest
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "hall" {
  size 16 wide, 20 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 3/32 {
    row front 8 high {
      door "gloves"
      partition thick 3/4
      door "hats"
    }
    divider thick 3/4
    open "shoes" rest
    fronts thick 3/4
  }
}
\`\`\`
`,
});
