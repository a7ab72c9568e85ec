import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** The compartments of a drawer and the partitions between them are more, or less, than there is inside its box. */
export const compartmentsDoNotFit = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly count: number;
  /** Compartments and partitions together. */
  readonly sum: Measure;
  readonly inside: Measure;
  readonly difference: Measure;
  readonly how: 'too-much' | 'left-over';
  readonly way: 'across' | 'behind';
}>({
  code: 'compartments-do-not-fit',
  severity: 'error',
  title: 'Compartments that do not fit their drawer',
  headline: (facts, say) => {
    const who = subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say);
    const across = facts.way === 'across' ? 'across' : 'from front to back';
    const ends = facts.how === 'too-much' ? 'too much' : 'left over';
    return (
      `${facts.count} compartments and the partitions between them take ${say.length(facts.sum)} ${across}, inside the ` +
      `box of ${who} there is ${say.length(facts.inside)}: ${say.length(facts.difference)} ${ends}`
    );
  },
  brief: ({ difference, how }, say) =>
    `${say.length(difference)} ${how === 'too-much' ? 'too much' : 'left over'} inside the box`,
  related: { drawer: (values, say) => `${subject(values, say)} is the drawer` },
  mends: { last: ({ size }, say) => `Make the last one ${say.length(size as Measure)}` },
  help: `
Compartments lie side by side, or one behind the other, with a partition between each two. Their clear sizes and the
partitions make up what is clear inside the box. Those that say no size share what is left; where all of them say one,
the sum has to come out.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 8 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "spoons" {
      compartments thick 1/4 { compartment 8 wide   compartment 6 wide   compartment 4 wide }
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail }
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 8 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "spoons" {
      compartments thick 1/4 { compartment 8 wide   compartment 6 wide   compartment }
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail }
  }
}
\`\`\`
`,
});
