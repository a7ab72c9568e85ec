import type { Part } from '@fettle/engine';
import { cleanName } from './lettering.ts';

/** What panes are made of: no stock of the shop. */
export const GLASS = 'glass';

/** What a part is made of, as lists and sheets call it; undefined while that is not chosen. */
export function materialWords({ role, stock }: Pick<Part, 'role' | 'stock'>): string | undefined {
  if (role === 'pane') return GLASS;
  return stock === undefined ? undefined : cleanName(stock.name);
}
