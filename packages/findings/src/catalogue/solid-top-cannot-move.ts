import { defineFinding, type Measure } from '../finding.ts';

/** A solid top is held fast all round by a case that does not move with it. */
export const solidTopCannotMove = defineFinding<{
  readonly why: 'glued' | 'dado';
  /** Across its grain. */
  readonly width: Measure;
}>({
  code: 'solid-top-cannot-move',
  severity: 'warning',
  title: 'A solid top that cannot move',
  headline: (facts, say) =>
    `the top is solid wood ${say.length(facts.width)} wide and is ` +
    `${facts.why === 'glued' ? 'glued down' : 'held in dadoes'} on a case that does not move with it: it splits or bows`,
  brief: (facts) => (facts.why === 'glued' ? 'a solid top glued down' : 'a solid top in dadoes'),
  related: {
    case: () => 'the sides do not move: they are of sheet, or of frame and panel',
    join: () => 'the joint that holds it',
  },
  mends: { slotted: () => 'Screw it through slots: fixed in front, free behind' },
  help: `
A wide solid top swells and shrinks from front to back. Sides of sheet and sides of frame and panel do not, so a top on
them is screwed through slots: fixed along one edge, free along the other. Solid sides with their grain upright move
together with a solid top and may hold it in any way (common practice, no source).

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    top "cherry" thick 3/4, over sides { glued down }
    sides "ply"
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    top "cherry" thick 3/4, over sides { slotted behind }
    sides "ply"
  }
}
\`\`\`
`,
});
