import type { Box, Text } from './primitives.ts';

/**
 * How much room letters take, guessed from above: for each character the wider of two common sans-serif faces, so
 * that what is said to fit does fit whatever face the reader's machine has. Cleans and cuts names, too. Knows nothing
 * of pieces.
 */

/** Heights of capitals in mm (ISO 3098 series). Nothing on a sheet is smaller than the first. */
export const LETTER_HEIGHTS_MM = { small: 2.5, normal: 3.5, large: 5 } as const;

/** A face's nominal size over the height of its capitals: 1/0.72 suits the faces in use (0.69 to 0.73). */
export const SIZE_OVER_CAPITAL = 1 / 0.72;

/** Highest stroke above the baseline and lowest below it, in nominal sizes. */
const ASCENT = 0.78;
const DESCENT = 0.24;

/** Advance widths in thousandths of the nominal size, from U+0020 to U+007E. */
const ADVANCES = [
  318, 401, 460, 838, 637, 951, 780, 275, 391, 391, 500, 838, 318, 361, 318, 337, 637, 637, 637, 637, 637, 637, 637,
  637, 637, 637, 337, 337, 838, 838, 838, 557, 1016, 685, 687, 723, 771, 667, 611, 778, 752, 295, 500, 667, 558, 863,
  749, 788, 667, 788, 723, 667, 611, 732, 685, 989, 686, 667, 686, 391, 337, 391, 838, 557, 500, 613, 635, 550, 635,
  616, 353, 635, 634, 278, 278, 580, 278, 975, 634, 612, 635, 635, 412, 521, 393, 634, 592, 818, 592, 592, 525, 637,
  337, 637, 838,
];
/** Latin letters with accents, Greek, Cyrillic: as wide as a wide letter. */
const OTHER_LETTER = 800;
/** Ideographs, emoji and whatever else: a full square and a bit. */
const FULL_WIDTH = 1100;

function advance(codePoint: number): number {
  if (codePoint >= 0x20 && codePoint <= 0x7e) return ADVANCES[codePoint - 0x20] ?? FULL_WIDTH;
  if (codePoint === 0x2032 || codePoint === 0x2033) return 380;
  return codePoint < 0x0530 ? OTHER_LETTER : FULL_WIDTH;
}

/** Width in mm of one line of text whose capitals are `height` mm high. */
export function textWidth(text: string, height: number): number {
  let thousandths = 0;
  for (const character of text) thousandths += advance(character.codePointAt(0) ?? 0);
  return (thousandths / 1000) * height * SIZE_OVER_CAPITAL;
}

/** From the highest to the lowest stroke of a line of text. */
export function textDepth(height: number): number {
  return (ASCENT + DESCENT) * height * SIZE_OVER_CAPITAL;
}

/** How far a baseline lies above the lowest stroke. */
export function textDescent(height: number): number {
  return DESCENT * height * SIZE_OVER_CAPITAL;
}

/** The box a text is sure to stay in. */
export function textBox(text: Text): Box {
  const width = textWidth(text.text, text.height);
  const before = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? width / 2 : width;
  const up = ASCENT * text.height * SIZE_OVER_CAPITAL;
  const down = DESCENT * text.height * SIZE_OVER_CAPITAL;
  const { x, y } = text.at;
  return text.runs === 'across'
    ? { left: x - before, top: y - up, right: x - before + width, bottom: y + down }
    : { left: x - up, top: y + before - width, right: x + down, bottom: y + before };
}

/** A text whose box is centred on a point. */
export function centredText(
  words: Pick<Text, 'role' | 'text' | 'height' | 'runs'>,
  centre: { readonly x: number; readonly y: number },
): Text {
  const lower = ((ASCENT - DESCENT) / 2) * words.height * SIZE_OVER_CAPITAL;
  const at = words.runs === 'across' ? { x: centre.x, y: centre.y + lower } : { x: centre.x + lower, y: centre.y };
  return { kind: 'text', ...words, at, anchor: 'middle' };
}

/** Longer names than this are cut before anything is measured. */
const LONGEST_NAME = 60;

/** Most names are, as they stand. */
const FIT_FOR_PAPER = /^(?:[\w.,:"'()/-]+(?: [\w.,:"'()/-]+)*)?$/;

/**
 * A name fit for paper: no control characters, no marks that turn the direction of writing, no half characters, one
 * line, at most 60 characters (then it ends in an ellipsis).
 */
export function cleanName(name: string): string {
  if (name.length <= LONGEST_NAME && FIT_FOR_PAPER.test(name)) return name;
  // Enough of a very long name to find 60 characters in; the rest is never looked at.
  const head = name.slice(0, LONGEST_NAME * 8);
  const clean = head
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must go.
    .replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, ' ')
    .replace(/[\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff\ufff0-\uffff]|\p{Surrogate}/gu, '')
    .replace(/\s+/g, ' ')
    .trim();
  const characters = Array.from(clean);
  const cut = characters.length > LONGEST_NAME || name.length > head.length;
  return cut
    ? `${characters
        .slice(0, LONGEST_NAME - 1)
        .join('')
        .trimEnd()}…`
    : clean;
}

/** The text, or as much of its beginning as fits with an ellipsis; undefined if not even `least` characters fit. */
export function fitText(text: string, height: number, width: number, least = 4): string | undefined {
  if (textWidth(text, height) <= width) return text;
  const characters = Array.from(text);
  for (let count = characters.length - 1; count >= least; count--) {
    const cut = `${characters.slice(0, count).join('').trimEnd()}…`;
    if (textWidth(cut, height) <= width) return cut;
  }
  return undefined;
}

/** Broken between words where it is longer than `width`; lines after the first have so much less room as they hang in. */
export function linesOf(words: string, height: number, width: number, hanging = 0): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const last = lines[lines.length - 1];
    const longer = `${last ?? ''} ${word}`;
    const room = lines.length < 2 ? width : width - hanging;
    if (last === undefined) lines.push(word);
    else if (textWidth(longer, height) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
