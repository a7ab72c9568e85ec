import type { PieceDesign } from '@fettle/engine';
import { type Finding, notCheckedYet } from '@fettle/findings';
import type { LangiumDocument, LangiumDocuments } from 'langium';
import type { Statement } from '../generated/ast.ts';
import * as vocabulary from '../schema/piece.ts';
import { readCarcase } from './read-carcase.ts';
import { readFace } from './read-face.ts';
import { headOrigin, onlyStatement, type ReadContext, Reader, reportUnread, unitsAt } from './reader.ts';
import { pieceUnitId } from './text-units.ts';

export interface ReadPiece {
  readonly design: PieceDesign;
  readonly findings: readonly Finding[];
  /** Shop entries and values from elsewhere that this piece was read with. */
  readonly touched: ReadonlySet<Statement>;
}

/** One piece of a text as a Design. Never throws; what cannot be read is absent and has its finding. */
export function readPiece(documents: LangiumDocuments, document: LangiumDocument, statement: Statement): ReadPiece {
  const context: ReadContext = {
    documents,
    unit: { id: pieceUnitId, start: statement.$cstNode?.offset ?? 0, document },
    units: unitsAt(statement),
    findings: [],
    touched: new Set(),
  };
  const only = (word: string) => onlyStatement(context, statement, word);
  reportUnread(context, statement);
  const sizeStatement = only('size');
  const size = sizeStatement && new Reader(sizeStatement, vocabulary.size, context);
  const [width, height, depth] = [
    size?.length('<length> wide'),
    size?.length('<length> high'),
    size?.length('<length> deep'),
  ];
  const caseStatement = only('case');
  const origin = headOrigin(context, statement);
  const carcase = caseStatement === undefined ? { origin } : readCarcase(context, caseStatement);
  const faceStatement = only('face');
  const face = faceStatement && readFace(context, faceStatement, carcase.sides);
  const design: PieceDesign = {
    name: statement.name ?? 'piece',
    origin,
    units: context.units,
    size: {
      origin: sizeStatement === undefined ? origin : headOrigin(context, sizeStatement),
      ...(width === undefined ? {} : { width }),
      ...(height === undefined ? {} : { height }),
      ...(depth === undefined ? {} : { depth }),
    },
    carcase,
    ...(face === undefined ? {} : { face }),
    unchecked: context.findings
      .filter((finding) => finding.code === notCheckedYet.code)
      .map((finding) => ({ words: String(finding.facts['words']), origin: finding.origin })),
  };
  return { design, findings: context.findings, touched: context.touched };
}
