import { defineFinding, type Measure } from '../finding.ts';

/** A sheet of that category may be thicker than the cutter makes the groove. */
export const sheetMayNotEnterGroove = defineFinding<{
  readonly stock: string;
  readonly nominal: Measure;
  readonly most: Measure;
  readonly cutter: string;
  readonly cuts: Measure;
}>({
  code: 'sheet-may-not-enter-groove',
  severity: 'note',
  title: 'A sheet that may be too thick for its groove',
  headline: (facts, say) =>
    `plywood sold as ${say.length(facts.nominal)} may be up to ${say.length(facts.most)} thick, and ` +
    `${say.name(facts.cutter)} cuts ${say.length(facts.cuts)}: measure the sheet of ${say.name(facts.stock)} first`,
  related: { cutter: (values, say) => `${say.name(String(values['cutter']))} is described here` },
  mends: {},
  help: `
Plywood is not as thick as its name. Unsanded plywood may be 1/32" thicker or thinner than its category, up to 13/16",
and 5 % above that: a sheet sold as 3/4" measures 0.719" to 0.781" (PS 1-19). A cutter of a fixed width makes one
groove only, and a thick sheet does not enter it. A cutter that can be set is set to the sheet.

\`\`\`fettle wrong
sheet "birch ply 1/4" nominal 1/4, actual 1/4, 60 long, 60 wide
cutter "1/4 bit" cuts 1/4 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    back "birch ply 1/4" in groove 1/4 deep, 1/2 in from back edge
  }
}
\`\`\`

\`\`\`fettle right
sheet "birch ply 1/4" nominal 1/4, actual 1/4, 60 long, 60 wide
cutter "dado stack" cuts 1/8 to 13/16 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    back "birch ply 1/4" in groove 1/4 deep, 1/2 in from back edge
  }
}
\`\`\`
`,
});
