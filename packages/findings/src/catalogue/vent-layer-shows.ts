import { defineFinding, type Measure } from '../finding.ts';

/** An opening behind another is smaller, so that its edge is seen and it is the one that counts. */
export const ventLayerShows = defineFinding<{
  /** 'front of the box' */
  readonly layer: string;
  readonly before: string;
  readonly along: 'width' | 'height';
  readonly difference: Measure;
}>({
  code: 'vent-layer-shows',
  severity: 'warning',
  title: 'An opening that shows behind another',
  headline: (facts, say) =>
    `the opening in the ${facts.layer} is ${say.length(facts.difference)} less in ${facts.along} than the one in the ` +
    `${facts.before}: its edge shows, and less air goes through`,
  brief: (facts, say) => `${say.length(facts.difference)} less behind`,
  related: {},
  mends: { larger: (values, say) => `Make it ${say.length(values['size'] as Measure)}` },
  help: `
An opening behind another is as large or a little larger, so that its raw edge does not show: \`box { larger by 1/8 }\`.

\`\`\`fettle wrong
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high, 4 up { back 5 wide } }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high, 4 up { back 7 wide } }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
