import { defineFinding } from '../finding.ts';

/** A joint is asked for where the parts do not meet in a way that could take it. */
export const jointNotThere = defineFinding<{
  readonly part: string;
  readonly joint: string;
}>({
  code: 'joint-not-there',
  severity: 'warning',
  title: 'A joint where nothing takes it',
  headline: (facts) => `the ${facts.part} asks for ${facts.joint}, and nothing that it meets can take it`,
  brief: () => 'nothing takes the joint',
  related: {},
  mends: { remove: () => 'Leave it out' },
  help: `
An end goes into the face of another part, and a mitre needs two parts that end in one corner. A part that meets nothing
in that way is joined to nothing.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    plinth 3 high, thick 3/4
    bottom thick 3/4, in dado 1/4 deep
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, in dado 1/4 deep
  }
}
\`\`\`
`,
});
