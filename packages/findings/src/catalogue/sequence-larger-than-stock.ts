import { defineFinding, type Measure } from '../finding.ts';

/** Fronts that are to follow one another do not come out of one piece of their stock in that order. */
export const sequenceLargerThanStock = defineFinding<{
  readonly sequence: string;
  readonly count: number;
  readonly stock: string;
  readonly form: 'sheet' | 'board';
  readonly axis: 'length' | 'width';
  /** Of the blank, with a blade between each two fronts and what is planed off later. */
  readonly size: Measure;
  /** What is usable of the stock. */
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'sequence-larger-than-stock',
  severity: 'error',
  title: 'Fronts in order that no sheet or board holds',
  headline: (facts, say) =>
    `the ${facts.count} fronts that follow one another in ${facts.sequence} are cut from one blank ` +
    `${say.length(facts.size)} ${facts.axis === 'length' ? 'long' : 'wide'}, and one ${facts.form} of ` +
    `${say.name(facts.stock)} gives ${say.length(facts.limit)}: ${say.length(facts.difference)} too much`,
  brief: (facts, say) =>
    `fronts in order ${say.length(facts.difference)} too ${facts.axis === 'length' ? 'long' : 'wide'}`,
  related: { stock: (values, say) => `${say.name(String(values['stock']))} is described here` },
  mends: {
    'use-stock': (values, say) => `Use ${say.name(String(values['stock']))}`,
    'leave-out': (values, say) => `Leave ${say.name(String(values['name']))} out of the sequence`,
  },
  help: `
Fronts of a sequence follow one another in one piece of wood, so that the grain runs on. Between each two of them the blade
takes its kerf; a blank from a board is larger by what is planed and trimmed off it later, and the ends and edges of the
board are lost. Across the grain a blank is never glued up: its fronts would come from several boards.

Make the fronts smaller, leave one out, end the sequence earlier and begin another, or name a stock that is large enough.

\`\`\`fettle wrong
sheet "oak ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 60 wide, 28 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    row { door "left" share 1   door "middle" share 1   door "right" share 1 }
    fronts "oak ply" thick 3/4
  }
  sequence "doors" grain upright { "left", "middle", "right" }
}
\`\`\`

\`\`\`fettle right
sheet "oak ply" nominal 3/4, actual 3/4, 96 long, 60 wide
piece "box" {
  size 60 wide, 28 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    row { door "left" share 1   door "middle" share 1   door "right" share 1 }
    fronts "oak ply" thick 3/4
  }
  sequence "doors" grain upright { "left", "middle", "right" }
}
\`\`\`
`,
});
