import type { Length } from '@fettle/engine';
import { AstUtils, type LangiumDocument, type LangiumDocuments, UriUtils } from 'langium';
import type { EvaluatedDocument, EvaluatedPiece } from '../evaluation/evaluate-document.ts';
import type { Statement, Text } from '../generated/ast.ts';
import { type Declaration, specOf } from '../names/declarations.ts';
import { nameKindOfSlot, visibleNames } from '../names/visible-names.ts';
import { readSlide } from '../reading/read-shop.ts';
import type { SlotKind } from '../schema/index.ts';

/** The names that may stand in a slot, those that would do first. */
export interface OfferedName {
  readonly name: string;
  /** A word on what it is, or on why it would not do. */
  readonly detail: string;
  /** Its entry as it is written. */
  readonly written: string;
}

export interface NamePlace {
  readonly documents: LangiumDocuments;
  readonly document: LangiumDocument;
  /** Takes its time: asked for only where what is offered depends on sizes. */
  evaluated(): EvaluatedDocument;
  readonly offset: number;
  /** Where the statement begins that is being written. */
  readonly own: number | undefined;
}

export function offeredNames(place: NamePlace, slot: SlotKind): OfferedName[] {
  if (slot === 'path') return paths(place);
  const statement = statementAt(place);
  if (statement === undefined) return [];
  const names = [...visibleNames(place.documents, place.document, statement, nameKindOfSlot(slot)).values()];
  // A front does not follow itself.
  const others = names.filter((each) => !isOwn(place, each.statement));
  return slot === 'slide' ? slides(place, others) : others.map(plainOffer);
}

function plainOffer({ name, statement }: Declaration): OfferedName {
  const home = AstUtils.getDocument(statement);
  return {
    name,
    detail: `${specOf(statement).spec.word} · ${UriUtils.basename(home.uri)}`,
    written: headText(statement),
  };
}

/** The longest slide that runs in the depth there is comes first; those that are too long come last, the nearest first, and say by how much. */
function slides(place: NamePlace, names: readonly Declaration[]): OfferedName[] {
  const piece = pieceAround(place);
  const room = piece === undefined ? undefined : roomForSlides(piece);
  if (piece === undefined || room === undefined) return names.map(plainOffer);
  return names
    .map((declaration) => {
      const entry = readSlide(declaration.statement, place.documents);
      const needs = entry?.length.length.plus(entry.extraDepth.length);
      const over = needs?.minus(room);
      const detail =
        over === undefined
          ? ''
          : over.isPositive()
            ? `too long by ${piece.say.length(over)}`
            : `fits, ${piece.say.length(over.negated())} to spare`;
      return { offer: { ...plainOffer(declaration), detail }, over };
    })
    .sort((a, b) => rank(a.over) - rank(b.over) || (b.over && a.over ? a.over.abs().compare(b.over.abs()) : 0))
    .map(({ offer }) => offer);
}

function rank(over: Length | undefined): number {
  return over === undefined ? 2 : over.isPositive() ? 1 : 0;
}

/** From the back of the drawer fronts to the front of the back, as far as both are known. */
function roomForSlides({ evaluation }: EvaluatedPiece): Length | undefined {
  const inside = evaluation.layout.carcase?.inside.z.size.length;
  const front = evaluation.parts.find((part) => part.role === 'drawer-front')?.thickness.length;
  return inside === undefined || front === undefined ? inside : inside.minus(front);
}

function paths({ documents, document }: NamePlace): OfferedName[] {
  const folder = UriUtils.dirname(document.uri);
  return documents.all
    .filter((each) => each !== document)
    .map((each) => ({ path: UriUtils.relative(folder, each.uri), each }))
    .filter(({ path }) => !path.startsWith('..') && !path.includes(':'))
    .map(({ path }) => ({ name: path, detail: 'file', written: '' }))
    .toArray()
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** A statement from which the names of this place can be seen: the piece around it, or any other of the text. */
function statementAt({ document, offset }: NamePlace): Statement | undefined {
  const { statements } = document.parseResult.value as Text;
  return statements.findLast((each) => (each.$cstNode?.offset ?? 0) < offset) ?? statements[0];
}

function isOwn({ document, own }: NamePlace, statement: Statement): boolean {
  return own !== undefined && statement.$cstNode?.offset === own && AstUtils.getDocument(statement) === document;
}

function pieceAround({ evaluated, offset }: NamePlace): EvaluatedPiece | undefined {
  return evaluated().pieces.findLast((each) => each.range.start < offset);
}

function headText(statement: Statement): string {
  const text = statement.$cstNode?.text ?? '';
  const from = statement.$cstNode?.offset ?? 0;
  const end = statement.parts.at(-1)?.$cstNode?.end ?? from + text.length;
  return text.slice(0, end - from);
}
