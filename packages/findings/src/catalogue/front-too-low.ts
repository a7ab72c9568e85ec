import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const frontTooLow = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly height: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'front-too-low',
  severity: 'warning',
  title: 'A front too low for a box or a pull',
  headline: (facts, say) =>
    `the front of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ` +
    `${say.length(facts.height)} high, under ${say.length(facts.limit)} there is hardly room for a box or a pull: ` +
    `${say.length(facts.difference)} too low`,
  brief: (facts, say) => `front ${say.length(facts.difference)} too low`,
  related: { also: (values, say) => `the front of ${subject(values, say)} is too low as well` },
  mends: { raise: (values, say) => `Make the front ${say.length(values['size'] as Measure)} high` },
  help: `
Behind a drawer front stands a box that is lower by what is free under and over it, and on the front there has to be
room for a pull. Under about 2" (common practice, no source) neither finds room.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 12 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "top" front 1-1/2 high
    drawer "low" rest
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 12 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "top" front 2-1/2 high
    drawer "low" rest
    fronts thick 3/4
  }
}
\`\`\`
`,
});
