import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** An opening or a drawer must hold more than goes into it. */
export const contentsDoNotFit = defineFinding<{
  readonly name?: string;
  readonly words: string;
  /** 'compartment 2 of ', where it is only a part of it. */
  readonly part?: string;
  readonly thing: string;
  readonly count: number;
  /** How many of them found a place. */
  readonly fits: number;
  /** One more than there are shelves. */
  readonly rooms: number;
  /** Where they differ, the sizes are those of the highest, or of the largest. */
  readonly spaces: 'alike' | 'differ' | 'differ-in-size';
  readonly width: Measure;
  readonly depth: Measure;
  readonly height: Measure;
  /** Where not even one goes in: the measure that is missing most, and by how much. */
  readonly side?: 'wide' | 'deep' | 'high';
  readonly short?: Measure;
}>({
  code: 'contents-do-not-fit',
  severity: 'warning',
  title: 'What it must hold does not go in',
  headline: (facts, say) => {
    const which = { alike: 'in each', differ: 'in the highest', 'differ-in-size': 'in the largest' }[facts.spaces];
    const spaces = `${which} of ${facts.rooms} spaces`;
    const rooms = facts.rooms === 1 ? 'inside' : spaces;
    const clear = `${say.length(facts.width)} wide, ${say.length(facts.depth)} deep, ${say.length(facts.height)} high ${rooms}`;
    const who = `${facts.part ?? ''}${subject(facts, say)}`;
    const thing = say.name(facts.thing);
    if (facts.side !== undefined && facts.short !== undefined) {
      return `${thing} is ${say.length(facts.short)} too ${facts.side} for ${who}: ${clear}`;
    }
    return facts.fits === 0
      ? `no ${thing} goes into ${who}: ${clear}`
      : `${facts.fits} of ${facts.count} ${thing} go into ${who} in plain rows: ${clear}`;
  },
  brief: (facts) => `${facts.fits} of ${facts.count} fit`,
  related: { opening: (values, say) => `${subject(values, say)} holds them` },
  mends: { fewer: (values) => `Hold ${String(values['count'])}` },
  help: `
What an opening or a drawer \`holds\` is put in by plain rows: side by side, one behind the other and one on top of the
other, all the same way round, in each of the spaces between shelves. Of the ways round the one that holds most is
taken; a thing that says \`this way up\` is turned but not tipped. Several kinds are put in as they are written. That no
cleverer way of mixing them holds more is not claimed. Fewer shelves make higher spaces; a wider opening makes longer rows.

\`\`\`fettle wrong
thing "jar" { 4 wide, 4 deep, 7 high   this way up }
piece "box" {
  size 21-1/2 wide, 16 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "pantry" { holds 40 "jar" } }
}
\`\`\`

\`\`\`fettle right
thing "jar" { 4 wide, 4 deep, 7 high   this way up }
piece "box" {
  size 21-1/2 wide, 16 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "pantry" { holds 30 "jar" } }
}
\`\`\`
`,
});
