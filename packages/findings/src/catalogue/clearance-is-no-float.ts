import { defineFinding } from '../finding.ts';

/** A sheet is given float, or solid wood clearance: two facts of different kinds. */
export const clearanceIsNoFloat = defineFinding<{
  readonly panel: string;
  readonly stock: string;
  readonly said: 'clearance' | 'float';
}>({
  code: 'clearance-is-no-float',
  severity: 'warning',
  title: 'Float of a sheet, or clearance of solid wood',
  headline: (facts, say) =>
    facts.said === 'float'
      ? `${say.name(facts.stock)} is a sheet and does not move: the ${facts.panel} needs clearance to go in, not float`
      : `${say.name(facts.stock)} is solid wood and moves: the ${facts.panel} needs float at each edge, not clearance`,
  brief: (facts) => (facts.said === 'float' ? 'a sheet needs clearance' : 'solid wood needs float'),
  related: {},
  mends: { say: (values) => `Say '${String(values['words'])}'` },
  help: `
Two things make a panel smaller than its room. A sheet needs a little clearance, in all, so that the case goes together;
it keeps its size. Solid wood needs float at each edge, because it will swell; a case may be glued up tight around it and
still be torn apart in summer. Each has its own word, and each is checked by its own rule.

\`\`\`fettle wrong
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back "ply" in groove 1/4 deep, 1/2 in from back edge, float 1/16 each side
  }
}
\`\`\`

\`\`\`fettle right
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back "ply" in groove 1/4 deep, 1/2 in from back edge, clearance 1/16
  }
}
\`\`\`
`,
});
