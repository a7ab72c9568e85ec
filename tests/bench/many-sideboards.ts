export interface Place {
  readonly line: number;
  readonly character: number;
}

/** Long texts: the sideboard over and over, each under a name of its own. */
export interface LongText {
  readonly text: string;
  readonly lines: number;
  readonly pieces: number;
  /** Behind the height of a drawer front in the piece in the middle, where a digit more makes it far too high. */
  readonly key: Place;
  /** Behind all that is said of that drawer, where a space asks what more may stand there. */
  readonly behind: Place;
  /** Behind the last letter of that drawer's name. */
  readonly inName: Place;
  /** Name of the piece the key is in. */
  readonly keyPiece: string;
}

const keyWords = 'front 6';

/** At least so many lines. `sideboard` is the example as it stands now. */
export function manySideboards(sideboard: string, atLeastLines: number): LongText {
  const begins = sideboard.indexOf('piece "');
  const head = sideboard.slice(0, begins);
  const piece = sideboard.slice(begins).trimEnd();
  const name = /^piece "([^"]*)"/.exec(piece)?.[1];
  if (begins < 0 || name === undefined || !piece.includes(keyWords)) {
    throw new Error(`the sideboard has changed: no piece with a name and '${keyWords}'`);
  }
  const pieces = Math.ceil(atLeastLines / (piece.split('\n').length + 1));
  const texts = Array.from({ length: pieces }, (_, at) => piece.replace(`"${name}"`, `"${name} ${at + 1}"`));
  const before = `${head}${texts.slice(0, Math.floor(pieces / 2)).join('\n\n')}\n\n`;
  const text = `${head}${texts.join('\n\n')}\n`;
  const lines = text.split('\n');
  const line = text.slice(0, text.indexOf(keyWords, before.length)).split('\n').length - 1;
  const words = lines[line] ?? '';
  return {
    text,
    lines: lines.length - 1,
    pieces,
    keyPiece: `${name} ${Math.floor(pieces / 2) + 1}`,
    key: { line, character: words.indexOf(keyWords) + keyWords.length },
    behind: { line, character: words.length },
    inName: { line, character: words.lastIndexOf('"') },
  };
}

/** So many places in words, numbers and names, spread over the whole text, the same ones every time. */
export function placesInWords({ text }: LongText, count: number): readonly Place[] {
  const words = text.split('\n').flatMap((line, at): readonly Place[] => {
    if (line.startsWith('//')) return [];
    return [...line.matchAll(/"[^"]+"|[a-z]+|\d+/g)].map(({ index }) => ({ line: at, character: index + 1 }));
  });
  return Array.from({ length: count }, (_, at) => words[Math.floor((at * words.length) / count)]).flatMap(
    (place) => place ?? [],
  );
}
