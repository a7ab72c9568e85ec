import type { LaidCell } from '@fettle/engine';
import type { EvaluatedPiece } from '../../evaluation/evaluate-document.ts';
import type { Statement } from '../../generated/ast.ts';
import { specOf } from '../../names/declarations.ts';
import { type ReadPhrase, readParts } from '../../reading/phrases.ts';
import { pieceUnitId } from '../../reading/text-units.ts';

/**
 * What all refactorings share: where one was asked for, and what it would do. Each is an exact change of the words that
 * says in its title what will be true afterwards; where it could not keep that promise it is not offered.
 */
export interface Asked {
  readonly text: string;
  readonly statement: Statement;
  readonly piece: EvaluatedPiece;
}

export interface Refactoring {
  readonly title: string;
  readonly kind: 'refactor.extract' | 'refactor.rewrite';
  /** Offsets of the text; none overlaps another. */
  readonly edits: readonly WordsChange[];
}

export interface WordsChange {
  readonly start: number;
  readonly end: number;
  readonly words: string;
}

const cellWords = new Set(['drawer', 'doors', 'door', 'lid', 'false-front', 'open', 'row', 'stack']);

export function wordOf(statement: Statement): string {
  return specOf(statement).spec.word;
}

export function isCell(statement: Statement): boolean {
  return cellWords.has(wordOf(statement)) && specOf(statement).spec.declares === 'cell';
}

export function phrasesOf(statement: Statement): readonly ReadPhrase[] {
  return readParts(statement, specOf(statement).spec).phrases;
}

/** The phrase that says how much of its row or stack a space takes. */
export function sizePhrase(statement: Statement): ReadPhrase | undefined {
  return phrasesOf(statement).find(({ phrase }) => /^(front|opening|share|rest|same)\b/.test(phrase.pattern));
}

/** Whether limits or measured sizes hold it, so that it does not follow what is asked for alone. */
export function isHeld(statement: Statement): boolean {
  return phrasesOf(statement).some(({ phrase }) => /^(at least|at most|measured)\b/.test(phrase.pattern));
}

export function rangeOfPhrase(read: ReadPhrase): { readonly start: number; readonly end: number } {
  return { start: read.parts[0]?.$cstNode?.offset ?? 0, end: read.parts.at(-1)?.$cstNode?.end ?? 0 };
}

/** Takes a phrase out with the comma or the blanks before it. */
export function withoutPhrase(text: string, read: ReadPhrase): WordsChange {
  const { start, end } = rangeOfPhrase(read);
  const gap = /[ \t]*,?[ \t]*$/.exec(text.slice(0, start))?.[0].length ?? 0;
  return { start: start - gap, end, words: '' };
}

/** Where the words of a statement end, before its body. */
export function endOfHead(statement: Statement): number {
  const cst = statement.$cstNode;
  const said = statement.parts.at(-1)?.$cstNode?.end;
  if (said !== undefined) return said;
  const head = /^[^\s{]*(?:\s+["“][^"”\n{]*["”]?)?/.exec(cst?.text ?? '')?.[0].length ?? 0;
  return (cst?.offset ?? 0) + head;
}

/** One more phrase for a statement. */
export function withPhrase(statement: Statement, words: string): WordsChange {
  const at = endOfHead(statement);
  return { start: at, end: at, words: statement.parts.length > 0 ? `, ${words}` : ` ${words}` };
}

/** The space that a statement of the piece itself was laid out as. */
export function laidCell({ piece }: Asked, statement: Statement): LaidCell | undefined {
  const start = (statement.$cstNode?.offset ?? -1) - piece.range.start;
  const waiting = piece.evaluation.layout.face === undefined ? [] : [piece.evaluation.layout.face];
  for (let laid = waiting.pop(); laid !== undefined; laid = waiting.pop()) {
    const { origin, id } = laid.cell;
    if (origin.unit === pieceUnitId && origin.start === start && id !== 'face') return laid;
    waiting.push(...laid.cells);
  }
  return undefined;
}

/** The statement itself or the nearest one around it of which `holds` is true. */
export function around(statement: Statement, holds: (each: Statement) => boolean): Statement | undefined {
  let at: Statement | undefined = statement;
  while (at !== undefined && !holds(at))
    at = at.$container.$type === 'Statement' ? (at.$container as Statement) : undefined;
  return at;
}

/** The blanks at the beginning of the line an offset lies on. */
export function indentAt(text: string, offset: number): string {
  const lineStart = text.lastIndexOf('\n', offset - 1) + 1;
  return /^[ \t]*/.exec(text.slice(lineStart))?.[0] ?? '';
}
