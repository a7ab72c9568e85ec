import { defineFinding } from '../finding.ts';

/** A vent of which a size or its place is not said, or is nothing. */
export const ventWithoutSize = defineFinding<{
  /** 'width and no place' */
  readonly missing: string;
}>({
  code: 'vent-without-size',
  severity: 'error',
  title: 'A vent of no size',
  headline: (facts) => `the vent says no ${facts.missing}, so it is not cut`,
  brief: (facts) => `no ${facts.missing}`,
  related: {},
  mends: {},
  help: `
A vent says how wide and how high it is, both more than nothing, and how far it lies up from the lower edge of its front.

\`\`\`fettle wrong
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high, 4 up }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
