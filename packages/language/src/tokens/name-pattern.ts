import type { CustomPatternMatcherFunc } from 'chevrotain';
import { vocabulary } from '../schema/vocabulary.ts';

/**
 * Which quotation marks of a line belong together. A mark opens a name when a blank, a brace, a comma or a parenthesis
 * stands before it, and closes one when one of these follows: so a mark that was forgotten or thrown in costs one name,
 * not all that follow on its line. Knows characters and the vocabulary, no tokens.
 */

/** The name at `offset`, closed or not; null when the mark there is none that opens a name. */
export const matchName: CustomPatternMatcherFunc = (text, offset) => {
  if (!isQuote(text[offset])) return null;
  const touchesWord = isLetter(text[offset - 1]) && followsNameWord(text, offset);
  if (!opens(text, offset) && !touchesWord) {
    return isBeingTyped(text, offset) ? [text.slice(offset, offset + 1)] : null;
  }
  let end = offset + 1;
  /** A mark that neither opens nor closes: it closes the name if no better one does. */
  let loose: number | undefined;
  for (; end < text.length && !isLineEnd(text[end]); end++) {
    if (!isQuote(text[end])) continue;
    if (closes(text, end)) {
      const intruder = endOfNameAround(text, end);
      return [text.slice(offset, (intruder ?? end) + 1)];
    }
    if (opens(text, end)) break;
    loose ??= end;
  }
  // `drawer"left"` lacks a blank; in `door"s` the mark is the intruder.
  if (touchesWord) return null;
  if (loose !== undefined) return [text.slice(offset, loose + 1)];
  const rest = text.slice(offset, end);
  const cut = rest.search(/ {2}|[{},\t]|\/\//);
  const name = (cut > 0 ? rest.slice(0, cut) : rest).trimEnd();
  return isThrownIn(text, offset, name.slice(1), isQuote(text[end])) ? null : [name];
};

export function isQuote(character: string | undefined): boolean {
  return character === '"' || character === '“' || character === '”';
}

function opens(text: string, at: number): boolean {
  // In `""name"` the first mark is the intruder.
  const before = isQuote(text[at - 1]) ? text[at - 2] : text[at - 1];
  const after = text[at + 1];
  const beginsHere =
    isBlank(before) || '{},('.includes(before ?? ' ') || (isLetter(before) && followsNameWord(text, at));
  if (!beginsHere || isBlank(after)) return false;
  if (isQuote(after)) return !isQuote(text[at + 2]) && endsBefore(text[at + 2]);
  return !'{},'.includes(after ?? ' ') || isLetter(text[at + 2]);
}

/** A mark before words of the language, where no name is meant: `"share 1`, `"64 wide`. */
function isThrownIn(text: string, at: number, words: string, anotherFollows: boolean): boolean {
  const all = words.toLowerCase().split(/[ ,]+/);
  const known = vocabulary().words;
  const areKnown = all.every((word) => known.has(word) || /^[0-9]/.test(word));
  // A name may be called like a word of the language, several in a row are hardly a name.
  if (followsNameWord(text, at)) return areKnown && (all.length > 1 || anotherFollows);
  return words === '' || areKnown || known.has(all[0] ?? '');
}

/** The first mark of a name of which nothing is written yet. */
function isBeingTyped(text: string, at: number): boolean {
  return endsBefore(text[at + 1]) && !isQuote(text[at + 1]) && isBlank(text[at - 1]) && followsNameWord(text, at);
}

function closes(text: string, at: number): boolean {
  return !isBlank(text[at - 1]) && endsBefore(text[at + 1]);
}

function endsBefore(after: string | undefined): boolean {
  return isBlank(after) || after === ',' || after === '{' || after === '}' || after === ')' || isQuote(after);
}

/** In `"game" box"` the second mark is the intruder, unless words of the language stand behind it. */
function endOfNameAround(text: string, closing: number): number | undefined {
  let at = closing + 1;
  while (at < text.length && !isQuote(text[at]) && !isLineEnd(text[at])) at++;
  if (!isQuote(text[at]) || !closes(text, at)) return undefined;
  const between = text.slice(closing + 1, at);
  if (!/^ [^ {},()]+(?: [^ {},()]+)*$/.test(between)) return undefined;
  const { words } = vocabulary();
  const isNamePart = between.split(' ').every((word) => !words.has(word.toLowerCase()));
  return isNamePart && /[A-Za-z]/.test(between) ? at : undefined;
}

function followsNameWord(text: string, at: number): boolean {
  let end = at;
  while (text[end - 1] === ' ') end--;
  let start = end;
  while (start > 0 && /[A-Za-z-]/.test(text[start - 1] as string)) start--;
  return vocabulary().beforeNames.has(text.slice(start, end).toLowerCase());
}

function isLetter(character: string | undefined): boolean {
  return character !== undefined && /[A-Za-z0-9]/.test(character);
}

function isBlank(character: string | undefined): boolean {
  return character === undefined || /\s/.test(character);
}

function isLineEnd(character: string | undefined): boolean {
  return character === '\n' || character === '\r';
}
