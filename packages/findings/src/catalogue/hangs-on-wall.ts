import { defineFinding } from '../finding.ts';

/** A caution beside the weight of a hung piece: a screening, never a certification. */
export const hangsOnWall = defineFinding<{
  /** '52 lb', each of them. */
  readonly itself: string;
  /** Absent where nothing of known weight is said to be held. */
  readonly held?: string;
  /** What the wall carries when every level holds what shelves are screened for. */
  readonly most: string;
  /** That load: '50 lb a square foot' of `levels`. */
  readonly spread: string;
  /** Absent where nothing is there to take them. */
  readonly screws?: number;
  /** Of how many parts nobody knows what they are made of. */
  readonly unweighed: number;
}>({
  code: 'hangs-on-wall',
  severity: 'note',
  title: 'What hangs on the wall',
  headline: (facts) =>
    `${facts.itself} hang on the wall${facts.unweighed === 0 ? '' : `, without ${facts.unweighed === 1 ? 'a part' : `${facts.unweighed} parts`} of unknown weight`}` +
    `${facts.held === undefined ? '' : `, with what is in it ${facts.held}`}; ` +
    `with ${facts.spread} on every level it would be ${facts.most}: ` +
    `${facts.screws === undefined ? 'fix it' : `put its ${facts.screws} screws`} into studs or masonry that carry this, ` +
    'as local practice asks (a screening, not a certification)',
  brief: (facts) => `${facts.most} on the wall when full: screw into studs`,
  related: {},
  mends: {},
  help: `
A cupboard that comes down can kill. The weight told here is that of the wood, at average densities, without hardware and
glass, and of the things that are said to be held and to weigh something. The second weight has
50 lb on every square foot of each level, the load that shelves for books are screened for (Architectural Woodwork
Standards, 1st ed., 2009, 10-1.2.21): hung pieces are filled up sooner or later.

Find the studs and screw into them, into solid blocking between them or into masonry with anchors made for it; gypsum
board, plaster and screws meant for them carry no cupboard. What the wall itself bears, and what local practice or a
building code asks, is not known here. This screens a design; it certifies nothing.

\`\`\`fettle wrong
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back "ply" in groove 1/4 deep, 1/4 in from back edge
    hung on wall
  }
}
\`\`\`

\`\`\`fettle right
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back "ply" in groove 1/4 deep, 1/4 in from back edge
  }
}
\`\`\`
`,
});
