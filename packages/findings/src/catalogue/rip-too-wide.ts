import { defineFinding, type Measure } from '../finding.ts';

/** A panel that no saw of the shop rips. */
export const ripTooWide = defineFinding<{
  readonly part: string;
  readonly size: Measure;
  /** What lies on the far side of the blade when the part is cut off the whole sheet, where the sheet is known. */
  readonly offcut?: Measure;
  readonly machine: string;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'rip-too-wide',
  severity: 'warning',
  title: 'A panel too wide to rip',
  headline: (facts, say) =>
    `the ${facts.part} is ${say.length(facts.size)} wide` +
    (facts.offcut === undefined ? '' : ` and leaves ${say.length(facts.offcut)} of its sheet`) +
    `, ${say.name(facts.machine)} rips at most ${say.length(facts.limit)}: ${say.length(facts.difference)} too wide`,
  brief: (facts, say) => `panel ${say.length(facts.difference)} too wide to rip`,
  related: {
    machine: (values, say) => `${say.name(String(values['machine']))} is described here`,
    also: (values) => `the ${String(values['part'])} is too wide as well`,
  },
  mends: {},
  help: `
The fence of a saw stands at most so far from its blade. A part of a sheet may lie on either side of the blade, so it
is too wide only when both the part and what is left of the sheet are wider than that.

Break the sheet down with a hand-held saw and a guide first, or write down the machine that can do it.

\`\`\`fettle wrong
sheet "ash panel" nominal 3/4, actual 3/4, 96 long, 60 wide
machine "bench saw" rips at most 24 wide
piece "box" {
  size 40 wide, 20 high, 30 deep
  case { sides "ash panel" }
}
\`\`\`

\`\`\`fettle right
sheet "ash panel" nominal 3/4, actual 3/4, 96 long, 48 wide
machine "bench saw" rips at most 24 wide
piece "box" {
  size 40 wide, 20 high, 30 deep
  case { sides "ash panel" }
}
\`\`\`
`,
});
