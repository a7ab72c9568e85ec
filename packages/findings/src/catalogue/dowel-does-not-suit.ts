import { defineFinding, type Measure } from '../finding.ts';

/** A dowel is too thin or too thick for the wood it is in. */
export const dowelDoesNotSuit = defineFinding<{
  readonly part: string;
  readonly dowel: Measure;
  readonly thickness: Measure;
  readonly least: Measure;
  readonly most: Measure;
}>({
  code: 'dowel-does-not-suit',
  severity: 'warning',
  title: 'A dowel that does not suit its stock',
  headline: (facts, say) =>
    `a dowel of ${say.length(facts.dowel)} in the ${facts.part}, ${say.length(facts.thickness)} thick: from ` +
    `${say.length(facts.least)} to ${say.length(facts.most)} suits it`,
  brief: (facts, say) => `${say.length(facts.least)} to ${say.length(facts.most)} suits it`,
  related: {},
  mends: {},
  help: `
A dowel is from a third to half as thick as the wood whose end it lies in (from memory): thinner it shears, thicker it
splits the end.

\`\`\`fettle wrong
dowel "pin" 1/8 thick, 1 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, by dowels "pin"
  }
}
\`\`\`

\`\`\`fettle right
dowel "pin" 3/8 thick, 1-1/2 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, by dowels "pin"
  }
}
\`\`\`
`,
});
