import type { Piece } from './text-items.ts';

/** Collects a printed text piece by piece, and remembers where each piece came to stand. */
export class WrittenLines {
  #text = '';
  readonly #lineEnd: string;
  readonly #places: { readonly piece: Piece; readonly start: number }[] = [];

  constructor(lineEnd: string) {
    this.#lineEnd = lineEnd;
  }

  get text(): string {
    return this.#text;
  }

  /** Each piece with its offset in the printed text, in order. */
  get places(): readonly { readonly piece: Piece; readonly start: number }[] {
    return this.#places;
  }

  /** Columns used on the line being written. */
  get column(): number {
    return this.#text.length - (this.#text.lastIndexOf('\n') + 1);
  }

  write(piece: Piece): void {
    this.#places.push({ piece, start: this.#text.length });
    this.#text += piece.text;
  }

  space(count = 1): void {
    this.#text += ' '.repeat(count);
  }

  /** Starts a line; the very first line of a text is there already. */
  line(depth: number): void {
    if (this.#text !== '') this.#text += this.#lineEnd;
    this.#text += ' '.repeat(depth * 2);
  }

  blankLine(): void {
    this.#text += this.#lineEnd;
  }

  end(): void {
    if (this.#text !== '') this.#text += this.#lineEnd;
  }
}
