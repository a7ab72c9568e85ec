import { defineFinding } from '../finding.ts';

export const fileNotFound = defineFinding<{ readonly path: string; readonly nearest: string }>({
  code: 'file-not-found',
  severity: 'error',
  title: 'A used file that is not there',
  headline: (facts, say) =>
    `there is no file ${say.name(facts.path)} beside this one, so none of its names is known` +
    (facts.nearest === '' ? '' : `; did you mean ${say.name(facts.nearest)}?`),
  brief: (facts, say) => `no file ${say.name(facts.path)}`,
  related: {},
  mends: { 'use-nearest': (values, say) => `Use ${say.name(String(values['name']))}` },
  help: `
'use' makes the names of another file known. Its path is read from the folder of the file that uses it.

\`\`\`fettle wrong
use "shp.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides "birch ply" }
}
\`\`\`

\`\`\`fettle right
use "shop.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides "birch ply" }
}
\`\`\`
`,
});
