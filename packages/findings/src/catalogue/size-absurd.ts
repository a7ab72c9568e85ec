import { defineFinding, type Measure } from '../finding.ts';

/** A size of the whole piece that is most often a slip of the unit. */
export const sizeAbsurd = defineFinding<{
  readonly axis: 'width' | 'height' | 'depth';
  readonly size: Measure;
  readonly limit: Measure;
  readonly tooMuch: boolean;
}>({
  code: 'size-absurd',
  severity: 'warning',
  title: 'A size of the piece that can hardly be meant',
  headline: (facts, say) => {
    const direction = { width: 'wide', height: 'high', depth: 'deep' }[facts.axis];
    return (
      `a piece ${say.length(facts.size)} ${direction} can hardly be meant: pieces are ` +
      `${facts.tooMuch ? 'at most' : 'at least'} about ${say.length(facts.limit)} ${direction}`
    );
  },
  brief: (facts, say) => `${say.length(facts.size)} ${{ width: 'wide', height: 'high', depth: 'deep' }[facts.axis]}`,
  related: {},
  mends: {},
  help: `
A piece under 1" or over 20 feet (common practice, no source) is most often a slip: a size in another unit, a sum that
lost its last number. What is built in longer runs is several pieces, each of which has to go through a door.

\`\`\`fettle wrong
piece "wall of shelves" {
  units inches
  size 21' wide, 84 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "wall of shelves" {
  units inches
  size 19' wide, 84 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
