import {
  type Cell,
  type Figure,
  given,
  Length,
  type PieceDesign,
  Rational,
  type SizeAsked,
  type SlideEntry,
} from '@fettle/engine';
import type { Change, Mend, Origin } from '@fettle/findings';

/**
 * Does to a design what the language does to the text when a mend is taken: the figure, the words or the name at the
 * place of the change become others. A change whose place is nowhere in the design fails the test.
 */
export function mended(design: PieceDesign, mend: Mend, slides: readonly SlideEntry[] = []): PieceDesign {
  return mend.changes.reduce((before, change) => applied(before, change, slides), design);
}

function applied(design: PieceDesign, change: Change, slides: readonly SlideEntry[]): PieceDesign {
  let hits = 0;
  const walk = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(walk);
    if (typeof value !== 'object' || value === null || value instanceof Length || value instanceof Rational)
      return value;
    const replaced = replacement(value, change, slides);
    if (replaced !== undefined) {
      hits += 1;
      return replaced;
    }
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, walk(inner)]));
  };
  const result = walk(design) as PieceDesign;
  if (hits === 0) throw new Error(`nothing stands at the place of the change ${change.kind}`);
  return result;
}

function replacement(value: object, change: Change, slides: readonly SlideEntry[]): object | undefined {
  switch (change.kind) {
    case 'set-length': {
      const figure = value as Partial<Figure>;
      if (figure.reason?.kind !== 'given' || !isAt(figure.reason.origin, change.at)) return undefined;
      const length = Length.fromMeasure(change.to);
      if (length === undefined) throw new Error('not a length');
      return given(length, change.at);
    }
    case 'set-words': {
      const cell = value as Partial<Cell>;
      if (cell.sizeOrigin === undefined || cell.along === undefined || !isAt(cell.sizeOrigin, change.at))
        return undefined;
      return { ...value, along: wordsAsked(change.words) };
    }
    case 'set-name': {
      const at = (value as { slidesOrigin?: Origin }).slidesOrigin;
      if (at === undefined || !isAt(at, change.at)) return undefined;
      const entry = slides.find(({ name }) => name === change.name);
      if (entry === undefined) throw new Error(`the shop has no ${change.name}`);
      return { ...value, slides: entry };
    }
    default:
      throw new Error(`no mend of the engine makes a change of kind ${change.kind}`);
  }
}

function wordsAsked(words: string): SizeAsked {
  if (words === 'rest') return { kind: 'rest' };
  if (words === 'share 1') return { kind: 'share', weight: Rational.one };
  throw new Error(`the engine writes no such words: ${words}`);
}

function isAt(a: Origin, b: Origin): boolean {
  return a.unit === b.unit && a.start === b.start && a.end === b.end;
}
