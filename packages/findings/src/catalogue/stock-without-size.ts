import { defineFinding } from '../finding.ts';

/** Stock that does not say how large it is. */
export const stockWithoutSize = defineFinding<{
  readonly what: string;
  readonly of: 'stock' | 'offcut';
  readonly missing: 'length' | 'width' | 'both';
}>({
  code: 'stock-without-size',
  severity: 'note',
  title: 'Stock that does not say how large it is',
  headline: (facts, say) => {
    const lacks = facts.missing === 'both' ? 'neither length nor width' : `no ${facts.missing}`;
    return facts.of === 'offcut'
      ? `an offcut of ${say.name(facts.what)} has ${lacks}: it is not used`
      : `${say.name(facts.what)} has ${lacks}: what is made of it is in no cutting plan`;
  },
  brief: (facts) => (facts.missing === 'both' ? 'no size' : `no ${facts.missing}`),
  related: {},
  mends: {},
  help: `
How many sheets or boards to buy, and how to cut them, is worked out from their size: for a sheet its length along the
grain and its width, for boards those of the longest and widest one can buy. Edging that is bought by its length needs
none.

\`\`\`fettle wrong
sheet "ply" actual 3/4, 96 long
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`

\`\`\`fettle right
sheet "ply" actual 3/4, 96 long, 48 wide
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`
`,
});
