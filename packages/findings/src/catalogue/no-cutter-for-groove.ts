import { defineFinding, type Measure } from '../finding.ts';

/** None of the shop's cutters cuts a groove in one pass. */
export const noCutterForGroove = defineFinding<{
  /** What stands in the groove. */
  readonly panel: string;
  readonly width: Measure;
  readonly depth: Measure;
  readonly why: 'too-wide' | 'too-shallow' | 'in-passes';
  /** The cutter that comes nearest, and its figure. */
  readonly cutter: string;
  readonly cuts: Measure;
}>({
  code: 'no-cutter-for-groove',
  severity: 'warning',
  title: 'No cutter of the shop cuts this groove',
  headline: (facts, say) => {
    const groove = `the groove for the ${facts.panel} is ${say.length(facts.width)} wide`;
    const cutter = say.name(facts.cutter);
    switch (facts.why) {
      case 'too-wide':
        return `${groove}, and no cutter is that narrow: ${cutter} cuts ${say.length(facts.cuts)}`;
      case 'too-shallow':
        return (
          `${groove} and ${say.length(facts.depth)} deep, and no cutter of that width goes so deep: ${cutter} ` +
          `goes ${say.length(facts.cuts)} deep`
        );
      case 'in-passes':
        return (
          `${groove}, and no cutter is: ${cutter} cuts ${say.length(facts.cuts)}, so the groove is widened in ` +
          'a second pass'
        );
      default: {
        const unknown: never = facts.why;
        return String(unknown);
      }
    }
  },
  brief: (facts, say) => `no cutter for a groove of ${say.length(facts.width)}`,
  related: { cutter: (values, say) => `${say.name(String(values['cutter']))} is described here` },
  mends: {},
  help: `
The shop file lists the cutters there are. A groove that is exactly as wide as one of them, or within the widths to
which one can be set, is cut in one pass and fits. A narrower cutter makes it in two passes, which takes a trial cut. A
cutter that is wider makes the panel rattle.

A cutter may be up to 1/64" wider than the panel (common practice, no source).

\`\`\`fettle wrong
cutter "1/2 bit" cuts 1/2 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    back thick 1/4 in groove 1/4 deep, 1/2 in from back edge
  }
}
\`\`\`

\`\`\`fettle right
cutter "1/4 bit" cuts 1/4 wide
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
