import { defineFinding, type Measure } from '../finding.ts';

/** A row of holes for shelf pins opens into something else that is cut in the same part. */
export const pinRowMeetsCut = defineFinding<{
  readonly row: 'front' | 'back';
  /** In the maker's words: 'left side'. */
  readonly part: string;
  /** 'groove for the back'; 'row of holes from its other face' */
  readonly other: string;
  /** What would part them. */
  readonly by: Measure;
}>({
  code: 'pin-row-meets-cut',
  severity: 'error',
  title: 'A row of holes that runs into a joint',
  headline: (facts, say) =>
    touches(facts.by)
      ? `the ${facts.row} row of pin holes touches the ${facts.other} in the ${facts.part}: no wood is left between them`
      : `the ${facts.row} row of pin holes meets the ${facts.other} in the ${facts.part} by ${say.length(facts.by)}`,
  brief: (facts, say) =>
    touches(facts.by) ? 'pin holes touch a cut' : `pin holes meet a cut by ${say.length(facts.by)}`,
  related: { other: (values) => `The ${String(values['what'])} comes from here` },
  mends: {
    raise: (values, say) => `Begin the row ${say.length(values['size'] as Measure)} up`,
    lower: (values, say) => `End the row ${say.length(values['size'] as Measure)} up`,
    shallower: (values, say) => `Bore ${say.length(values['size'] as Measure)} deep`,
  },
  help: `
A hole for a shelf pin needs wood all around. Where its row crosses a dado, a groove or the mortise of a frame, the pin
stands in the joint: it opens glue lines, and the drill runs off. Two rows that are bored into one panel from both faces
must not meet in the middle either.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    row {
      open "left" { shelves 2 adjustable { pins 1/4 deep } }
      partition thick 5/8, shown
      open "right" { shelves 2 adjustable { pins 7/16 deep } }
    }
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    row {
      open "left" { shelves 2 adjustable { pins 1/4 deep } }
      partition thick 5/8, shown
      open "right" { shelves 2 adjustable { pins 1/4 deep } }
    }
  }
}
\`\`\`
`,
});

function touches(by: Measure): boolean {
  return by.exactInches === '0';
}
