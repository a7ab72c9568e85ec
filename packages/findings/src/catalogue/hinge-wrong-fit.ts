import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

export const hingeWrongFit = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly fit: 'inset' | 'overlay';
}>({
  code: 'hinge-wrong-fit',
  severity: 'error',
  title: 'Hinges made for another kind of door',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is an ${facts.fit} door, ` +
    `${say.name(facts.hinge)} is made for ${facts.fit === 'inset' ? 'overlay' : 'inset'} doors`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs on it as well`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
  },
  help: `
An inset door lies inside the case, an overlay door on its edges. A hinge made for one of them puts the other in the
wrong place, or does not let it open.

\`\`\`fettle wrong
hinge "butt" for overlay doors
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" for inset doors
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`
`,
});
