import { defineFinding, type Measure } from '../finding.ts';

/** A solid panel is held fast in its frame: it splits or opens the frame when the air changes. */
export const solidPanelCannotMove = defineFinding<{
  /** 'panel of the sides' */
  readonly panel: string;
  readonly why: 'glued' | 'no-float';
  /** Across its grain. */
  readonly width: Measure;
}>({
  code: 'solid-panel-cannot-move',
  severity: 'warning',
  title: 'A solid panel that cannot move',
  headline: (facts, say) =>
    facts.why === 'glued'
      ? `the ${facts.panel} is solid wood ${say.length(facts.width)} wide and is glued in: it splits as it shrinks`
      : `the ${facts.panel} is solid wood ${say.length(facts.width)} wide and has no float: it opens its frame as it swells`,
  brief: (facts) => (facts.why === 'glued' ? 'a solid panel glued in' : 'a solid panel without float'),
  related: {},
  mends: {
    remove: () => 'Leave it loose in its grooves',
    float: (values, say) => `Give it ${say.length(values['size'] as Measure)} at each edge`,
  },
  help: `
Solid wood swells and shrinks across its grain with the air of the room. A solid panel therefore lies loose in its
grooves, a little smaller than they are, and is never glued (common practice; how much wood moves is in the Wood
Handbook, FPL-GTR-190, ch. 13). A sheet hardly moves: it may be glued in and only needs to go in.

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "cherry" thick 3/4 {
      panel "cherry" thick 3/8, in groove 3/8 deep, glued in
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
