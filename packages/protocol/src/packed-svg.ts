import { fieldsOf, isListOf, isText } from './fields.ts';

/**
 * How a drawing travels: most of its elements end in one of a few pens and colours, which travel once. Knows nothing of
 * what is drawn; a text of any kind comes out as it went in.
 */
export interface PackedSvg {
  readonly ends: readonly string[];
  /** With a mark and a letter where one of the ends stands. Without any ends it is the text itself. */
  readonly text: string;
}

/** Stands in no XML document, and takes one byte. */
const mark = '\u007f';
/** Letters from here on: so many ends have one. */
const firstLetter = 48;
const mostEnds = 70;

const endOfElement = / (?:fill|stroke)="[^>]*>/g;
const markedEnd = /\u007f([\s\S])/g;

export function packedSvg(svg: string): PackedSvg {
  if (svg.includes(mark)) return { ends: [], text: svg };
  const letters = new Map<string, string>();
  const text = svg.replace(endOfElement, (end) => {
    let letter = letters.get(end);
    if (letter === undefined) {
      if (letters.size === mostEnds) return end;
      letter = mark + String.fromCharCode(firstLetter + letters.size);
      letters.set(end, letter);
    }
    return letter;
  });
  return { ends: [...letters.keys()], text };
}

export function unpackedSvg({ ends, text }: PackedSvg): string {
  if (ends.length === 0) return text;
  return text.replace(markedEnd, (_, letter: string) => ends[letter.charCodeAt(0) - firstLetter] ?? '');
}

export function isPackedSvg(value: unknown): value is PackedSvg {
  const packed = fieldsOf(value);
  return packed !== undefined && isText(packed['text']) && isListOf(packed['ends'], isText);
}
