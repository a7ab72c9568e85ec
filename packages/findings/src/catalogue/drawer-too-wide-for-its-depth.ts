import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const drawerTooWideForItsDepth = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly width: Measure;
  readonly depth: Measure;
  /** The widest box of this depth that runs well. */
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'drawer-too-wide-for-its-depth',
  severity: 'warning',
  title: 'A drawer too wide for its depth',
  headline: (facts, say) =>
    `the box of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ` +
    `${say.length(facts.width)} wide and ${say.length(facts.depth)} deep; over twice its depth, ` +
    `${say.length(facts.limit)}, it racks and binds: ${say.length(facts.difference)} too wide`,
  brief: (facts, say) => `drawer ${say.length(facts.difference)} too wide`,
  related: { also: (values, say) => `${subject(values, say)} is too wide for its depth as well` },
  mends: { 'use-slides': (values, say) => `Use ${say.name(String(values['slides']))}, a deeper box` },
  help: `
A drawer that is pulled at one end turns a little in its opening. The wider it is against its depth the more it turns,
until it binds: over twice as wide as deep it does (common practice, no source). Two drawers side by side run better,
or a deeper box on longer slides.

\`\`\`fettle wrong
slide "side mount 10" side mount, 10 long, takes 1/2 each side
piece "box" {
  size 30 wide, 10 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "wide"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   slides "side mount 10" }
  }
}
\`\`\`

\`\`\`fettle right
slide "side mount 10" side mount, 10 long, takes 1/2 each side
piece "box" {
  size 20 wide, 10 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "narrow"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   slides "side mount 10" }
  }
}
\`\`\`
`,
});
