import type { PanelDesign } from '../design/design.ts';
import type { UnmarkedPart } from './slab.ts';

/** What a part takes from the statement that makes it: its stock, its edges, and where a click finds it. */
export function made(
  panel: PanelDesign,
): Pick<UnmarkedPart, 'origin'> & { readonly stock: PanelDesign['stock']; readonly edging: PanelDesign['edging'] } {
  return { origin: panel.origin, stock: panel.stock, edging: panel.edging };
}
