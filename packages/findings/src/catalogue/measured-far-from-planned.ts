import { defineFinding, type Measure } from '../finding.ts';

/** A measured size and the planned one beside it are further apart than work goes astray. */
export const measuredFarFromPlanned = defineFinding<{
  readonly measured: Measure;
  readonly planned: Measure;
  readonly difference: Measure;
  readonly direction: 'larger' | 'smaller';
}>({
  code: 'measured-far-from-planned',
  severity: 'note',
  title: 'A measured size far from the planned one',
  headline: (facts, say) =>
    `measured ${say.length(facts.measured)}, planned ${say.length(facts.planned)}: ` +
    `${say.length(facts.difference)} ${facts.direction}; check the tape before the fronts are cut`,
  related: { planned: (values, say) => `${say.length(values['planned'] as Measure)} was planned here` },
  mends: {
    'plan-it': (values, say) => `Plan ${say.length(values['measured'] as Measure)}, as it was measured`,
    'measure-again': () => 'Take the measured size out until it is measured again',
  },
  help: `
A measured size replaces the planned one. The two are seldom further apart than 1/4" (common practice, no source): more
is most often a tape read wrongly, or a figure written beside the wrong space.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" opening 9 high, measured opening 10 high
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" opening 9 high, measured opening 9-1/16 high
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`
`,
});
