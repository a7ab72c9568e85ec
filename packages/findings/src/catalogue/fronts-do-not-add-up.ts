import { defineFinding, type Measure } from '../finding.ts';

/** Fronts and gaps along one row or stack need more, or leave more, than the face has. */
export const frontsDoNotAddUp = defineFinding<{
  /** What fronts, gaps and dividers together need. */
  readonly needed: Measure;
  /** What there is. */
  readonly available: Measure;
  readonly difference: Measure;
  readonly tooMuch: boolean;
  readonly axis: 'width' | 'height';
}>({
  code: 'fronts-do-not-add-up',
  severity: 'error',
  title: 'Fronts and gaps do not add up to the face',
  headline: (facts, say) =>
    `fronts and gaps need ${say.length(facts.needed)}, the ${facts.axis} there is ${say.length(facts.available)}: ` +
    `${say.length(facts.difference)} ${facts.tooMuch ? 'too much' : 'left over'}`,
  related: {
    total: (values, say) => `the face is ${say.length(values['available'] as Measure)} here`,
    fixed: (values, say) => `${say.name(String(values['name']))} takes ${say.length(values['size'] as Measure)}`,
  },
  mends: {
    resize: (values, say) => `Make ${say.name(String(values['name']))} ${say.length(values['size'] as Measure)}`,
    'let-rest': (values, say) => `Let ${say.name(String(values['name']))} take the rest`,
    spread: (values, say) => `Share the ${say.length(values['difference'] as Measure)} among ${values['count']} fronts`,
  },
  help: `
Along a row or a stack every front, every gap and every shown divider has to add up to the space there is.
Nothing in this stack can give: each front has a size of its own.

\`\`\`fettle wrong
TO BE WRITTEN
\`\`\`
`,
});
