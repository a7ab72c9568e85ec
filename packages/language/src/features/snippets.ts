import type { Phrase, PhraseItem, StatementSpec } from '../schema/index.ts';

/** Words of the language with places to fill in, in the notation of editors. */

/** A phrase from its item `from` on: `front ${1:length} high`. */
export function phraseSnippet(phrase: Phrase, from: number): string {
  let place = 0;
  return phrase.items
    .slice(from)
    .map((item) => (item.kind === 'word' ? item.word : slotSnippet(item, ++place)))
    .join(' ');
}

/** A phrase as one reads it in a list: `front … high`. */
export function phraseLabel(phrase: Phrase, from: number): string {
  return phrase.items
    .slice(from)
    .map((item) => (item.kind === 'word' ? item.word : item.refers || item.slot === 'path' ? '"…"' : '…'))
    .join(' ');
}

/** A statement with its name and its braces, where it has them. */
export function statementSnippet(spec: StatementSpec): string {
  const name = spec.declares === undefined ? '' : ' "$1"';
  return needsBody(spec) ? `${spec.word}${name} {\n  $0\n}` : `${spec.word}${name} $0`;
}

/** Without places to fill in, for editors that know none. */
export function withoutPlaces(snippet: string): string {
  return snippet
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace(/\$\d+/g, '')
    .trimEnd();
}

function slotSnippet(item: PhraseItem & { readonly kind: 'slot' }, place: number): string {
  if (item.slot === 'path') return `"$${place}"`;
  return item.refers ? `"$${place}"` : `\${${place}:${item.slot}}`;
}

/** A front may do without a body; a row, a case or a thing says nothing without one. */
function needsBody(spec: StatementSpec): boolean {
  const body = spec.body?.();
  if (body === undefined) return false;
  if (spec.declares === 'cell') return body.statements.has('drawer');
  return spec.declares !== undefined || spec.phrases.length === 0 || body.statements.has('drawer');
}
