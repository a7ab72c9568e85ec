import { byEachOther, type Figure, type Length, type Units } from '@fettle/engine';
import type { Origin, Say } from '@fettle/findings';
import { AstUtils, type LangiumDocument, type LangiumDocuments, UriUtils } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import type { Hover, HoverParams } from 'vscode-languageserver';
import type { DocumentEvaluator, EvaluatedPiece } from '../evaluation/evaluate-document.ts';
import { sayIn } from '../evaluation/say.ts';
import type { FettleServices } from '../fettle-module.ts';
import { type Expression, isExpression, isPlainText, isReference, type Statement } from '../generated/ast.ts';
import { fileDeclarations, pieceOf, specOf } from '../names/declarations.ts';
import { kindOfReference } from '../names/kind-of-reference.ts';
import { documentsAt } from '../names/used-files.ts';
import { findName, nameKindWords } from '../names/visible-names.ts';
import type { ReadPhrase } from '../reading/phrases.ts';
import { type ReadContext, readLength, readNumber, unitsAt } from '../reading/reader.ts';
import { fileUnitId, pieceUnitId } from '../reading/text-units.ts';
import type { NameKind } from '../schema/index.ts';
import { type ComputedSize, type StatementSizes, sizesByStatement, stepsTo } from './computed-sizes.ts';
import { derivations, type PlaceOf } from './derivations.ts';
import { linkedPlaces } from './linked-places.ts';
import { fenced, plainMarkdown } from './markdown.ts';
import { type Spot, spotAt } from './spot.ts';

/**
 * What a word, a number or a name under the pointer means, and the terms of every size it leads to. The terms come from
 * the engine; this file chooses which to tell.
 */
export class FettleHoverProvider implements HoverProvider {
  readonly #evaluator: DocumentEvaluator;
  readonly #documents: LangiumDocuments;

  constructor(services: FettleServices) {
    this.#evaluator = services.evaluation.DocumentEvaluator;
    this.#documents = services.shared.workspace.LangiumDocuments;
  }

  getHoverContent(document: LangiumDocument, params: HoverParams): Hover | undefined {
    const spot = spotAt(document, document.textDocument.offsetAt(params.position));
    if (spot === undefined) return undefined;
    const paragraphs = this.#paragraphs(document, spot);
    if (paragraphs.length === 0) return undefined;
    const at = (offset: number) => document.textDocument.positionAt(offset);
    return {
      contents: { kind: 'markdown', value: paragraphs.join('\n\n') },
      range: { start: at(spot.range.start), end: at(spot.range.end) },
    };
  }

  #paragraphs(document: LangiumDocument, spot: Spot): string[] {
    const piece = this.#pieceAt(document, spot.statement);
    const known = piece === undefined ? undefined : sizesByStatement(piece.evaluation);
    const own = known?.get((spot.statement.$cstNode?.offset ?? 0) - (piece?.range.start ?? 0)) ?? [];
    switch (spot.kind) {
      case 'head':
        return spot.spec.word === ''
          ? []
          : [`**${spot.spec.word}** · ${spot.spec.doc}`, ...summary(own, piece?.say), ...later(spot.spec.checked)];
      case 'name':
        return [declared(spot.statement, spot.name), ...this.#derivations(document, own, piece)];
      case 'part':
        return this.#part(document, spot, { piece, own, all: [...(known?.values() ?? [])].flat() });
      default: {
        const unknown: never = spot;
        return unknown;
      }
    }
  }

  #pieceAt(document: LangiumDocument, statement: Statement): EvaluatedPiece | undefined {
    const piece = pieceOf(statement);
    if (piece === undefined) return undefined;
    return this.#evaluator.evaluate(document).pieces.find((each) => each.range.start === piece.$cstNode?.offset);
  }

  #part(document: LangiumDocument, spot: Spot & { kind: 'part' }, sizes: SizesAround): string[] {
    const { part, phrase, statement } = spot;
    const words = phrase === undefined ? [] : [phraseDoc(phrase)];
    const rest = phrase === undefined ? [] : later(phrase.phrase.checked && spot.spec.checked);
    if (isPlainText(part)) return [...words, ...this.#usedFile(document, part.text)];
    if (isReference(part)) {
      return [...this.#named(document, statement, part), ...words, ...rest];
    }
    if (phrase === undefined) return [];
    const expression = phrase.slots.find(isExpression);
    const value = expression === undefined ? undefined : this.#value(document, statement, phrase, expression);
    return [
      ...words,
      ...(value === undefined ? [] : [value]),
      ...leadsTo(statement, phrase, sizes, this.#places(document, sizes)),
      ...rest,
    ];
  }

  #places(document: LangiumDocument, { piece }: SizesAround): PlaceOf {
    return piece === undefined ? () => undefined : linkedPlaces(this.#documents, document, piece);
  }

  /** What a figure or a sum comes to. */
  #value(
    document: LangiumDocument,
    statement: Statement,
    phrase: ReadPhrase,
    expression: Expression,
  ): string | undefined {
    const units = unitsAt(statement);
    const context: ReadContext = {
      documents: this.#documents,
      unit: { id: fileUnitId, start: 0, document },
      units,
      findings: [],
      touched: new Set(),
    };
    const written = expression.$cstNode?.text ?? '';
    const slot = phrase.phrase.items.find((item) => item.kind === 'slot');
    if (slot?.kind === 'slot' && slot.slot !== 'length') {
      const number = readNumber(context, expression, 'number')?.toString();
      return number === undefined || number === written ? undefined : `${plainMarkdown(written)} = ${number}`;
    }
    const length = readLength(context, expression)?.length;
    if (length === undefined) return undefined;
    const wanted = this.#evaluator.shownFor(units);
    const shown = `${sayIn(wanted).length(length)} · ${inOtherUnits(length, wanted)}`;
    return expression.$type === 'Quantity' ? shown : `${plainMarkdown(written)} = ${shown}`;
  }

  #named(document: LangiumDocument, statement: Statement, reference: Expression & { $type: 'Reference' }): string[] {
    const kind = kindOfReference(reference)?.kind ?? 'value';
    const found = findName(this.#documents, document, statement, kind, reference.target.$refText);
    if (found === undefined) return [];
    const home = AstUtils.getDocument(found.statement);
    const where = home === document ? '' : ` · ${plainMarkdown(UriUtils.basename(home.uri))}`;
    const lines = [`${declared(found.statement, found.name)}${where}`];
    const piece = this.#pieceAt(home, found.statement);
    if (kind === 'cell' && piece !== undefined) {
      const own = sizesByStatement(piece.evaluation).get((found.statement.$cstNode?.offset ?? 0) - piece.range.start);
      return [...lines, ...this.#derivations(home, own ?? [], piece)];
    }
    return [...lines, fenced(headText(found.statement), 'fettle')];
  }

  #usedFile(document: LangiumDocument, path: string): string[] {
    const tables = documentsAt(this.#documents, document, path).map(fileDeclarations);
    const sizes = new Map<NameKind, number>();
    for (const table of tables) for (const [kind, names] of table) sizes.set(kind, (sizes.get(kind) ?? 0) + names.size);
    const counts = [...sizes].map(([kind, size]) => `${nameKindWords[kind]} ${size}`);
    return counts.length === 0 ? [] : [`Declares: ${counts.join(', ')}`];
  }

  #derivations(home: LangiumDocument, own: readonly StatementSizes[], piece: EvaluatedPiece | undefined): string[] {
    const along = own.find((each) => each.kind === 'cell');
    if (along === undefined || piece === undefined) return [];
    const [first] = along.sizes;
    return derivations(
      along.sizes.filter((size) => size.axis === first?.axis),
      piece.say,
      linkedPlaces(this.#documents, home, piece),
    );
  }
}

interface SizesAround {
  readonly piece: EvaluatedPiece | undefined;
  readonly own: readonly StatementSizes[];
  readonly all: readonly StatementSizes[];
}

const mostDerivations = 3;
const mostLeadsTo = 5;
const axisOfWord: Readonly<Record<string, ComputedSize['axis']>> = {
  wide: 'wide',
  high: 'high',
  deep: 'deep',
  thick: 'thick',
  long: 'long',
};

/** The sizes of the phrase's own statement with their terms, then the nearest others that depend on it. */
function leadsTo(
  statement: Statement,
  phrase: ReadPhrase,
  { piece, own, all }: SizesAround,
  places: PlaceOf,
): string[] {
  if (piece === undefined) return [];
  const first = phrase.parts[0]?.$cstNode;
  const last = phrase.parts.at(-1)?.$cstNode;
  if (first === undefined || last === undefined) return [];
  const start = piece.range.start;
  const origin: Origin = { unit: pieceUnitId, start: first.offset - start, end: last.end - start };
  const known = new Map<Figure, number | undefined>();
  const axis = phrase.phrase.items.map((item) => (item.kind === 'word' ? axisOfWord[item.word] : undefined));
  const ownAxis = axis.find((each) => each !== undefined) ?? own.find((each) => each.kind === 'cell')?.sizes[0]?.axis;
  const sizesPhrase = specOf(statement).spec.declares === 'cell' || specOf(statement).spec.word === 'size';
  const mine = own
    .flatMap((each) => each.sizes.map((size) => ({ ...size, of: each.of })))
    .filter((size) => (sizesPhrase ? size.axis === ownAxis : stepsTo(size.figure, origin, known) !== undefined))
    // What is only the number itself has been said.
    .filter((size) => stepsTo(size.figure, origin, known) !== 0);
  const told = new Set(mine.map((size) => size.figure));
  const others = all
    .flatMap((each) => each.sizes.map((size) => ({ ...size, of: each.of })))
    .flatMap((size) => {
      const steps = told.has(size.figure) ? undefined : stepsTo(size.figure, origin, known);
      return steps === undefined || steps === 0 ? [] : [{ size, steps }];
    })
    .sort((a, b) => a.steps - b.steps);
  const seen = new Set<Figure>();
  const nearest = others.filter(({ size }) => !seen.has(size.figure) && seen.add(size.figure) !== undefined);
  const { say } = piece;
  const lines = nearest.slice(0, mostLeadsTo).map(({ size }) => `- ${called(size)} ${say.length(size.figure.length)}`);
  if (nearest.length > mostLeadsTo) lines.push(`- and ${nearest.length - mostLeadsTo} more`);
  return [
    ...derivations(distinct(mine).slice(0, mostDerivations), say, places),
    ...(lines.length === 0 ? [] : [`It leads to:\n${lines.join('\n')}`]),
  ];
}

function distinct<Size extends ComputedSize>(sizes: readonly Size[]): Size[] {
  const seen = new Set<Figure>();
  return sizes.filter((size) => !seen.has(size.figure) && seen.add(size.figure) !== undefined);
}

function called(size: ComputedSize & { readonly of: string }): string {
  return plainMarkdown(size.of === '' ? size.label : `${size.label} of ${size.of}`);
}

/** One line for each thing a statement makes. */
function summary(own: readonly StatementSizes[], say: Say | undefined): string[] {
  if (say === undefined || own.length === 0) return [];
  const parts = own.filter((each) => each.kind === 'part');
  const sizes = own
    .filter((each) => each.kind !== 'part')
    .flatMap((each) => each.sizes.map((size) => `${plainMarkdown(size.label)} ${say.length(size.figure.length)}`));
  const lines = parts.map((each) => {
    const sizes = byEachOther(...each.sizes.map((size) => say.length(size.figure.length)));
    return `${plainMarkdown(each.of)} ${sizes}`;
  });
  const all = [...sizes, ...lines];
  const shown = all.slice(0, mostLeadsTo * 2).map((line) => `- ${line}`);
  if (all.length > shown.length) shown.push(`- and ${all.length - shown.length} more`);
  return [shown.join('\n')];
}

function declared(statement: Statement, name: string): string {
  const { spec } = specOf(statement);
  return `**"${plainMarkdown(name)}"** · ${spec.word === '' ? 'not known' : spec.word}`;
}

function phraseDoc({ phrase }: ReadPhrase): string {
  const isNameOnly = phrase.items.every((item) => item.kind === 'slot');
  const words = phrase.items.map((item) => (item.kind === 'word' ? item.word : '…')).join(' ');
  return isNameOnly ? phrase.doc : `**${words}** · ${phrase.doc}`;
}

/** A statement as it is written, without its body. */
function headText(statement: Statement): string {
  const text = statement.$cstNode?.text ?? '';
  const from = statement.$cstNode?.offset ?? 0;
  const end = statement.parts.at(-1)?.$cstNode?.end ?? from + text.length;
  return text.slice(0, end - from);
}

function later(checked: boolean): string[] {
  return checked ? [] : ['Understood, and not checked yet.'];
}

/** The same length for a reader of the other system: rounded, and said to be so where it is. */
function inOtherUnits(length: Length, units: Units): string {
  const metric = units.unit === 'mm' || units.unit === 'cm';
  const value = length.in(metric ? 'in' : 'mm').toNumber();
  const places = metric ? 3 : 2;
  const rounded = value.toFixed(places);
  const exact = Math.abs(value - Number(rounded)) < 1e-9;
  return `${exact ? '' : 'about '}${Number(rounded)}${metric ? '"' : ' mm'}`;
}
