import { defineFinding, type Measure } from '../finding.ts';

/** A sheet, a board or an offcut with a size of nothing or less. */
export const stockSizeNotPositive = defineFinding<{
  readonly what: string;
  /** What the size is said of: the stock itself, or an offcut of it. */
  readonly of: 'stock' | 'offcut';
  readonly axis: 'long' | 'wide' | 'thick' | 'trim';
  readonly size: Measure;
}>({
  code: 'stock-size-not-positive',
  severity: 'error',
  title: 'Stock of no size',
  headline: (facts, say) => {
    const what = facts.of === 'offcut' ? `an offcut of ${say.name(facts.what)}` : say.name(facts.what);
    return facts.axis === 'trim'
      ? `${what} is trimmed by ${say.length(facts.size)}: a trim is 0 or more`
      : `${what} is ${say.length(facts.size)} ${facts.axis}: nothing can be cut from it`;
  },
  brief: (facts, say) => `a size of ${say.length(facts.size)}`,
  related: {},
  mends: { write: (values, say) => `Write ${say.length(values['size'] as Measure)}` },
  help: `
Cutting plans are made from the sizes of the stock. A length or a width of nothing or less is a slip: mostly a stray minus.

\`\`\`fettle wrong
sheet "ply" actual 3/4, -96 long, 48 wide
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
