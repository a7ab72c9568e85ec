import { defineFinding, type Measure } from '../finding.ts';

/** A tongue is as thick as the part it is cut on, or thicker. */
export const tongueTooThick = defineFinding<{
  readonly part: string;
  readonly tongue: Measure;
  readonly thickness: Measure;
}>({
  code: 'tongue-too-thick',
  severity: 'error',
  title: 'A tongue without shoulders',
  headline: (facts, say) =>
    `a tongue ${say.length(facts.tongue)} thick on the ${facts.part}, which is ${say.length(facts.thickness)} thick, has ` +
    'no shoulders',
  brief: () => 'a tongue without shoulders',
  related: {},
  mends: { third: (values, say) => `Make the tongue ${say.length(values['size'] as Measure)} thick` },
  help: `
A tongue is what shoulders leave of the thickness: about a third of it. Where the whole thickness goes in, leave the tongue
out.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/4 deep, tongue 3/4 thick
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/4 deep, tongue 1/4 thick
  }
}
\`\`\`
`,
});
