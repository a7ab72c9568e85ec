/** Makes names of pieces into names of files that every system takes and that lead nowhere else. */

/** Leaves room for what is put behind it: systems end a name after 255 bytes. */
const mostBytes = 120;

/**
 * One name for each piece, in their order: small letters, digits and hyphens, 'games-sideboard'. No two are the same,
 * also where a system takes small and capital letters for the same; later ones are numbered.
 */
export function fileNames(pieces: readonly string[]): readonly string[] {
  const plain = pieces.map(plainName);
  // A piece that is really called 'chest 2' keeps its name before a second 'chest' is given it.
  const taken = new Set(plain);
  const used = new Set<string>();
  return plain.map((name) => {
    let fresh = name;
    for (let count = 2; used.has(fresh) || (fresh !== name && taken.has(fresh)); count++) fresh = `${name}-${count}`;
    used.add(fresh);
    return fresh;
  });
}

function plainName(piece: string): string {
  const hyphened = piece
    .normalize('NFC')
    .toLowerCase()
    .replaceAll(/[^\p{Letter}\p{Mark}\p{Number}]+/gu, '-');
  let name = '';
  let bytes = 0;
  for (const character of hyphened) {
    bytes += Buffer.byteLength(character);
    if (bytes > mostBytes) break;
    name += character;
  }
  return name.replaceAll(/^-+|-+$/g, '') || 'piece';
}
