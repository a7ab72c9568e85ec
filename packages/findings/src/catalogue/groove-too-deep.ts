import { defineFinding, type Measure } from '../finding.ts';

/** A groove or a rabbet takes more than half of the wood it is cut in, or all of it. */
export const grooveTooDeep = defineFinding<{
  readonly hold: 'groove' | 'rabbet';
  readonly depth: Measure;
  /** The thinnest part it is cut in, in the maker's words. */
  readonly part: string;
  readonly thickness: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
  /** Nothing is left of the part. */
  readonly through: boolean;
}>({
  code: 'groove-too-deep',
  severity: 'warning',
  title: 'A groove that is too deep',
  headline: (facts, say) =>
    facts.through
      ? `a ${facts.hold} ${say.length(facts.depth)} deep goes right through the ${facts.part}, ` +
        `${say.length(facts.thickness)} thick`
      : `the ${facts.hold} is ${say.length(facts.depth)} deep, half of the ${facts.part} is ${say.length(facts.limit)}: ` +
        `${say.length(facts.difference)} too deep`,
  brief: (facts, say) =>
    facts.through ? `a ${facts.hold} right through` : `${facts.hold} ${say.length(facts.difference)} too deep`,
  related: {
    part: (values, say) => `the ${String(values['part'])}, ${say.length(values['thickness'] as Measure)} thick`,
  },
  mends: { shallower: (values, say) => `Make it ${say.length(values['size'] as Measure)} deep` },
  help: `
A groove is about a third as deep as the wood is thick, and never deeper than half of it (textbooks of joinery, from
memory): what is left has to hold. The same goes for a rabbet that a back lies in.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    back thick 1/4 in groove 1/2 deep, 1/2 in from back edge
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    back thick 1/4 in groove 1/4 deep, 1/2 in from back edge
  }
}
\`\`\`
`,
});
