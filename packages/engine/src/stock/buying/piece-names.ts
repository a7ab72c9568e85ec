/** What is cut further has a name of its own: sheet 3 gives 3a and 3b, 3b gives 3b1 and 3b2, and so on in turn. */
export function nameInside(name: string, depth: number, at: number): string {
  return `${name}${depth % 2 === 0 ? letters(at) : at + 1}`;
}

/** a to z, then aa, ab. */
function letters(at: number): string {
  const last = String.fromCharCode(97 + (at % 26));
  return at < 26 ? last : `${letters(Math.floor(at / 26) - 1)}${last}`;
}
