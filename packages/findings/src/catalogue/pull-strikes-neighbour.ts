import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const pullStrikesNeighbour = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly pull: string;
  readonly standsOut: Measure;
  readonly between: Measure;
  readonly difference: Measure;
  readonly drawers: number;
}>({
  code: 'pull-strikes-neighbour',
  severity: 'warning',
  title: 'The pull of an open door in the way of a drawer',
  headline: (facts, say) =>
    `while ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} stands open at a right angle, ${say.name(facts.pull)} stands out ${say.length(facts.standsOut)} and the ${facts.drawers === 1 ? 'drawer' : 'drawers'} beside it begin${facts.drawers === 1 ? 's' : ''} ${say.length(facts.between)} away: ` +
    `${say.length(facts.difference)} in the way`,
  brief: (facts, say) => `${say.length(facts.difference)} in the way of a drawer`,
  related: {
    drawer: (values, say) => `${subject(values, say)} slides out against it`,
  },
  mends: {},
  help: `
A door that hangs beside drawers stands along their edge when it is open at a right angle, and its pull stands out towards
them: a drawer that is pulled out strikes it. Choose a flatter pull, put it at a height where no drawer is, or hang the
door on its other edge.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
pull "knob" 1 wide, round, stands out 1
piece "box" {
  size 40 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { row { door "pans" hinged right { hinges "butt"   pulls "knob" }   partition thick 3/4, shown   drawer "pots" }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
pull "knob" 1 wide, round, stands out 3/4
piece "box" {
  size 40 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { row { door "pans" hinged right { hinges "butt"   pulls "knob" }   partition thick 3/4, shown   drawer "pots" }   fronts thick 3/4 }
}
\`\`\`
`,
});
