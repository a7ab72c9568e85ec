import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** A size of the whole piece, or of one of its openings, that is most often a slip of the unit. */
export const sizeAbsurd = defineFinding<{
  /** Only of an opening: its name, or what it is called where it has none. */
  readonly name?: string;
  readonly words?: string;
  readonly axis: 'width' | 'height' | 'depth';
  readonly size: Measure;
  readonly limit: Measure;
  readonly tooMuch: boolean;
  /** The number as it is written, where it has a unit that is not the piece's. */
  readonly written?: string;
}>({
  code: 'size-absurd',
  severity: 'warning',
  title: 'A size that can hardly be meant',
  headline: (facts, say) => {
    const direction = { width: 'wide', height: 'high', depth: 'deep' }[facts.axis];
    if (facts.words !== undefined) {
      return (
        `the opening of ${subject({ ...facts, tooMuch: '' }, say)} is ${say.length(facts.size)} ${direction}: under ` +
        `${say.length(facts.limit)} it can hardly be meant`
      );
    }
    const size = facts.written === undefined ? say.length(facts.size) : `${facts.written} (${say.length(facts.size)})`;
    return (
      `a piece ${size} ${direction} can hardly be meant: pieces are ` +
      `${facts.tooMuch ? 'at most' : 'at least'} about ${say.length(facts.limit)} ${direction}`
    );
  },
  brief: (facts, say) => `${say.length(facts.size)} ${{ width: 'wide', height: 'high', depth: 'deep' }[facts.axis]}`,
  related: {},
  mends: { 'other-unit': (values) => `Write ${String(values['words'])}` },
  help: `
A piece under 1" or over 20 feet (common practice, no source) is most often a slip: a size in another unit, a sum that
lost its last number; so is an opening under 1/4". What is built in longer runs is several pieces, each of which has to go through a door.

\`\`\`fettle wrong
piece "wall of shelves" {
  units inches
  size 21' wide, 42 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "wall of shelves" {
  units inches
  size 19' wide, 42 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
