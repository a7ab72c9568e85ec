import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

export const hingeReachAssumed = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  /** What its entry does not say. */
  readonly missing: readonly ('stands' | 'opens')[];
}>({
  code: 'hinge-reach-assumed',
  severity: 'note',
  title: 'Hinges of which nobody says how far they reach into the opening',
  headline: (facts, say) =>
    `there are drawers behind ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)}, and the entry of ${say.name(facts.hinge)} does not say ` +
    facts.missing.map((each) => untold[each]).join(', nor '),
  brief: (facts) => (facts.missing.includes('stands') ? 'hinge arms not checked' : 'opening angle assumed'),
  related: { hinge: (values, say) => `${say.name(String(values['hinge']))} is described here` },
  mends: {},
  help: `
The arm and the plate of a concealed hinge stand out from the side of the case, and a door that opens no farther than a
right angle stands in its own opening. A drawer behind the door has to come out past both. How far they reach stands in the
data sheet of the hinge: say it in its entry, then it is checked.

\`\`\`fettle wrong
hinge "cup" concealed, cup 35mm wide, cup 12mm deep, gap and cup distance 1/4 together, plate 37mm from front
piece "pantry" {
  size 24 wide, 34 high, 18 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    door "pantry" hinged left {
      hinges "cup"
      inside, 1 clear at left { drawer "tins"   drawer "jars" }
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   clear 1/8 below }
  }
}
\`\`\`

\`\`\`fettle right
hinge "cup" concealed, cup 35mm wide, cup 12mm deep, gap and cup distance 1/4 together, plate 37mm from front, opens 110 degrees, stands 1 into opening
piece "pantry" {
  size 24 wide, 34 high, 18 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    door "pantry" hinged left {
      hinges "cup"
      inside, 1 clear at left { drawer "tins"   drawer "jars" }
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   clear 1/8 below }
  }
}
\`\`\`
`,
});

const untold = {
  stands:
    "how far it stands into the opening ('stands … into opening'), so whether they come out past it is not checked",
  opens: "how far it opens ('opens … degrees'): a right angle is assumed",
} as const;
