import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

/** A pair that cannot be one panel before it is two doors. */
export const pairNotInOne = defineFinding<{ readonly name?: string; readonly words: string }>({
  code: 'pair-not-in-one',
  severity: 'warning',
  title: 'A framed pair that cannot be made as one',
  headline: (facts, say) =>
    `the leaves of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} are two frames: ` +
    'cut through, each would lack a stile, so they are made one by one',
  brief: () => 'two frames cannot be made as one',
  related: {},
  mends: { remove: () => 'Make them one by one' },
  help: `
Plain doors of a pair may be glued up and edged as one panel and then cut through where they meet. A frame of stiles and
rails cannot: each leaf has two stiles of its own.

\`\`\`fettle wrong
board "ash" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    doors "front" { pair made as one }
    fronts "ash" thick 3/4, frame-and-panel { stiles 2 wide   panel thick 1/4, in groove 3/8 deep }
  }
}
\`\`\`

\`\`\`fettle right
board "ash" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    doors "front" { pair made as one }
    fronts "ash" thick 3/4
  }
}
\`\`\`
`,
});
