import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const openDoorsMeet = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly other: string;
  readonly otherIsNamed: boolean;
  readonly standsOut: Measure;
  readonly between: Measure;
  readonly difference: Measure;
}>({
  code: 'open-doors-meet',
  severity: 'warning',
  title: 'Two doors that meet when both stand open',
  headline: (facts, say) =>
    `open side by side, ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} and ${facts.otherIsNamed ? say.name(facts.other) : facts.other} are ${say.length(facts.between)} apart and what stands out between them is ${say.length(facts.standsOut)}: ` +
    `their pulls meet ${say.length(facts.difference)} before both are fully open`,
  brief: (facts, say) => `pulls meet, ${say.length(facts.difference)} too much`,
  related: {
    other: (values, say) => `${subject(values, say)} opens against it`,
  },
  mends: {},
  help: `
Two doors that hang on the same upright stand back to back when both are open at a right angle, as far apart as their hinge
edges are. What their pulls stand out has to find room there, unless they are at different heights. Put the pulls at
different heights, choose flatter ones, or hang one of the doors on its other edge.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
pull "knob" 1 wide, round, stands out 1
piece "box" {
  size 40 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { row { door "pans" hinged right { hinges "butt"   pulls "knob" }   partition thick 3/4, shown   door "pots" hinged left { hinges "butt"   pulls "knob" } }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
pull "knob" 1 wide, round, stands out 3/8
piece "box" {
  size 40 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { row { door "pans" hinged right { hinges "butt"   pulls "knob" }   partition thick 3/4, shown   door "pots" hinged left { hinges "butt"   pulls "knob" } }   fronts thick 3/4 }
}
\`\`\`
`,
});
