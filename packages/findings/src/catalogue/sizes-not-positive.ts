import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** An opening, a front or a part that comes out with no size left, or less than none. */
export const sizesNotPositive = defineFinding<{
  readonly what: 'opening' | 'front' | 'leaf' | 'face' | 'inside' | 'body' | 'part';
  /** The maker's name for it. */
  readonly name?: string;
  /** What it is called where it has no name, such as 'the third drawer' or the label of a part. */
  readonly words?: string;
  readonly axis: 'width' | 'height' | 'depth' | 'length' | 'thickness';
  /** Zero or negative. */
  readonly size: Measure;
  /** What its neighbours, gaps and boundaries take, and the space that all of them stand in. */
  readonly taken?: Measure;
  readonly available?: Measure;
}>({
  code: 'sizes-not-positive',
  severity: 'error',
  title: 'Nothing is left for an opening, a front or a part',
  headline: (facts, say) => {
    const who = facts.name === undefined ? (facts.words ?? 'it') : say.name(facts.name);
    const what = {
      opening: `the opening of ${who}`,
      front: `the front of ${who}`,
      leaf: `each leaf of ${who}`,
      face: 'the face',
      inside: 'the inside',
      body: 'the body',
      part: who,
    }[facts.what];
    const direction = { width: 'wide', height: 'high', depth: 'deep', length: 'long', thickness: 'thick' }[facts.axis];
    const why =
      facts.taken === undefined || facts.available === undefined
        ? ''
        : `: what stands beside it takes ${say.length(facts.taken)} of the ${say.length(facts.available)} there is`;
    return `${what} comes out ${say.length(facts.size)} ${direction}${why}`;
  },
  brief: (facts, say) =>
    `nothing left for ${facts.name === undefined ? (facts.words ?? `the ${facts.what}`) : say.name(facts.name)}`,
  related: {
    total: (values, say) =>
      `the ${String(values['axis'])} there is, ${say.length(values['available'] as Measure)}, follows from here`,
    fixed: (values, say) => `${subject(values, say)} takes ${say.length(values['size'] as Measure)}`,
  },
  mends: {
    'share-all': (values) =>
      `Let ${Number(values['count']) === 2 ? 'both' : `all ${String(values['count'])}`} share the ${String(values['axis'])} equally`,
  },
  help: `
Sizes that are written down come first, then gaps, dividers and thicknesses; whatever takes the rest or a share gets
what is left. Here nothing is left, or less than nothing.

Make one of the written sizes smaller, or let the neighbours share the space too.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" front 29 high
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" front 9 high
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`
`,
});
