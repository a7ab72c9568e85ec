import type { PartRole } from '@fettle/engine';
import { cleanName } from './lettering.ts';

/** What panes are made of: no stock of the shop. */
const GLASS = 'glass';

/** What a part is made of, as lists and sheets call it, by its role and the name of its stock; undefined while that is not chosen. */
export function materialWords(role: PartRole, stock: string | undefined): string | undefined {
  if (role === 'pane') return GLASS;
  return stock === undefined ? undefined : cleanName(stock);
}
