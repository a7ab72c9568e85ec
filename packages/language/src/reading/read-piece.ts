import type { PieceDesign } from '@fettle/engine';
import { type Finding, notCheckedYet, valueNotGiven } from '@fettle/findings';
import type { LangiumDocument, LangiumDocuments } from 'langium';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { patternOf } from '../names/visible-names.ts';
import * as vocabulary from '../schema/piece.ts';
import { expressionIn, readParts } from './phrases.ts';
import { judgeWhole } from './piece-as-a-whole.ts';
import { readCarcase } from './read-carcase.ts';
import { readFace } from './read-face.ts';
import { readSequences } from './read-sequences.ts';
import {
  bodyStatements,
  type GivenValue,
  headOrigin,
  onlyStatement,
  originOf,
  type ReadContext,
  Reader,
  readValue,
  unitsAt,
} from './reader.ts';
import { reportUnread } from './report-unread.ts';
import { entryUnit, pieceUnitId } from './text-units.ts';

export interface ReadPiece {
  readonly design: PieceDesign;
  readonly findings: readonly Finding[];
  /** Shop entries, patterns and values from elsewhere that this piece was read with. */
  readonly touched: ReadonlySet<Statement>;
}

/** One piece of a text as a Design. Never throws; what cannot be read is absent and has its finding. */
export function readPiece(documents: LangiumDocuments, document: LangiumDocument, statement: Statement): ReadPiece {
  const pattern = patternOf(documents, document, statement);
  const own: ReadContext = {
    documents,
    unit: { id: pieceUnitId, start: statement.$cstNode?.offset ?? 0, document },
    units:
      pattern !== undefined && bodyStatements(statement, 'units').length === 0 ? unitsAt(pattern) : unitsAt(statement),
    findings: [],
    touched: new Set(),
  };
  reportUnread(own, statement);
  const origin = headOrigin(own, statement);
  const inherited = pattern && patternContext(own, statement, pattern);

  /** What the piece says itself comes before what its pattern says. */
  const section = (word: string): { readonly context: ReadContext; readonly statement: Statement } | undefined => {
    const said = onlyStatement(own, statement, word);
    if (said !== undefined) return { context: own, statement: said };
    const common = inherited && onlyStatement(inherited, pattern, word);
    return inherited === undefined || common === undefined ? undefined : { context: inherited, statement: common };
  };

  const sized = section('size');
  const size = sized && new Reader(sized.statement, vocabulary.size, sized.context);
  const [width, height, depth] = [
    size?.length('<length> wide'),
    size?.length('<length> high'),
    size?.length('<length> deep'),
  ];
  const cased = section('case');
  const carcase = cased === undefined ? { origin } : readCarcase(cased.context, cased.statement);
  const faced = section('face');
  const face = faced && readFace(faced.context, faced.statement, carcase.sides);
  const followed = readSequences(own, statement);
  const sequences =
    followed.length > 0 || inherited === undefined || pattern === undefined
      ? followed
      : readSequences(inherited, pattern);
  judgeWhole(own, statement, { pattern, size: sized?.statement, hasParts: cased !== undefined || faced !== undefined });
  const findings = inherited === undefined ? own.findings : [...own.findings, ...inherited.findings];
  const design: PieceDesign = {
    name: statement.name ?? 'piece',
    origin,
    units: own.units,
    size: {
      origin: sized === undefined ? origin : headOrigin(sized.context, sized.statement),
      ...(width === undefined ? {} : { width }),
      ...(height === undefined ? {} : { height }),
      ...(depth === undefined ? {} : { depth }),
    },
    carcase,
    ...(face === undefined ? {} : { face }),
    ...(sequences.length === 0 ? {} : { sequences }),
    unchecked: findings
      .filter((finding) => finding.code === notCheckedYet.code)
      .map((finding) => ({ words: String(finding.facts['words']), origin: finding.origin })),
  };
  return { design, findings, touched: own.touched };
}

/** Reads the pattern as if it stood in the piece, with the values that the piece gives. */
function patternContext(own: ReadContext, piece: Statement, pattern: Statement): ReadContext {
  own.touched.add(pattern);
  const reader = new Reader(piece, vocabulary.piece, own);
  const given = new Map<Statement, GivenValue>();
  for (const { statement, expression } of reader.named('with <parameter> <length>', '<parameter> <length>')) {
    given.set(statement, { value: readValue(own, expression), origin: originOf(own, expression) });
  }
  for (const takes of bodyStatements(pattern, 'takes')) {
    const fallback = expressionIn(readParts(takes, specOf(takes).spec).phrases[0]);
    if (given.has(takes) || fallback !== undefined || takes.name === undefined) continue;
    own.findings.push(valueNotGiven.at(reader.origin, { name: takes.name, pattern: pattern.name ?? '' }));
  }
  const unit = entryUnit(pattern);
  return { ...own, unit, units: unitsAt(pattern), findings: [], given };
}
