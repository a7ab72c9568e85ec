/** Long texts: the sideboard over and over, each under a name of its own. */
export interface LongText {
  readonly text: string;
  readonly lines: number;
  readonly pieces: number;
  /** Behind the height of a drawer front in the piece in the middle, where a digit more makes it far too high. */
  readonly key: { readonly line: number; readonly character: number };
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
  const upToKey = text.slice(0, text.indexOf(keyWords, before.length) + keyWords.length).split('\n');
  return {
    text,
    lines: text.split('\n').length - 1,
    pieces,
    keyPiece: `${name} ${Math.floor(pieces / 2) + 1}`,
    key: { line: upToKey.length - 1, character: upToKey.at(-1)?.length ?? 0 },
  };
}
