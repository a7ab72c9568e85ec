/** Moving among the parts of a drawing with the arrow keys. Knows only where each part stands on the screen. */

export interface Standing<T> {
  readonly what: T;
  readonly x: number;
  readonly y: number;
}

export type Arrow = 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown';

export function isArrow(key: string): key is Arrow {
  return key === 'ArrowLeft' || key === 'ArrowRight' || key === 'ArrowUp' || key === 'ArrowDown';
}

/**
 * The nearest thing in the arrow's direction, things straight ahead before things aside; `undefined` at the edge.
 * Things whose middles coincide with the one left are passed over: Tab order and Home/End still reach them.
 */
export function stepTo<T>(from: Standing<T>, arrow: Arrow, all: readonly Standing<T>[]): T | undefined {
  let best: { readonly what: T; readonly cost: number } | undefined;
  for (const to of all) {
    if (to.what === from.what) continue;
    const across = to.x - from.x;
    const down = to.y - from.y;
    const ahead = { ArrowLeft: -across, ArrowRight: across, ArrowUp: -down, ArrowDown: down }[arrow];
    const aside = Math.abs(arrow === 'ArrowLeft' || arrow === 'ArrowRight' ? down : across);
    if (ahead <= 0.5 || ahead < aside * 0.5) continue;
    const cost = ahead + 2 * aside;
    if (best === undefined || cost < best.cost) best = { what: to.what, cost };
  }
  return best?.what;
}
