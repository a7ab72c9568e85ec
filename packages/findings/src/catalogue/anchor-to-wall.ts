import { defineFinding, type Measure } from '../finding.ts';

/** A caution, never a certification: what a standard demands is tested on the real piece. */
export const anchorToWall = defineFinding<{
  readonly height: Measure;
  readonly limit: Measure;
  readonly why: 'drawers' | 'narrow';
  /** Of a piece that stands on a narrow foot. */
  readonly depth?: Measure;
}>({
  code: 'anchor-to-wall',
  severity: 'note',
  title: 'High enough to tip over: anchor it',
  headline: (facts, say) =>
    facts.why === 'narrow'
      ? `${say.length(facts.height)} high${facts.depth === undefined ? '' : ` and ${say.length(facts.depth)} deep`} ` +
        'this piece can tip over: anchor it to the wall (common practice, not a standard)'
      : `with drawers and ${say.length(facts.height)} high this piece can tip over when they are open: anchor it to the ` +
        `wall (clothing storage has a safety standard from ${say.length(facts.limit)} on)`,
  brief: () => 'can tip over: anchor it',
  related: {},
  mends: {},
  help: `
Open drawers carry their load in front of the feet, and a child that climbs on them adds to it. Anchor every piece with
drawers from about 27" of height to the wall, whatever its proportions. A piece without drawers is told when it is more than four times as high as it is deep, or over
48" high and under 16" deep (common practice, no source).

In the USA free-standing clothing storage from 27" of height, 30 lb and 3.2 cubic feet on falls under ASTM F2057-23
(16 CFR 1261.2, the STURDY Act). It is met by tests on the real piece. Nothing here tests, certifies or replaces them,
and a piece that gets no such note may tip over as well.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "top"
    drawer "low"
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 24 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "top"
    drawer "low"
    fronts thick 3/4
  }
}
\`\`\`
`,
});
