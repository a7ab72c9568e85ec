/** How names enter SVG: nothing in them can end an attribute or start an element, nothing is illegal in XML. */

/** Most of what is written are numbers and words of our own, in which there is nothing to escape. */
const HARMLESS = /^[\w .,:#()-]*$/;

/** Characters XML 1.0 does not allow, and halves of characters. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must go.
const ILLEGAL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]|\p{Surrogate}/gu;

export function escapeText(text: string): string {
  if (HARMLESS.test(text)) return text;
  return text.replace(ILLEGAL, '').replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}

export function escapeAttribute(text: string): string {
  if (HARMLESS.test(text)) return text;
  return escapeText(text)
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;')
    .replace(/[\t\n\r]/g, ' ');
}

/**
 * A name as an id: letters, digits, hyphens and underscores stay, the rest becomes `.` and a number, so that different
 * names stay different. Beyond 80 characters a checksum stands for the rest.
 */
export function idOf(name: string): string {
  const whole = name.length > 200 ? `${name.slice(0, 200)}~${checksum(name)}` : name;
  const safe = whole.replace(/[^A-Za-z0-9_-]/g, (character) => `.${character.charCodeAt(0).toString(16)}.`);
  return safe.length <= 80 ? safe : `${safe.slice(0, 70)}.${checksum(name)}`;
}

/** FNV-1a, 32 bits, in hexadecimal; stable on every machine. */
function checksum(text: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) {
    hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  }
  return (hash >>> 0).toString(16).padStart(8, '0');
}
