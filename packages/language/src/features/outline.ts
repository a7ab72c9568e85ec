import { byEachOther } from '@fettle/engine';
import type { Say } from '@fettle/findings';
import type { LangiumDocument } from 'langium';
import type { DocumentSymbolProvider } from 'langium/lsp';
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver';
import type { DocumentEvaluator, EvaluatedPiece } from '../evaluation/evaluate-document.ts';
import type { FettleServices } from '../fettle-module.ts';
import type { Statement, Text } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import type { NameKind } from '../schema/index.ts';
import { type StatementSizes, sizesByStatement } from './computed-sizes.ts';
import { propertyRange, type SpotRange } from './spot.ts';

/** The outline: the piece's own tree, each with the size it comes to. */
export class FettleDocumentSymbolProvider implements DocumentSymbolProvider {
  readonly #evaluator: DocumentEvaluator;

  constructor(services: FettleServices) {
    this.#evaluator = services.evaluation.DocumentEvaluator;
  }

  getSymbols(document: LangiumDocument): DocumentSymbol[] {
    const { pieces } = this.#evaluator.evaluate(document);
    const root = document.parseResult.value as Text;
    return root.statements.flatMap((statement) => {
      const piece = pieces.find((each) => each.range.start === statement.$cstNode?.offset);
      return symbolsOf(document, statement, { piece, sizes: piece && sizesByStatement(piece.evaluation) });
    });
  }
}

interface SizesOfPiece {
  readonly piece: EvaluatedPiece | undefined;
  readonly sizes: ReadonlyMap<number, readonly StatementSizes[]> | undefined;
}

/** A statement that is not shown leaves its place to what it encloses. */
function symbolsOf(document: LangiumDocument, statement: Statement, known: SizesOfPiece): DocumentSymbol[] {
  const children = statement.statements.flatMap((child) => symbolsOf(document, child, known));
  const { spec } = specOf(statement);
  const cst = statement.$cstNode;
  const head = propertyRange(statement, 'head');
  if (!spec.outlined || cst === undefined || head === undefined) return children;
  const toRange = ({ start, end }: SpotRange) => ({
    start: document.textDocument.positionAt(start),
    end: document.textDocument.positionAt(end),
  });
  const own = known.sizes?.get(cst.offset - (known.piece?.range.start ?? 0));
  const detail = known.piece === undefined ? undefined : sizeWords(own ?? [], known.piece.say);
  return [
    {
      name: statement.name === undefined ? spec.word : `${spec.word} "${statement.name}"`,
      ...(detail === undefined ? {} : { detail }),
      kind: kindOf(spec.declares, children.length > 0),
      range: toRange({ start: cst.offset, end: cst.end }),
      selectionRange: toRange({ start: head.start, end: propertyRange(statement, 'name')?.end ?? head.end }),
      children,
    },
  ];
}

/** Width by height of a front, length by width of a part; nothing where parts of one statement differ. */
function sizeWords(own: readonly StatementSizes[], say: Say): string | undefined {
  const [first, ...others] = own.map((each) => wordsOf(each, say));
  return first === undefined || others.some((each) => each !== first) ? undefined : first;
}

function wordsOf({ kind, sizes }: StatementSizes, say: Say): string | undefined {
  const size = (label: string) => {
    const figure = sizes.find((each) => each.label === label)?.figure;
    return figure === undefined ? undefined : say.length(figure.length);
  };
  switch (kind) {
    case 'piece':
      return undefined;
    case 'cell': {
      const width = size('width of the front') ?? size('width of the opening');
      const height = size('height of the front') ?? size('height of the opening');
      return width === undefined || height === undefined ? undefined : byEachOther(width, height);
    }
    case 'divider':
      return size('thickness');
    case 'part':
      return byEachOther(...['length', 'width', 'thickness'].map((label) => size(label) ?? '?'));
    default: {
      const unknown: never = kind;
      return unknown;
    }
  }
}

function kindOf(declares: NameKind | undefined, hasChildren: boolean): SymbolKind {
  switch (declares) {
    case 'piece':
      return SymbolKind.Module;
    case 'cell':
      return hasChildren ? SymbolKind.Array : SymbolKind.Field;
    case 'value':
    case 'parameter':
      return SymbolKind.Number;
    case undefined:
      return hasChildren ? SymbolKind.Namespace : SymbolKind.Property;
    default:
      return SymbolKind.Object;
  }
}
