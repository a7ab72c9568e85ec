import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

/** What a sequence names and cannot be cut from its blank. */
export const cannotFollowInSequence = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly why: 'not a front' | 'framed' | 'no grain' | 'in order already';
}>({
  code: 'cannot-follow-in-sequence',
  severity: 'warning',
  title: 'No place in a sequence',
  headline: (facts, say) => `${subject(facts, say)} cannot be cut in order with others: ${reasons[facts.why]}`,
  brief: (facts) => reasons[facts.why],
  related: { first: (values, say) => `${subject(values, say)} has its place here` },
  mends: { remove: (values, say) => `Leave ${subject(values, say)} out` },
  help: `
A sequence names fronts that are cut from one blank in their order, so that the grain runs on from one to the next. An open
space has no front, a door of frame and panel is not cut from one piece, and stock without grain has nothing that runs on.
A front comes once: it is cut from one place only.

\`\`\`fettle wrong
sheet "oak ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 30 wide, 26 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    stack { drawer "upper" share 1   drawer "lower" share 1   open "books" share 1 }
    fronts "oak ply" thick 3/4
  }
  sequence "fronts" { "upper", "lower", "books" }
}
\`\`\`

\`\`\`fettle right
sheet "oak ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 30 wide, 26 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    stack { drawer "upper" share 1   drawer "lower" share 1   open "books" share 1 }
    fronts "oak ply" thick 3/4
  }
  sequence "fronts" { "upper", "lower" }
}
\`\`\`
`,
});

const reasons = {
  'not a front': 'it has no front',
  framed: 'it is a frame with a panel',
  'no grain': 'its stock has no grain that could run on',
  'in order already': 'it has its place in a sequence already',
} as const;
