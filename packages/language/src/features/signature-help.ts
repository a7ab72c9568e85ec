import type { LangiumDocument } from 'langium';
import type { SignatureHelpProvider } from 'langium/lsp';
import type {
  SignatureHelp,
  SignatureHelpOptions,
  SignatureHelpParams,
  SignatureInformation,
} from 'vscode-languageserver';
import type { FettleServices } from '../fettle-module.ts';
import type { PhraseItem } from '../schema/index.ts';
import { FettleLexer } from '../tokens/fettle-lexer.ts';
import { caretIn } from './caret.ts';
import { type Continuation, phraseProgress } from './phrase-progress.ts';

/**
 * What the statement under the caret can still say. A phrase that has begun stands first, with the word or number that
 * comes next marked; typing a blank shows help only inside such a phrase, asking for it shows all.
 */
export class FettleSignatureHelp implements SignatureHelpProvider {
  readonly #lexer: FettleLexer;

  constructor(services: FettleServices) {
    const lexer = services.parser.Lexer;
    if (!(lexer instanceof FettleLexer)) throw new Error('help inside a statement needs the lexer that sorts words');
    this.#lexer = lexer;
  }

  get signatureHelpOptions(): SignatureHelpOptions {
    return { triggerCharacters: [' '], retriggerCharacters: [','] };
  }

  provideSignatureHelp(document: LangiumDocument, params: SignatureHelpParams): SignatureHelp | undefined {
    const text = document.textDocument.getText();
    const offset = document.textDocument.offsetAt(params.position);
    // A word or number that is still being typed has not been said yet.
    const typed = /[^\s{}(),"“”]*$/.exec(text.slice(Math.max(0, offset - longestWord), offset))?.[0].length ?? 0;
    const standing = caretIn(this.#lexer, document, offset - typed)?.standing;
    if (standing?.spec === undefined) return undefined;
    const { spec, parts, noun } = standing;
    const { continuations, isWithin } = phraseProgress(spec, parts, noun);
    const isAsked = params.context?.triggerKind !== triggeredByCharacter || params.context.isRetrigger;
    if (continuations.length === 0 || (!isWithin && !isAsked)) return undefined;
    return {
      // Each phrase has its own next word.
      signatures: continuations.map(signature),
      activeSignature: 0,
      activeParameter: continuations[0]?.next ?? 0,
    };
  }
}

const longestWord = 200;
/** SignatureHelpTriggerKind.TriggerCharacter */
const triggeredByCharacter = 2;

function signature({ phrase, next }: Continuation): SignatureInformation {
  let label = '';
  const parameters = phrase.items.map((item, at) => {
    if (label !== '') label += ' ';
    const start = label.length;
    label += itemWords(item, phrase.items[at - 1], phrase.items[at + 1]);
    return { label: [start, label.length] as [number, number] };
  });
  const later = phrase.checked ? '' : ' Understood, and not checked yet.';
  return { label, documentation: `${phrase.doc}${later}`, parameters, activeParameter: next };
}

/** What is to be put in stands in brackets of its own, so that nobody takes it for a word to be typed. */
function itemWords(item: PhraseItem, before: PhraseItem | undefined, after: PhraseItem | undefined): string {
  if (item.kind === 'word') return item.word;
  if (item.refers || item.slot === 'path') return `"⟨${item.slot}⟩"`;
  if (item.slot === 'count') return '⟨how many⟩';
  if (item.slot !== 'length') return `⟨${item.slot}⟩`;
  const beside = [after, before].flatMap((each) => (each?.kind === 'word' ? (measureNames[each.word] ?? []) : []));
  return `⟨${beside[0] ?? 'length'}⟩`;
}

/** What one calls the measure that such a word stands beside. */
const measureNames: Readonly<Record<string, string>> = {
  wide: 'width',
  high: 'height',
  deep: 'depth',
  thick: 'thickness',
  up: 'height',
  apart: 'distance',
  from: 'distance',
  in: 'distance',
  above: 'height',
  behind: 'distance',
};
