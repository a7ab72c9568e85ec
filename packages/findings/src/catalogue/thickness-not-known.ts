import { defineFinding } from '../finding.ts';

export const thicknessNotKnown = defineFinding<{ readonly part: string; readonly stock: string }>({
  code: 'thickness-not-known',
  severity: 'error',
  title: 'A part without a thickness',
  headline: (facts, say) =>
    `the ${facts.part} ${facts.part.endsWith('s') ? 'have' : 'has'} no thickness: ` +
    (facts.stock === ''
      ? 'no stock is named and no thickness is given'
      : `the stock ${say.name(facts.stock)} has none of its own`),
  brief: (facts) => `no thickness for the ${facts.part}`,
  related: {},
  mends: { say: (values) => `Add 'thick ${values['thickness']}'` },
  help: `
Sizes are computed from actual thicknesses. A sheet brings its own; solid wood is planed to what the part asks for, so
the part has to say it: \`thick 3/4\`.

\`\`\`fettle wrong
use "shop.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides "oak" }
}
\`\`\`

\`\`\`fettle right
use "shop.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides "oak" thick 3/4 }
}
\`\`\`
`,
});
