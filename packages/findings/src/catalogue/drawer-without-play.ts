import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const drawerWithoutPlay = defineFinding<{
  readonly name?: string;
  readonly words: string;
  /** `door`: the open door that it stands behind, or its hinge. */
  readonly where: 'sides' | 'above' | 'below' | 'door';
  readonly left: Measure;
  readonly limit: Measure;
}>({
  code: 'drawer-without-play',
  severity: 'warning',
  title: 'A drawer that has no room to run',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} has ${say.length(facts.left)} free ${places[facts.where]}: ` +
    `with less than ${say.length(facts.limit)} it binds (common practice)`,
  brief: (facts, say) => `${say.length(facts.left)} free: it binds`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    drawer: (values, say) => `${subject(values, say)} comes out there`,
  },
  mends: {
    width: ({ size }, say) => `Make the box ${say.length(size as Measure)} wide`,
    height: ({ size }, say) => `Make the box ${say.length(size as Measure)} high`,
    free: ({ size }, say) => `Leave ${say.length(size as Measure)} free there`,
    clear: ({ size }, say) => `Keep the drawers ${say.length(size as Measure)} clear there, on packers`,
  },
  help: `
What is exactly as large as the space it runs in rubs there, and wood swells besides. A drawer needs at least 1/32" or 1 mm
over it, at its two sides together, and beside a door or a hinge that it comes out past (common practice, no source). A box
without slides or side runners slides on what is under it, and needs nothing free there.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 12 high, 16 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { drawer "tools" { box 18-1/2 wide }  fronts thick 3/4   drawers { sides thick 1/2   bottom thick 1/4   corners butt } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 12 high, 16 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { drawer "tools" { box 18-7/16 wide }  fronts thick 3/4   drawers { sides thick 1/2   bottom thick 1/4   corners butt } }
}
\`\`\`
`,
});

const places = {
  sides: 'at its two sides together',
  above: 'over its box',
  below: 'under its box, which hangs on its slides or runners',
  door: 'beside the open door or its hinge',
} as const;
