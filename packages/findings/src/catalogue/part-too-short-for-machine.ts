import { defineFinding, type Measure } from '../finding.ts';

/** A part that is not safe on a machine by itself. */
export const partTooShortForMachine = defineFinding<{
  readonly part: string;
  readonly size: Measure;
  readonly machine: string;
  readonly limit: Measure;
}>({
  code: 'part-too-short-for-machine',
  severity: 'warning',
  title: 'A part too short to be machined by itself',
  headline: (facts, say) =>
    `the ${facts.part} is ${say.length(facts.size)} long, ${say.name(facts.machine)} takes no piece under ` +
    `${say.length(facts.limit)}: cut it last, from a blank at least that long`,
  brief: (facts, say) => `a part ${say.length(facts.size)} long`,
  related: {
    machine: (values, say) => `${say.name(String(values['machine']))} is described here`,
    also: (values) => `the ${String(values['part'])} is too short as well`,
  },
  mends: {},
  help: `
Short pieces are not safe on a machine: they tip, and they bring the hands near the cutter. The shop file says how long
a piece has to be. Parts that are shorter are worked while they are still part of a long blank, several in a row, and
cut off last.

The limit is the machine's own: read its handbook. That nothing is reported here does not make a cut safe.

\`\`\`fettle wrong
machine "planer" least length 12
piece "box" {
  size 24 wide, 10 high, 9 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
machine "planer" least length 12
piece "box" {
  size 24 wide, 14 high, 9 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
