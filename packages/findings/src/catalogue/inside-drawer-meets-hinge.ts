import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const insideDrawerMeetsHinge = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly stands: Measure;
  readonly clear: Measure;
  readonly difference: Measure;
}>({
  code: 'inside-drawer-meets-hinge',
  severity: 'error',
  title: 'A drawer that comes out against a hinge',
  headline: (facts, say) =>
    `the hinge ${say.name(facts.hinge)} stands ${say.length(facts.stands)} into the opening at the height of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)}, which keeps ` +
    `only ${say.length(facts.clear)} clear of that end: ${say.length(facts.difference)} in its way`,
  brief: (facts, say) => `${say.length(facts.difference)} of a hinge in the way`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    drawer: (values, say) => `${subject(values, say)} comes out there`,
  },
  mends: {
    clear: ({ size }, say) => `Keep the drawers ${say.length(size as Measure)} clear there, on packers`,
  },
  help: `
The arm and the plate of a concealed hinge stand out from the side of the case, behind the door, where a drawer in there
has to pass. Keep the drawers clear of that end, on packers that bring their slides out, or move the hinges to a height at
which no drawer is ('from ends').

\`\`\`fettle wrong
hinge "butt" concealed, cup 35mm wide, cup 12mm deep, gap and cup distance 1/4 together, opens 165 degrees, open door 0 into opening, stands 1 into opening, plate 37mm from front
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
hinge "butt" concealed, cup 35mm wide, cup 12mm deep, gap and cup distance 1/4 together, opens 165 degrees, open door 0 into opening, stands 1 into opening, plate 37mm from front
piece "pantry" {
  size 24 wide, 34 high, 18 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    door "pantry" hinged left {
      hinges "butt"
      inside, 1 clear at left { drawer "tins"   drawer "jars"  }
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   clear 1/8 below }
  }
}
\`\`\`
`,
});
