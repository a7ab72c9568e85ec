import type { LangiumDocument, LangiumDocuments } from 'langium';
import type { CompletionProvider } from 'langium/lsp';
import {
  type CompletionItem,
  CompletionItemKind,
  CompletionList,
  type CompletionParams,
  InsertTextFormat,
  type Range,
} from 'vscode-languageserver';
import type { DocumentEvaluator } from '../evaluation/evaluate-document.ts';
import type { FettleServices } from '../fettle-module.ts';
import type { Noun, PhraseItem, SlotKind, StatementSpec } from '../schema/index.ts';
import { FettleLexer } from '../tokens/fettle-lexer.ts';
import { type Caret, caretIn } from './caret.ts';
import { fenced } from './markdown.ts';
import { type NamePlace, type OfferedName, offeredNames } from './offered-names.ts';
import { type Continuation, type PhraseProgress, phraseProgress } from './phrase-progress.ts';
import { phraseLabel, phraseSnippet, statementSnippet, withoutPlaces } from './snippets.ts';

/**
 * What may stand at the caret, by the vocabulary: phrases of the statement that is being written, names of the right
 * kind, statements of the braces around it. The grammar is not asked: to it all words are alike.
 */
export class FettleCompletionProvider implements CompletionProvider {
  readonly completionOptions = { triggerCharacters: ['"', '“'] };
  readonly #lexer: FettleLexer;
  readonly #evaluator: DocumentEvaluator;
  readonly #documents: LangiumDocuments;
  /** Whether the editor knows places to fill in. */
  #snippets = true;
  /** Whether the editor asks for what an offer means when it is looked at. */
  #asksLater = false;
  /** What the offers of the last list mean; an older one is shown no more. */
  #last: { readonly list: number; readonly docs: readonly string[] } = { list: 0, docs: [] };

  constructor(services: FettleServices) {
    const lexer = services.parser.Lexer;
    if (!(lexer instanceof FettleLexer)) throw new Error('completion needs the lexer that sorts words');
    this.#lexer = lexer;
    this.#evaluator = services.evaluation.DocumentEvaluator;
    this.#documents = services.shared.workspace.LangiumDocuments;
    services.shared.lsp.LanguageServer.onInitialize(({ capabilities }) => {
      const abilities = capabilities.textDocument?.completion?.completionItem;
      this.#snippets = abilities?.snippetSupport === true;
      this.#asksLater = abilities?.resolveSupport?.properties.includes('documentation') === true;
    });
  }

  getCompletion(document: LangiumDocument, params: CompletionParams): CompletionList {
    const offset = document.textDocument.offsetAt(params.position);
    const caret = caretIn(this.#lexer, document, offset);
    if (caret === undefined) return CompletionList.create([]);
    const { noun, spec, start, parts } = caret.standing;
    const progress = spec === undefined ? none : phraseProgress(spec, parts, noun);
    const place: NamePlace = {
      documents: this.#documents,
      document,
      evaluated: () => this.#evaluator.evaluate(document),
      offset,
      own: start,
    };
    const offers = caret.typing === 'name' ? nameOffers(place, progress, noun) : this.#all(place, caret, progress);
    const range: Range = {
      start: document.textDocument.positionAt(caret.range.start),
      end: document.textDocument.positionAt(caret.range.end),
    };
    this.#last = { list: this.#last.list + 1, docs: offers.map(({ doc }) => doc) };
    return CompletionList.create(offers.map((offer, index) => this.#item(offer, range, index)));
  }

  /** The item with what it means, or as it is when it is of a list that has been left. */
  resolveItem(item: CompletionItem): CompletionItem {
    const { list, index } = (item.data ?? {}) as { readonly list?: unknown; readonly index?: unknown };
    const doc = list === this.#last.list && typeof index === 'number' ? this.#last.docs[index] : undefined;
    return doc === undefined || doc === '' ? item : { ...item, documentation: { kind: 'markdown', value: doc } };
  }

  #all(place: NamePlace, caret: Caret, progress: PhraseProgress): Offer[] {
    const { noun, spec } = caret.standing;
    const fitting = progress.continuations.filter((each) => suits(each, noun, spec));
    const phrases = fitting.flatMap(phraseOffer);
    const names = nameOffers(place, { ...progress, continuations: fitting }, noun);
    if (progress.isWithin) return [...names, ...phrases];
    const statements = [...noun.statements.values()].map(statementOffer);
    const bare = (noun.bare?.phrases ?? []).flatMap((phrase) => phraseOffer({ phrase, next: 0 }));
    // A name that the statement still wants is what one most likely goes on with: slides, hinges, the stock of a part.
    const isWanted = fitting.some(
      ({ phrase, next }) => next === 0 && phrase.items.length === 1 && refers(phrase.items[0]),
    );
    const both = isWanted ? [...names, ...phrases] : [...phrases, ...names];
    const own = spec === noun.bare ? both : [...both, ...bare];
    // At the beginning of a line one most likely starts a statement, behind its word one goes on.
    return caret.isFirstOnLine ? [...statements, ...own] : [...own, ...statements];
  }

  #meaning(doc: string, index: number): Pick<CompletionItem, 'data' | 'documentation'> {
    return this.#asksLater
      ? { data: { list: this.#last.list, index } }
      : { documentation: { kind: 'markdown', value: doc } };
  }

  #item(offer: Offer, range: Range, index: number): CompletionItem {
    const isSnippet = this.#snippets && offer.hasPlaces;
    return {
      label: offer.label,
      kind: offer.kind,
      ...(offer.detail === '' ? {} : { detail: offer.detail, labelDetails: { description: offer.detail } }),
      ...(offer.doc === '' ? {} : this.#meaning(offer.doc, index)),
      filterText: offer.filter,
      sortText: String(index).padStart(4, '0'),
      insertTextFormat: isSnippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
      textEdit: { range, newText: isSnippet || !offer.hasPlaces ? offer.text : withoutPlaces(offer.text) },
    };
  }
}

function refers(item: PhraseItem | undefined): boolean {
  return item?.kind === 'slot' && item.refers;
}

const none: PhraseProgress = { continuations: [], isWithin: false };

interface Offer {
  readonly label: string;
  readonly kind: CompletionItemKind;
  readonly detail: string;
  readonly doc: string;
  /** What the letters typed so far are compared with. */
  readonly filter: string;
  readonly text: string;
  /** Whether the text has places to fill in. */
  readonly hasPlaces: boolean;
}

function statementOffer(spec: StatementSpec): Offer {
  return {
    label: spec.word,
    kind: CompletionItemKind.Keyword,
    detail: '',
    doc: withLater(spec.doc, spec.checked),
    filter: spec.word,
    text: statementSnippet(spec),
    hasPlaces: true,
  };
}

/** Nothing where a name comes next: that is offered by itself. */
function phraseOffer({ phrase, next }: Continuation): Offer[] {
  const item = phrase.items[next];
  const word = phrase.items.slice(next).find((each) => each.kind === 'word');
  if (item === undefined || word?.kind !== 'word') return [];
  if (item.kind === 'slot' && item.refers) return [];
  return [
    {
      label: phraseLabel(phrase, next),
      kind: CompletionItemKind.Property,
      detail: '',
      doc: withLater(phrase.doc, phrase.checked),
      filter: word.word,
      text: phraseSnippet(phrase, next),
      hasPlaces: true,
    },
  ];
}

/** Names of every kind that may come next, each once. Where a value may stand, so may a value with a name. */
function nameOffers(place: NamePlace, progress: PhraseProgress, noun: Noun): Offer[] {
  const beginnings = progress.isWithin ? [] : (noun.bare?.phrases ?? []).map((phrase) => ({ phrase, next: 0 }));
  const slots = new Set<SlotKind>();
  for (const { phrase, next } of [...progress.continuations, ...beginnings]) {
    const item = phrase.items[next];
    if (item?.kind === 'slot') slots.add(item.slot);
  }
  const offers = [...slots].flatMap((slot) => offeredNames(place, slot).map(nameOffer));
  const seen = new Set<string>();
  return offers.filter((offer) => !seen.has(offer.label) && seen.add(offer.label) !== undefined);
}

function nameOffer({ name, detail, written }: OfferedName): Offer {
  const quoted = `"${name}"`;
  return {
    label: quoted,
    kind: CompletionItemKind.Reference,
    detail,
    doc: written === '' ? '' : fenced(written, 'fettle'),
    filter: quoted,
    text: quoted,
    hasPlaces: false,
  };
}

/** In a row the sizes are widths, in a stack heights. */
function suits({ phrase, next }: Continuation, noun: Noun, spec: StatementSpec | undefined): boolean {
  if (spec?.declares !== 'cell') return true;
  const wrong = noun.id === 'row' ? 'high' : noun.id === 'stack' || noun.id === 'face' ? 'wide' : undefined;
  return !phrase.items.slice(next).some((item) => item.kind === 'word' && item.word === wrong);
}

function withLater(doc: string, checked: boolean): string {
  return checked ? doc : `${doc}\n\nUnderstood, and not checked yet.`;
}
