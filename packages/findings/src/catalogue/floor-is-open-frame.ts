import { defineFinding } from '../finding.ts';

/** The floor of a compartment that holds things is a frame with nothing in it. */
export const floorIsOpenFrame = defineFinding<{
  /** The compartment, in the maker's words. */
  readonly cell: string;
}>({
  code: 'floor-is-open-frame',
  severity: 'warning',
  title: 'A floor that is an open frame',
  headline: (facts) => `the floor of ${facts.cell} is an open frame: what is put in falls through it`,
  brief: () => 'a floor that is an open frame',
  related: { cell: () => 'what stands on it' },
  mends: { panel: () => 'Make it a full panel' },
  help: `
A web frame carries drawers, which bring their own bottoms. Behind doors and in an open space things lie on the divider
itself: there it is a full panel, or a web frame that a dust panel closes.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 30 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
  }
  face inset {
    stack {
      open "bowls" rest
      divider web-frame thick 3/4, rails 2 wide, shown
      open "plates" opening 12 high
    }
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 30 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
  }
  face inset {
    stack {
      open "bowls" rest
      divider panel thick 3/4, shown
      open "plates" opening 12 high
    }
  }
}
\`\`\`
`,
});
