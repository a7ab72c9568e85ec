import type { Evaluation, LaidCell, Length, Part, PieceDesign } from '@fettle/engine';
import { evaluatePiece } from '@fettle/engine';
import type { Finding, Measure, Say } from '@fettle/findings';

/** Looking things up in an evaluation; whatever is not there fails the test at once. */

/** Inches as a fraction, so that an exact size reads as one in a failing test. */
export const say: Say = {
  length: (measure: Measure) => `${measure.exactInches}"`,
  name: (name: string) => `"${name}"`,
};

export function evaluateSound(design: PieceDesign): Evaluation {
  const evaluation = evaluatePiece(design);
  const wrong = errorsIn(evaluation);
  if (wrong.length > 0) throw new Error(`not sound: ${wrong.map((one) => one.code)}`);
  return evaluation;
}

export function errorsIn(evaluation: Evaluation): readonly Finding[] {
  return evaluation.findings.filter(({ severity }) => severity === 'error');
}

/** Errors and warnings: a note is worth knowing, and nothing is wrong. */
export function wrongIn(evaluation: Evaluation): readonly Finding[] {
  return evaluation.findings.filter(({ severity }) => severity !== 'note');
}

export function cellNamed(evaluation: Evaluation, id: string): LaidCell {
  const found = allCells(evaluation).find((laid) => laid.cell.id === id);
  if (found === undefined) throw new Error(`no cell ${id} is laid out`);
  return found;
}

export function allCells(evaluation: Evaluation): readonly LaidCell[] {
  const within = (laid: LaidCell): LaidCell[] => [laid, ...laid.cells.flatMap(within)];
  return evaluation.layout.face === undefined ? [] : within(evaluation.layout.face);
}

export function partWithId(evaluation: Evaluation, id: string): Part {
  const found = evaluation.parts.find((part) => part.id === id);
  if (found === undefined) throw new Error(`no part ${id}`);
  return found;
}

/** Length × width × thickness in inches. */
export function sizeOf(part: Part): string {
  return [part.length, part.width, part.thickness].map((figure) => figure.length.exactInches).join(' x ');
}

/** The only finding of this code. */
export function onlyFinding(evaluation: Evaluation, code: string): Finding {
  const found = evaluation.findings.filter((finding) => finding.code === code);
  const only = found[0];
  if (only === undefined || found.length > 1) {
    throw new Error(
      `expected one ${code}, found ${evaluation.findings.map((one) => one.code).join(', ') || 'nothing'}`,
    );
  }
  return only;
}

export function exact(length: Length): string {
  return length.exactInches;
}
