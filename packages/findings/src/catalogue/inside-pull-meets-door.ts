import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const insidePullMeetsDoor = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly door: string;
  readonly doorIsNamed: boolean;
  readonly pull: string;
  readonly standsOut: Measure;
  readonly room: Measure;
  readonly difference: Measure;
}>({
  code: 'inside-pull-meets-door',
  severity: 'error',
  title: 'A door that cannot close over a pull behind it',
  headline: (facts, say) =>
    `the pull ${say.name(facts.pull)} on ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} stands out ${say.length(facts.standsOut)}, and the back of the closed door ` +
    `${facts.doorIsNamed ? say.name(facts.door) : `(${facts.door})`} is only ${say.length(facts.room)} before that front: ` +
    `${say.length(facts.difference)} too little`,
  brief: (facts, say) => `${say.length(facts.difference)} too little before a pull`,
  related: {
    pull: (values, say) => `${say.name(String(values['pull']))} is described here`,
    drawer: (values, say) => `the pull of ${subject(values, say)}`,
  },
  mends: {
    behind: ({ size }, say) => `Set what is inside ${say.length(size as Measure)} behind the door`,
  },
  help: `
Fronts behind a door need room for their own pulls between them and the back of the closed door. Set them farther back
('1 behind door'), which makes the boxes shorter, or choose a flat pull, one that is let in, or a finger hole.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 9/16 wide, 5/32 closed, opens 180 degrees
pull "knob" 1 wide, round, stands out 7/8
piece "pantry" {
  size 24 wide, 34 high, 18 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    door "pantry" hinged left {
      hinges "butt"
      inside { drawer "tins"   drawer "jars" { pulls "knob" } }
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   clear 1/8 below }
  }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 9/16 wide, 5/32 closed, opens 180 degrees
pull "knob" 1 wide, round, stands out 7/8
piece "pantry" {
  size 24 wide, 34 high, 18 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    door "pantry" hinged left {
      hinges "butt"
      inside, 7/8 behind door { drawer "tins"   drawer "jars" { pulls "knob" } }
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   clear 1/8 below }
  }
}
\`\`\`
`,
});
