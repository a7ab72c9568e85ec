import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** So many shelves that nothing, or hardly anything, is left between them. */
export const shelvesFillOpening = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly count: number;
  readonly thickness: Measure;
  readonly opening: Measure;
  /** The clear height between two of them; zero or less when they do not even fit. */
  readonly clear: Measure;
  readonly fits: boolean;
  readonly limit: Measure;
}>({
  code: 'shelves-fill-opening',
  severity: 'warning',
  title: 'Shelves that leave no room between them',
  headline: (facts, say) => {
    const [shelves, leave, where] =
      facts.count === 1 ? ['shelf', 'leaves', 'over or under it'] : ['shelves', 'leave', 'between them'];
    const said = `${facts.count} ${shelves} of ${say.length(facts.thickness)} in an opening of ${say.length(facts.opening)} ${leave}`;
    return facts.fits
      ? `${said} ${say.length(facts.clear)} ${where}: less than ${say.length(facts.limit)} holds nothing`
      : `${said} nothing ${where}`;
  },
  brief: (facts, say) => (facts.fits ? `${say.length(facts.clear)} between shelves` : 'no room between shelves'),
  related: {
    opening: (values, say) =>
      `the opening of ${subject(values, say)} is ${say.length(values['opening'] as Measure)} high`,
  },
  mends: {
    fewer: (values, say) =>
      `Make it ${String(values['count'])} ${values['count'] === 1 ? 'shelf' : 'shelves'}, ${say.length(values['clear'] as Measure)} clear`,
  },
  help: `
Shelves are spread evenly over the height of their opening. What is left between them is the height of the opening less
all their thicknesses, divided by one more than there are shelves. Under 1" (common practice, no source) it holds
nothing.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 10 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "paper" { shelves 6 fixed } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 10 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "paper" { shelves 3 fixed } }
}
\`\`\`
`,
});
