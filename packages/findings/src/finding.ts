/**
 * What a finding is: typed facts about one thing that is wrong, where it stands in the text, and how it may be
 * mended. This room knows nothing of layout, of the parser or of any editor; a finding travels as data and becomes a
 * sentence only at the edge, through `wording`.
 */

/** A stretch of text: `unit` names the text it lies in (a piece, a shop entry), offsets count from that text's start. */
export interface Origin {
  readonly unit: string;
  readonly start: number;
  readonly end: number;
}

/** A length as the catalogue sees it: exact and opaque. Only `Say` turns one into words. */
export interface Measure {
  /** Exact inches in lowest terms, such as `591/64`. */
  readonly exactInches: string;
}

/** How the edge speaks: in the reader's unit, on the reader's ruler. */
export interface Say {
  /** A length in the piece's units, such as `10-11/32"`; off the ruler's grid it is shown exactly. */
  length(measure: Measure): string;
  /** A name in the reader's own quotes. */
  name(name: string): string;
}

/** `error`: cannot be built as written. `warning`: will disappoint. `note`: worth knowing, nothing is wrong. */
export type Severity = 'error' | 'warning' | 'note';

/** A proposed change to the design. The language turns it into an edit of the text; lengths are never rounded. */
export type Change =
  | { readonly kind: 'set-length'; readonly at: Origin; readonly to: Measure }
  | { readonly kind: 'set-words'; readonly at: Origin; readonly words: string }
  | { readonly kind: 'set-name'; readonly at: Origin; readonly name: string }
  | { readonly kind: 'insert-words'; readonly after: Origin; readonly words: string }
  | { readonly kind: 'remove'; readonly at: Origin };

/** One way out. `how` picks the title from the catalogue entry; `values` are what that title speaks of. */
export interface Mend {
  readonly how: string;
  readonly values: Readonly<Record<string, Measure | string | number>>;
  readonly changes: readonly Change[];
  /** It cannot change what was meant, so it may be applied together with others without looking. */
  readonly safe?: boolean;
}

/** The other party of a clash; `role` picks the sentence from the catalogue entry. */
export interface Related {
  readonly role: string;
  readonly values: Readonly<Record<string, Measure | string | number>>;
  readonly origin: Origin;
}

export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly facts: Readonly<Record<string, unknown>>;
  readonly origin: Origin;
  readonly related: readonly Related[];
  /** Best first. */
  readonly mends: readonly Mend[];
}

type Values = Readonly<Record<string, Measure | string | number>>;

/** One entry of the catalogue: everything about a code that is not computation. One file per code. */
export interface CatalogueEntry<Facts extends Readonly<Record<string, unknown>>> {
  /** Stable, kebab-case, made of trade words; never reused for something else. */
  readonly code: string;
  readonly severity: Severity;
  /** The heading of its help page. */
  readonly title: string;
  /** What is wrong, by how much, against which limit. No full stop at the end. */
  headline(facts: Facts, say: Say): string;
  /**
   * The gist in at most 60 characters, with the number that matters, for a status bar: `3/16" too much`. Where it is
   * left out, what stands after the headline's last colon serves.
   */
  brief?(facts: Facts, say: Say): string;
  readonly related: Readonly<Record<string, (values: Values, say: Say) => string>>;
  readonly mends: Readonly<Record<string, (values: Values, say: Say) => string>>;
  /**
   * The help page in Markdown. Its fenced blocks tagged `fettle wrong` and `fettle right` are run by the tests: the
   * first must give exactly this finding, the second none.
   */
  readonly help: string;
}

/** Makes an entry into a maker of findings whose facts are checked by the compiler. */
export interface FindingKind<Facts extends Readonly<Record<string, unknown>>> extends CatalogueEntry<Facts> {
  at(
    origin: Origin,
    facts: Facts,
    more?: { readonly related?: readonly Related[]; readonly mends?: readonly Mend[]; readonly severity?: Severity },
  ): Finding;
}

export function defineFinding<Facts extends Readonly<Record<string, unknown>>>(
  entry: CatalogueEntry<Facts>,
): FindingKind<Facts> {
  return {
    ...entry,
    at: (origin, facts, more = {}) => ({
      code: entry.code,
      severity: more.severity ?? entry.severity,
      facts,
      origin,
      related: more.related ?? [],
      mends: more.mends ?? [],
    }),
  };
}
