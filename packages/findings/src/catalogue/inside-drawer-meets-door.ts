import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const insideDrawerMeetsDoor = defineFinding<{
  readonly name?: string;
  readonly words: string;
  /** The leaf that stands in the way. */
  readonly door: string;
  /** In degrees. */
  readonly angle: string;
  readonly isAssumed: boolean;
  readonly stands: Measure;
  readonly clear: Measure;
  readonly difference: Measure;
}>({
  code: 'inside-drawer-meets-door',
  severity: 'error',
  title: 'A drawer that comes out against its open door',
  headline: (facts, say) =>
    `open at ${facts.angle} degrees${facts.isAssumed ? ' (assumed: its hinges do not tell)' : ''} the ${facts.door} stands ` +
    `${say.length(facts.stands)} in its opening, and ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} behind it keeps only ${say.length(facts.clear)} clear of that end: ` +
    `it hits the door by ${say.length(facts.difference)}`,
  brief: (facts, say) => `${say.length(facts.difference)} of the open door in the way`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    drawer: (values, say) => `${subject(values, say)} comes out there`,
  },
  mends: {
    clear: ({ size }, say) => `Keep the drawers ${say.length(size as Measure)} clear there, on packers`,
  },
  help: `
A door turns on the front corner of the edge that it hangs on. Open at a right angle its whole thickness, and the gap
beside it, stand in its own opening; at a wider angle less of it, t sin a of its thickness t, and nothing at 180 degrees.
A drawer behind the door has to pass what stands there. Keep the drawers clear of that end, on packers that bring their
slides out, or choose hinges that open farther; the entry of a hinge in the shop file says how far ('opens 110 degrees'),
and may say what the data sheet tells of the open door ('open door 1/8 into opening').

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 9/16 wide, 5/32 closed, opens 95 degrees
piece "pantry" {
  size 24 wide, 34 high, 18 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    door "pantry" hinged left {
      hinges "butt"
      inside { drawer "tins"   drawer "jars"  }
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   clear 1/8 below }
  }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 9/16 wide, 5/32 closed, opens 95 degrees
piece "pantry" {
  size 24 wide, 34 high, 18 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    door "pantry" hinged left {
      hinges "butt"
      inside, 3/4 clear at left { drawer "tins"   drawer "jars"  }
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   clear 1/8 below }
  }
}
\`\`\`
`,
});
