import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

/** Heights are written for more shelves than there are, or for fewer. */
export const shelfHeightsNotAll = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly count: number;
  readonly heights: number;
}>({
  code: 'shelf-heights-not-all',
  severity: 'error',
  title: 'Not as many heights as shelves',
  headline: (facts, say) =>
    `${subject(facts, say)} has ${facts.count} ${facts.count === 1 ? 'shelf' : 'shelves'}, and ` +
    `${facts.heights === 1 ? '1 height is' : `${facts.heights} heights are`} written`,
  brief: (facts) => `${facts.heights} heights for ${facts.count} shelves`,
  related: {},
  mends: { count: (values) => `Make it ${String(values['count'])}` },
  help: `
Shelves are spread evenly, or each says where it lies: then there is a \`shelf\` for every one of them, as many as the
number says. Heights count from the lower edge of the opening, to the underside or to the upper face.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 fixed { shelf underside 12 up } } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 fixed { shelf underside 9 up   shelf upper face 20 up } } }
}
\`\`\`
`,
});
