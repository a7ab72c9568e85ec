import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const pullOffStile = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly pull: string;
  /** What the frame holds there. */
  readonly on: 'panel' | 'pane';
  readonly thickness: Measure;
  /** Whether some of it is on the frame all the same. */
  readonly reach: 'whole' | 'part';
}>({
  code: 'pull-off-stile',
  severity: 'warning',
  title: 'A pull beside the stile of its door',
  headline: (facts, say) => {
    const who = subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say);
    const what = facts.on === 'pane' ? 'the glass' : 'the panel';
    const how = facts.reach === 'part' ? 'partly on the frame and partly on' : 'on';
    return `${say.name(facts.pull)} sits ${how} ${what} of ${who}, ${say.length(facts.thickness)} thick: a pull is fastened to the frame`;
  },
  brief: ({ on }) => (on === 'pane' ? 'on the glass' : 'on the panel'),
  related: {
    also: (values, say) => `${subject(values, say)} has it as well`,
  },
  mends: {
    stile: (values, say) =>
      `Put it ${say.length(values['size'] as Measure)} from the closing edge, in the middle of the stile`,
  },
  help: `
The frame of a door is thicker than its panel and stands before it. A pull that is screwed to a thin panel works loose,
one that is half on either does not lie flat, and glass takes no screws. Pulls sit on a stile; where nothing is said they
stand upright in the middle of it.

\`\`\`fettle wrong
pull "knob" 1 wide, round
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 {
    door "press" hinged left { pulls "knob", 4 from closing edge }
    fronts thick 3/4, frame-and-panel { stiles 2 wide   top-rail 2 wide   bottom-rail 3 wide   panel thick 1/4, in groove 3/8 deep }
  }
}
\`\`\`

\`\`\`fettle right
pull "knob" 1 wide, round
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 {
    door "press" hinged left { pulls "knob", 1 from closing edge }
    fronts thick 3/4, frame-and-panel { stiles 2 wide   top-rail 2 wide   bottom-rail 3 wide   panel thick 1/4, in groove 3/8 deep }
  }
}
\`\`\`
`,
});
