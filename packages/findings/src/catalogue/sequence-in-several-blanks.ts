import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

interface Front {
  readonly [key: string]: string;
  readonly words: string;
}

/** Between two fronts of a sequence the grain does not run on: they cannot come from one blank. */
export const sequenceInSeveralBlanks = defineFinding<{
  readonly sequence: string;
  readonly before: Front;
  readonly after: Front;
  readonly why: 'other stock' | 'other thickness' | 'turns';
}>({
  code: 'sequence-in-several-blanks',
  severity: 'warning',
  title: 'A sequence that goes on in another blank',
  headline: (facts, say) =>
    `between ${subject(facts.before, say)} and ${subject(facts.after, say)} of ${facts.sequence} the grain does not run on: ` +
    reasons[facts.why],
  brief: (facts) => reasons[facts.why],
  related: { before: (values, say) => `${subject(values, say)} comes before it` },
  mends: { 'leave-out': (values, say) => `Leave ${subject(values, say)} out of the sequence` },
  help: `
Fronts of a sequence are cut from one blank, one behind the other or side by side. That takes fronts of one stock and one
thickness which stand in one line: in a row they reach equally high, in a stack equally far to both sides. Where the line
turns from a row into a stack, a new blank begins, and the grain does not run on.

Name only fronts of one row or of one stack in a sequence, and begin another one for the next.

\`\`\`fettle wrong
sheet "oak ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 30 wide, 28 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    row {
      stack share 1 { drawer "upper" share 1   drawer "lower" share 1 }
      door "side" share 1, hinged right
    }
    fronts "oak ply" thick 3/4
  }
  sequence "fronts" { "upper", "lower", "side" }
}
\`\`\`

\`\`\`fettle right
sheet "oak ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 30 wide, 28 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    row {
      stack share 1 { drawer "upper" share 1   drawer "lower" share 1 }
      door "side" share 1, hinged right
    }
    fronts "oak ply" thick 3/4
  }
  sequence "fronts" { "upper", "lower" }
}
\`\`\`
`,
});

const reasons = {
  'other stock': 'they are of different stock',
  'other thickness': 'they are of different thickness',
  turns: 'they do not stand in one line',
} as const;
