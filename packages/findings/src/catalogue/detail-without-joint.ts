import { defineFinding } from '../finding.ts';

/** Words that tell of a joint which is not asked for. */
export const detailWithoutJoint = defineFinding<{
  readonly words: string;
  /** 'a dado' */
  readonly of: string;
}>({
  code: 'detail-without-joint',
  severity: 'warning',
  title: 'A detail of a joint that is not there',
  headline: (facts) => `${facts.words} tells of ${facts.of}, and none is asked for here, so it changes nothing`,
  brief: (facts) => `${facts.of} is not asked for`,
  related: {},
  mends: { remove: () => 'Leave it out' },
  help: `
How far a dado is stopped, how thick a tongue is and how far fasteners are apart are said beside the joint itself: \`in
dado 1/4 deep, stopped 3/8 from front\`, \`by dowels, 4 apart\`.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, stopped 3/8 from front
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado, stopped 3/8 from front
  }
}
\`\`\`
`,
});
