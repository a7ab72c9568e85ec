import { defineFinding } from '../finding.ts';

export const halfMarkedRemark = defineFinding<Readonly<Record<string, never>>>({
  code: 'half-marked-remark',
  severity: 'error',
  title: 'A remark with one stroke instead of two',
  headline: () => "a remark begins with two strokes, '//'; this line was taken for one",
  brief: () => 'a remark with one stroke',
  related: {},
  mends: { mark: () => "Write '//'" },
  help: `
What stands behind \`//\` is a remark: it says something to the reader and nothing is computed from it. A line that
begins with a single stroke is taken for one, because nothing else begins so.

\`\`\`fettle wrong
use "shop.fettle"
/ for the hall
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides of "oak" thick 3/4 }
}
\`\`\`

\`\`\`fettle right
use "shop.fettle"
// for the hall
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides of "oak" thick 3/4 }
}
\`\`\`
`,
});
