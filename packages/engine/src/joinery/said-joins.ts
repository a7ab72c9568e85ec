import type { Origin } from '@fettle/findings';
import type { Cell, PieceDesign } from '../design/design.ts';
import { cellsWithin } from '../design/inside-design.ts';
import type { JoinDesign } from '../design/join-design.ts';

/** Which statements say themselves how their parts are joined, by where they stand in the text. */
export type SaidJoins = ReadonlyMap<string, JoinDesign>;

export function saidJoins({ carcase, face }: PieceDesign): SaidJoins {
  const said = new Map<string, JoinDesign>();
  const note = (one: { readonly origin: Origin; readonly join?: JoinDesign } | undefined): void => {
    if (one?.join !== undefined) said.set(originKey(one.origin), one.join);
  };
  for (const panel of [
    carcase.top,
    carcase.bottom,
    carcase.sides,
    carcase.stretchers,
    carcase.plinth,
    carcase.frame,
    carcase.feet,
    carcase.back,
    carcase.nailers,
  ]) {
    note(panel);
  }
  const waiting: Cell[] = face === undefined ? [] : [face.root];
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    waiting.push(...cellsWithin(cell));
    if (cell.kind !== 'row' && cell.kind !== 'stack') continue;
    for (const divider of cell.dividers) note(divider);
  }
  return said;
}

export function originKey({ unit, start, end }: Origin): string {
  return `${unit} ${start} ${end}`;
}
