import { defineFinding, type Measure } from '../finding.ts';

/** Two cuts of different joints meet inside one part. */
export const featuresMeet = defineFinding<{
  readonly part: string;
  /** 'mortise for the front rail' */
  readonly one: string;
  readonly other: string;
  /** What would part them. */
  readonly by: Measure;
}>({
  code: 'features-meet',
  severity: 'error',
  title: 'Two joints that meet inside the wood',
  headline: (facts, say) =>
    `in the ${facts.part}, the ${facts.one} and the ${facts.other} meet by ${say.length(facts.by)}`,
  brief: (facts, say) => `two cuts meet by ${say.length(facts.by)}`,
  related: { other: (values) => `The ${String(values['what'])} comes from here` },
  mends: {},
  help: `
Two mortises from neighbouring faces, a dowel in the way of a groove, a screw that ends in a tenon: where two cuts meet,
one joint takes the wood of the other. Make one of them shallower, move it, or choose another joint. Cuts that cross on
purpose, as the groove of a back crosses a dado, are no finding.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
  }
  face {
    row {
      stack { open "a" share 1   divider panel thick 3/4, shown, by dowels   open "b" share 1 }
      partition thick 3/4, shown
      stack { open "c" share 1   divider panel thick 3/4, shown, by dowels   open "d" share 1 }
    }
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
  }
  face {
    row {
      stack { open "a" share 1   divider panel thick 3/4, shown, in dado 1/4 deep   open "b" share 1 }
      partition thick 3/4, shown
      stack { open "c" share 1   divider panel thick 3/4, shown, in dado 1/4 deep   open "d" share 1 }
    }
  }
}
\`\`\`
`,
});
