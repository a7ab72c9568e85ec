import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** What runs under the middle of a drawer is higher than the room under its bottom. */
export const noRoomForCentreRunner = defineFinding<{
  readonly name?: string;
  readonly words: string;
  /** 'centre runner', or the slides by their name. */
  readonly runner: string;
  readonly height: Measure;
  /** Under the bottom of the box. */
  readonly room: Measure;
  readonly difference: Measure;
}>({
  code: 'no-room-for-centre-runner',
  severity: 'error',
  title: 'No room for what runs under the middle of a drawer',
  headline: (facts, say) =>
    `the ${facts.runner} is ${say.length(facts.height)} high, under the bottom of ` +
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} there is ` +
    `${say.length(facts.room)}: ${say.length(facts.difference)} too little`,
  brief: ({ difference }, say) => `${say.length(difference)} too little under the bottom`,
  related: { bottom: () => 'The bottom is set here' },
  mends: {
    up: ({ size }, say) => `Set the bottom ${say.length(size as Measure)} up`,
    clear: ({ size }, say) => `Leave ${say.length(size as Measure)} free under the box`,
  },
  help: `
A runner under the middle of a drawer lies on the rails before and behind it, and the box passes over it: its bottom has to
be set up by as much as the runner stands higher than the lower edge of the box. Where nothing is said the groove for the
bottom is set so by itself, and the drawer holds less; otherwise leave more free under the box.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 12 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4, 1/4 up   corners dovetail   runners centre, 3/4 high, 1-1/2 wide }
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 12 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4, 1/2 up   corners dovetail   runners centre, 3/4 high, 1-1/2 wide }
  }
}
\`\`\`
`,
});
