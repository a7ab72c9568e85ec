import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const pullRecessTooDeep = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly pull: string;
  readonly depth: Measure;
  readonly thickness: Measure;
  readonly left: Measure;
  readonly limit: Measure;
}>({
  code: 'pull-recess-too-deep',
  severity: 'error',
  title: 'A recess for a pull that comes through the front',
  headline: (facts, say) =>
    `${say.name(facts.pull)} is let in ${say.length(facts.depth)}, ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ${say.length(facts.thickness)} thick: ${say.length(facts.left)} of wood is left behind it, at least ${say.length(facts.limit)} is wanted`,
  brief: (facts, say) => `${say.length(facts.left)} behind the recess`,
  related: {
    pull: (values, say) => `${say.name(String(values['pull']))} is described here`,
    also: (values, say) => `${subject(values, say)} has it as well`,
  },
  mends: {},
  help: `
A pull that is let in lies in a recess of the front. What is left behind it has to stand the pull: 1/8" or 3 mm at least
(common practice, no source). Choose a shallower pull or a thicker front. A recess is cut with a template and a bit that
cannot reach deeper than the stop allows: try it in a scrap of the same thickness.

\`\`\`fettle wrong
pull "dish" 3 wide, 1-1/2 high, let in 11/16 deep
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { drawer "pens" { pulls "dish" }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
pull "dish" 3 wide, 1-1/2 high, let in 1/2 deep
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { drawer "pens" { pulls "dish" }   fronts thick 3/4 }
}
\`\`\`
`,
});
