import { defineFinding, type Measure, type Say } from '../finding.ts';
import { subject } from '../named.ts';

function frontsAnd(between: { readonly words: string; readonly total: Measure } | undefined, say: Say): string {
  return between === undefined
    ? 'fronts and gaps'
    : `fronts, gaps and ${say.length(between.total)} of ${between.words}`;
}

/** In whole marks of the ruler some may bear one more than others. */
function shares(least: Measure, most: Measure, say: Say): string {
  return least.exactInches === most.exactInches ? say.length(least) : `${say.length(least)} to ${say.length(most)}`;
}

/** Fronts and gaps along one row or stack need more, or leave more, than the face has. */
export const frontsDoNotAddUp = defineFinding<{
  /** What fronts, gaps and dividers together need. */
  readonly needed: Measure;
  /** What there is. */
  readonly available: Measure;
  readonly difference: Measure;
  readonly tooMuch: boolean;
  readonly axis: 'width' | 'height';
  /** Absent means fronts; a row or stack of open spaces has none. */
  readonly of?: 'fronts' | 'openings';
  /** All that is seen of wood between the fronts, where there is any. */
  readonly between?: { readonly words: 'partitions' | 'dividers'; readonly total: Measure };
}>({
  code: 'fronts-do-not-add-up',
  severity: 'error',
  title: 'Fronts and gaps do not add up to the face',
  headline: (facts, say) =>
    `${facts.of === 'openings' ? 'openings and dividers' : frontsAnd(facts.between, say)} need ${say.length(facts.needed)}, ` +
    `there is ${say.length(facts.available)} of ${facts.axis}: ` +
    `${say.length(facts.difference)} ${facts.tooMuch ? 'too much' : 'left over'}`,
  brief: (facts, say) => `${say.length(facts.difference)} ${facts.tooMuch ? 'too much' : 'left over'}`,
  related: {
    total: (values, say) =>
      `the ${String(values['axis'])} there is, ${say.length(values['available'] as Measure)}, follows from here`,
    fixed: (values, say) => `${subject(values, say)} takes ${say.length(values['size'] as Measure)}`,
    divider: (values, say) => `the ${String(values['words'])} seen here takes ${say.length(values['size'] as Measure)}`,
    gaps: (values, say) =>
      `${values['count'] === undefined ? 'the gaps' : `${String(values['count'])} gaps of ${say.length(values['each'] as Measure)}`} take ${say.length(values['size'] as Measure)}`,
  },
  mends: {
    resize: (values, say) =>
      `Make ${subject(values, say)} ${say.length(values['size'] as Measure)}, ` +
      `${say.length(values['change'] as Measure)} ${String(values['direction'])}`,
    'let-rest': (values, say) => `Let ${subject(values, say)} take the rest`,
    spread: (values, say) =>
      `Share the ${say.length(values['difference'] as Measure)} among ${Number(values['count']) === 2 ? 'both' : `${String(values['count'])} of them`}, ` +
      `${shares(values['least'] as Measure, values['most'] as Measure, say)} ${String(values['direction'])} each`,
  },
  help: `
Along a row or a stack every front, every gap and every shown divider has to add up to the space there is. Here nothing
can give: each of them has a size of its own, and together these sizes come to more or to less than the space.

Change one of the sizes by exactly what is too much or left over, or let one of them take the rest: then it follows
whenever another size changes.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" front 9 high
    drawer "blankets" front 21 high
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
