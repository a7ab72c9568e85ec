import { isRuler, makeNewPiece, nextQuestion, problemWith, type Ruler } from '@fettle/language';
import {
  type NewPieceParams,
  type NewPieceProblemParams,
  type NewPieceStep,
  newPieceProblemRequest,
  newPieceRequest,
} from '@fettle/protocol';
import type { Connection } from 'vscode-languageserver';

/** Answers what is asked and written for a new piece. Needs no document; a failure is told to whoever asked. */
export function answerNewPiece(connection: Connection): void {
  connection.onRequest(newPieceRequest, async (params: NewPieceParams): Promise<NewPieceStep> => {
    const next = nextQuestion(answersIn(params), usualRuler(params));
    if (next.kind === 'ask') return next;
    const beside = new Map(params.beside.map(({ name, text }) => [name, text ?? '']));
    return { kind: 'made', ...(await makeNewPiece(next.design, beside)) };
  });
  connection.onRequest(newPieceProblemRequest, (params: NewPieceProblemParams): string | null => {
    return problemWith(answersIn(params), params.question, params.answer, usualRuler(params)) ?? null;
  });
}

function answersIn({ answers }: NewPieceParams): NewPieceParams['answers'] {
  return typeof answers === 'object' && answers !== null ? answers : {};
}

function usualRuler({ usualMeasure }: NewPieceParams): Ruler {
  return isRuler(usualMeasure) ? usualMeasure : 'inches-32';
}
