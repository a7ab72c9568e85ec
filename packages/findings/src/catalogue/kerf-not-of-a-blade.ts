import { defineFinding, type Measure } from '../finding.ts';

/** A kerf that no saw blade has. */
export const kerfNotOfABlade = defineFinding<{
  readonly machine: string;
  readonly kerf: Measure;
  /** The widest that is usual; absent where the kerf is nothing or less. */
  readonly limit?: Measure;
}>({
  code: 'kerf-not-of-a-blade',
  severity: 'warning',
  title: 'A kerf that no blade has',
  headline: (facts, say) =>
    facts.limit === undefined
      ? `${say.name(facts.machine)} has a kerf of ${say.length(facts.kerf)}: every blade takes some wood away`
      : `${say.name(facts.machine)} has a kerf of ${say.length(facts.kerf)}, a saw blade one of at most about ` +
        `${say.length(facts.limit)}`,
  brief: (facts, say) => `a kerf of ${say.length(facts.kerf)}`,
  related: {},
  mends: { write: (values, say) => `Write ${say.length(values['size'] as Measure)}` },
  help: `
The kerf is what the blade turns into dust: about an eighth of an inch, or 3 mm, for most saws. Between any two parts of a
plan lies one kerf, so that a wrong one wastes a sheet, or leaves every part too small.

\`\`\`fettle wrong
sheet "ply" actual 3/4, 96 long, 48 wide
machine "saw" kerf 3
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`

\`\`\`fettle right
sheet "ply" actual 3/4, 96 long, 48 wide
machine "saw" kerf 1/8
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`
`,
});
