import type { Evaluation, LaidCell } from '@fettle/engine';
import { cleanName } from '../lettering.ts';

/** The openings through which a piece can be cut, in the order of the text. */

export interface OpeningToCut {
  /** The id of its cell. */
  readonly id: string;
  /** '“cards”', or what it is and its turn where it has no name. */
  readonly words: string;
  readonly laid: LaidCell;
}

/** More than these are not offered. */
const MOST = 40;

export function openingsToCut(evaluation: Evaluation): readonly OpeningToCut[] {
  const leaves = evaluation.layout.face === undefined ? [] : leavesOf(evaluation.layout.face);
  const sound = leaves.filter(
    ({ opening }) => opening.x.size.length.isPositive() && opening.y.size.length.isPositive(),
  );
  return sound.slice(0, MOST).map((laid, at) => ({ id: laid.cell.id, words: wordsOf(laid, at), laid }));
}

function leavesOf(laid: LaidCell): readonly LaidCell[] {
  return laid.cells.length === 0 ? [laid] : laid.cells.flatMap(leavesOf);
}

function wordsOf({ cell }: LaidCell, at: number): string {
  const name = cleanName(cell.name ?? '');
  if (name !== '') return `“${name}”`;
  const what = cell.kind === 'front' ? cell.what.replace('-', ' ') : 'opening';
  return `${what} ${at + 1}`;
}

/** Of the widest stack of drawers the first one; else the first door; else the first opening. */
export function openingToCutFirst(evaluation: Evaluation): OpeningToCut | undefined {
  const openings = openingsToCut(evaluation);
  const drawers = openings.filter(({ laid }) => laid.cell.kind === 'front' && laid.cell.what === 'drawer');
  const [widest] = [...drawers].sort((a, b) => b.laid.opening.x.size.length.compare(a.laid.opening.x.size.length));
  const door = openings.find(({ laid }) => laid.cell.kind === 'front' && laid.cell.what === 'door');
  return widest ?? door ?? openings[0];
}
