import { defineFinding } from '../finding.ts';

/** A graded row or stack in which fewer than two spaces take part. */
export const gradingWithoutEffect = defineFinding<{
  readonly group: 'row' | 'stack';
  /** How many spaces there are, and how many of them have no size of their own. */
  readonly spaces: number;
  readonly graded: number;
}>({
  code: 'grading-without-effect',
  severity: 'warning',
  title: 'A grading without effect',
  headline: (facts) =>
    facts.spaces === 1
      ? `this ${facts.group} has a single space, and there is nothing to grade it against`
      : facts.graded === 0
        ? `every space of this ${facts.group} has a size of its own, so none is graded`
        : `all spaces of this ${facts.group} but one have sizes of their own, so nothing is graded`,
  brief: () => 'a grading without effect',
  related: {},
  mends: { remove: (values) => `Take out '${values['words']}'` },
  help: `
A graded stack makes each front larger than the one before it. It takes two spaces at least that say nothing about their
own size.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    stack graded by 1 {
      drawer "linen" front 9 high
      drawer "blankets" rest
    }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    stack graded by 1 {
      drawer "linen"
      drawer "blankets"
    }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
