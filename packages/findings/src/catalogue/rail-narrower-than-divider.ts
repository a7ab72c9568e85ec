import { defineFinding, type Measure } from '../finding.ts';

/** A rail behind a divider is narrower than the divider, whose end then meets the panel. */
export const railNarrowerThanDivider = defineFinding<{
  readonly rail: Measure;
  readonly divider: Measure;
}>({
  code: 'rail-narrower-than-divider',
  severity: 'warning',
  title: 'A rail narrower than its divider',
  headline: (facts, say) =>
    `the middle rails are ${say.length(facts.rail)} wide, the divider before them is ${say.length(facts.divider)} thick: ` +
    `its end finds no wood beyond the rail`,
  brief: (facts, say) => `rail ${say.length(facts.rail)}, divider ${say.length(facts.divider)}`,
  related: { divider: (values, say) => `the divider, ${say.length(values['divider'] as Measure)} thick` },
  mends: { widen: (values, say) => `Make them ${say.length(values['size'] as Measure)} wide` },
  help: `
Middle rails of a framed side stand where dividers meet it, so that each divider ends against solid wood. A rail
narrower than the divider leaves part of that end before the panel, which moves and holds nothing.

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 30 high, 12 deep
  case {
    sides "cherry" thick 3/4, frame-and-panel { middle-rails 7/8 wide, at dividers }
    bottom "cherry" thick 3/4, between sides
  }
  face inset {
    stack {
      open "bowls" rest
      divider panel "cherry" thick 1, shown
      open "plates" opening 12 high
    }
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 30 high, 12 deep
  case {
    sides "cherry" thick 3/4, frame-and-panel { middle-rails 2 wide, at dividers }
    bottom "cherry" thick 3/4, between sides
  }
  face inset {
    stack {
      open "bowls" rest
      divider panel "cherry" thick 3/4, shown
      open "plates" opening 12 high
    }
  }
}
\`\`\`
`,
});
