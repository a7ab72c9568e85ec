/**
 * The vocabulary's building blocks. A statement is a word with phrases; a phrase is small words around slots, written
 * as it is read: `<length> in from back edge`. One entry gives parsing, completion, hover, reference page, formatting
 * and reading. This file knows nothing of tokens or trees.
 */

const valueSlots = ['length', 'number', 'count', 'path'] as const;
const nameSlots = [
  'stock',
  'slide',
  'hinge',
  'pull',
  'cell',
  'flitch',
  'thing',
  'pattern',
  'parameter',
  'dowel',
  'screw',
  'tenon',
] as const;

/** What may stand in a slot. Names of things point at statements that declare them. */
export type SlotKind = (typeof valueSlots)[number] | (typeof nameSlots)[number];

const referenceSlots: ReadonlySet<string> = new Set(nameSlots);
const slotKinds: ReadonlySet<string> = new Set([...valueSlots, ...nameSlots]);

/**
 * The kinds of name a statement may declare. `value` is a named length or number; `parameter` is a value of a pattern
 * as a use of that pattern names it.
 */
export type NameKind = (typeof nameSlots)[number] | 'piece' | 'value' | 'label' | 'tool';

export type PhraseItem =
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'slot'; readonly slot: SlotKind; readonly refers: boolean };

export interface Phrase {
  /** As it is read: the key under which a reader asks for it. */
  readonly pattern: string;
  readonly items: readonly PhraseItem[];
  readonly doc: string;
  /** False while the words are understood but nothing is computed from them. */
  readonly checked: boolean;
}

export interface StatementSpec<Pattern extends string = string> {
  readonly word: string;
  readonly doc: string;
  readonly declares: NameKind | undefined;
  /** Longest first, so that none is taken for the beginning of another. */
  readonly phrases: readonly Phrase[];
  /** As the vocabulary has them, the usual ones first: the order in which they are offered and explained. */
  readonly asWritten: readonly Phrase[];
  readonly patterns?: Pattern;
  /** What the body is; absent when there is none. A function, so that nouns may contain themselves. */
  readonly body: (() => Noun) | undefined;
  readonly checked: boolean;
  /** Shown in the outline. */
  readonly outlined: boolean;
}

/** What a pair of braces encloses. */
export interface Noun {
  readonly id: string;
  readonly doc: string;
  readonly statements: ReadonlyMap<string, StatementSpec>;
  /** A statement that starts with a value or a quoted name, as `12 wide, 12 deep`. */
  readonly bare: StatementSpec | undefined;
}

type PhraseDocs<Pattern extends string> = Readonly<Record<Pattern, string | { readonly later: string }>>;

function toPhrase(pattern: string, doc: string | { readonly later: string }): Phrase {
  const items = pattern.split(' ').map((word): PhraseItem => {
    const slot = /^<(\w+)>$/.exec(word)?.[1];
    if (slot === undefined) return { kind: 'word', word };
    if (!slotKinds.has(slot)) throw new Error(`the schema names an unknown slot <${slot}> in '${pattern}'`);
    return { kind: 'slot', slot: slot as SlotKind, refers: referenceSlots.has(slot) };
  });
  return typeof doc === 'string'
    ? { pattern, items, doc, checked: true }
    : { pattern, items, doc: doc.later, checked: false };
}

/** Phrases keyed by the way they are read; `{ later: doc }` marks one that is understood but not computed yet. */
export function statement<const Pattern extends string = never>(
  word: string,
  doc: string,
  more: {
    readonly declares?: NameKind;
    readonly phrases?: PhraseDocs<Pattern>;
    readonly body?: () => Noun;
    readonly checked?: boolean;
    readonly outlined?: boolean;
  } = {},
): StatementSpec<Pattern> {
  const asWritten = Object.entries(more.phrases ?? {}).map(([pattern, text]) =>
    toPhrase(pattern, text as string | { readonly later: string }),
  );
  // `in groove <length> deep` is tried before a shorter phrase that begins alike.
  const phrases = asWritten.toSorted((a, b) => b.items.length - a.items.length);
  return {
    word,
    doc,
    declares: more.declares,
    phrases,
    asWritten,
    body: more.body,
    checked: more.checked ?? true,
    outlined: more.outlined ?? more.declares !== undefined,
  };
}

export function noun(id: string, doc: string, statements: readonly StatementSpec[], bare?: StatementSpec): Noun {
  return { id, doc, statements: new Map(statements.map((each) => [each.word, each])), bare };
}
