import { defineFinding, type Measure } from '../finding.ts';

/** An opening, a front or a part that comes out with no size left, or less than none. */
export const sizesNotPositive = defineFinding<{
  readonly what: 'opening' | 'front' | 'leaf' | 'face' | 'body' | 'part';
  /** The maker's name for it, or a description when it has none. */
  readonly name?: string;
  readonly axis: 'width' | 'height' | 'depth';
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
    const name = facts.name === undefined ? '' : say.name(facts.name);
    const subject = {
      opening: `the opening ${name}`,
      front: `the front ${name}`,
      leaf: `each leaf of ${name}`,
      face: 'the face',
      body: 'the body of the case',
      part: `${facts.name ?? 'a part'}`,
    }[facts.what].trim();
    const direction = { width: 'wide', height: 'high', depth: 'deep' }[facts.axis];
    const why =
      facts.taken === undefined || facts.available === undefined
        ? ''
        : `: what stands beside it takes ${say.length(facts.taken)} of the ${say.length(facts.available)} there is`;
    return `${subject} comes out ${say.length(facts.size)} ${direction}${why}`;
  },
  related: {
    total: (values, say) =>
      `the ${String(values['axis'])} there is, ${say.length(values['available'] as Measure)}, follows from here`,
    fixed: (values, say) => `${say.name(String(values['name']))} takes ${say.length(values['size'] as Measure)}`,
  },
  mends: {
    'share-all': (values) => `Let all ${String(values['count'])} share the ${String(values['axis'])} equally`,
  },
  help: `
Sizes that are written down come first, then gaps, dividers and thicknesses; whatever takes the rest or a share gets
what is left. Here nothing is left, or less than nothing.

Make one of the written sizes smaller, or let the neighbours share the space too.
`,
});
