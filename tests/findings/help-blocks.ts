import type { CatalogueEntry } from '@fettle/findings';
import { readFixture } from '../language/harness/fixture.ts';

/** The fenced blocks of a help page, as fixtures. A block may hold several files; what it names is in the small shop. */

export interface HelpBlock {
  readonly code: string;
  readonly kind: 'wrong' | 'right';
  readonly source: string;
}

// biome-ignore lint/suspicious/noExplicitAny: any entry has a help page, whatever its facts
export function helpBlocks({ code, help }: CatalogueEntry<any>): HelpBlock[] {
  const printed = [...help.matchAll(/^```fettle (wrong|right)\n([\s\S]*?)^```$/gm)].map((found) => ({
    code,
    kind: found[1] as HelpBlock['kind'],
    source: found[2] ?? '',
  }));
  return [...printed, ...(tooLongToPrint[code] ?? []).map((block) => ({ code, ...block }))];
}

function nested(depth: number): string {
  const face = `face inset { ${'stack { '.repeat(depth)}drawer rest${' }'.repeat(depth)}   fronts thick 3/4 }`;
  return `piece "nest" { size 20 wide, 30 high, 15 deep   case { sides thick 3/4 } ${face} }`;
}

/** Examples that no one would print on a page. */
const tooLongToPrint: Readonly<Record<string, readonly Omit<HelpBlock, 'code'>[]>> = {
  'text-too-large': [
    { kind: 'wrong', source: nested(39) },
    { kind: 'right', source: nested(38) },
  ],
};

/** Beside the block lies a shop file, for whoever says `use "shop.fettle"`. */
export function withSmallShop(source: string): ReturnType<typeof readFixture> {
  const fixture = readFixture(source);
  if (fixture.files.some((file) => file.name === 'shop.fettle')) return fixture;
  return { ...fixture, files: [...fixture.files, { name: 'shop.fettle', text: smallShop }] };
}

const smallShop = `// A small shop: one of each.
units inches to 1/32
sheet "birch ply" nominal 3/4, actual 23/32, 96 long, 48 wide
sheet "thin ply"  nominal 1/4, actual 1/4, 60 long, 60 wide
board "oak"       any thickness, 8 wide, 120 long
slide "side mount 12" side mount, 12 long, 1-3/4 high, takes 1/2 each side
slide "side mount 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side
`;
