import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

/** A size is to be the same as another that has none to give. */
export const sameLeadsNowhere = defineFinding<{
  /** The name it refers to. */
  readonly as: string;
  readonly why: 'no-such-cell' | 'circular' | 'no-front' | 'not-laid-out';
}>({
  code: 'same-leads-nowhere',
  severity: 'error',
  title: 'A copied size that leads nowhere',
  headline: (facts, say) => {
    const as = say.name(facts.as);
    switch (facts.why) {
      case 'no-such-cell':
        return `there is no space called ${as} whose size could be copied`;
      case 'circular':
        return `same as ${as} comes back to where it started: none of these sizes is ever set`;
      case 'no-front':
        return `same front as ${as} needs a front on both, one of them is open`;
      case 'not-laid-out':
        return `the size of ${as} is not known, so it cannot be copied`;
      default: {
        const unknown: never = facts.why;
        return String(unknown);
      }
    }
  },
  brief: (facts, say) => `same as ${say.name(facts.as)} leads nowhere`,
  related: { circle: (values, say) => `${subject(values, say)} is part of the circle` },
  mends: { 'let-rest': () => 'Let it take the rest instead' },
  help: `
A size may be copied from another space by its name. The other space must have a size that does not itself depend on
this one, and to copy the size of a front both of them must have one.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" same as "blankets"
    drawer "blankets" same as "linen"
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" rest
    drawer "blankets" same as "linen"
    fronts thick 3/4
  }
}
\`\`\`
`,
});
