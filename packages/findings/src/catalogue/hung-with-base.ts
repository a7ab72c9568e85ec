import { defineFinding } from '../finding.ts';

/** A piece that hangs on a wall has something to stand on the floor with. */
export const hungWithBase = defineFinding<{
  /** 'plinth', 'toe space' or 'feet' */
  readonly base: string;
}>({
  code: 'hung-with-base',
  severity: 'error',
  title: 'A hung piece with a base',
  headline: (facts) => `the piece hangs on a wall and has a ${facts.base}: it cannot do both`,
  brief: (facts) => `hung, with a ${facts.base}`,
  related: { hung: () => 'it hangs on a wall' },
  mends: { stand: () => 'Let it stand on the floor' },
  help: `
What hangs on a wall touches no floor: a plinth, a toe space or feet under it would hang in the air.

\`\`\`fettle wrong
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back "ply" in rabbet 3/8 deep
    plinth 4 high, set back 3, of "ply"
    hung on wall
  }
}
\`\`\`

\`\`\`fettle right
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back "ply" in rabbet 3/8 deep
    hung on wall
  }
}
\`\`\`
`,
});
