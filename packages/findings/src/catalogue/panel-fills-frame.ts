import { defineFinding, type Measure } from '../finding.ts';

/** The groove for a panel takes more than half of the thickness of its frame. */
export const panelFillsFrame = defineFinding<{
  readonly frame: string;
  readonly panel: Measure;
  readonly thickness: Measure;
  readonly limit: Measure;
  /** Nothing is left of the frame beside the groove. */
  readonly through: boolean;
}>({
  code: 'panel-fills-frame',
  severity: 'warning',
  title: 'A panel too thick for its frame',
  headline: (facts, say) =>
    facts.through
      ? `a panel ${say.length(facts.panel)} thick leaves nothing of the ${facts.frame}, ${say.length(facts.thickness)} thick, beside its groove`
      : `the panel is ${say.length(facts.panel)} thick, half of the ${facts.frame} is ${say.length(facts.limit)}`,
  brief: (facts, say) => `panel ${say.length(facts.panel)}, half of the frame ${say.length(facts.limit)}`,
  related: {},
  mends: { thinner: (values, say) => `Make it ${say.length(values['size'] as Measure)} thick` },
  help: `
A panel lies in a groove in the middle of its frame, and the stub tenons of the rails are as thick as that groove. A
groove wider than half of the frame leaves cheeks that break (a third is the rule of textbooks, from memory).

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "cherry" thick 3/4 {
      panel "cherry" thick 1/2, in groove 3/8 deep, float 1/16 each side
    }
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "cherry" thick 3/4 {
      panel "cherry" thick 3/8, in groove 3/8 deep, float 1/16 each side
    }
  }
}
\`\`\`
`,
});
