import { defineFinding } from '../finding.ts';

/** A sheet priced as boards are. */
export const sheetByBoardFoot = defineFinding<{
  readonly what: string;
  /** The amount as it is written. */
  readonly amount: string;
}>({
  code: 'sheet-by-board-foot',
  severity: 'warning',
  title: 'A sheet priced by the board foot',
  headline: (facts, say) =>
    `${say.name(facts.what)} is a sheet and costs ${facts.amount} a board foot: sheets are sold each, so it is left out of the cost`,
  brief: () => 'a sheet priced by the board foot',
  related: {},
  mends: { write: (values) => `Write '${values['words']}'` },
  help: `
Boards are measured and sold by the board foot, sheets each. A price by the board foot says nothing about a sheet.

\`\`\`fettle wrong
sheet "ply" actual 3/4, 96 long, 48 wide, costs 8 a board foot
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`

\`\`\`fettle right
sheet "ply" actual 3/4, 96 long, 48 wide, costs 80 each
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`
`,
});
