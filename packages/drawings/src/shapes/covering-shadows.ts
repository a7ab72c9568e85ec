import { DEEP_MM, type Shadow } from './seen-edges.ts';
import { dot } from './vectors.ts';
import type { ViewDirection } from './view-direction.ts';

/**
 * The shadows that matter: one that lies wholly under a nearer face of four square corners hides nothing that this does
 * not hide. Of a tall stack seen from above a few remain.
 */

/** Numbers, in real millimetres, that differ by how they were reckoned alone. */
const SAME_MM = 1e-6;

/** The shadows nearest first, and the answer, too. */
export function coveringShadows<Kind extends Shadow>(shadows: readonly Kind[], from: ViewDirection): readonly Kind[] {
  const kept: Kind[] = [];
  const lids: { readonly shadow: Shadow; readonly level: number }[] = [];
  for (const shadow of shadows) {
    const { low, high, nearest } = shadow;
    const isUnder = lids.some(
      ({ shadow: lid, level }) =>
        nearest <= level &&
        lid.low.u <= low.u + SAME_MM &&
        lid.low.v <= low.v + SAME_MM &&
        lid.high.u >= high.u - SAME_MM &&
        lid.high.v >= high.v - SAME_MM,
    );
    if (isUnder) continue;
    kept.push(shadow);
    if (isRectangle(shadow)) lids.push({ shadow, level: levelOf(shadow, from) });
  }
  return kept;
}

function isRectangle({ outline, low, high }: Shadow): boolean {
  return (
    outline.length === 4 &&
    outline.every(({ u, v }) => (isSame(u, low.u) || isSame(u, high.u)) && (isSame(v, low.v) || isSame(v, high.v)))
  );
}

function isSame(a: number, b: number): boolean {
  return Math.abs(a - b) < SAME_MM;
}

/** All that lies no nearer is behind the surface everywhere, also where this slopes: as far as an edge must be. */
function levelOf({ outline, facing }: Shadow, { right, up, towards }: ViewDirection): number {
  let level = Number.POSITIVE_INFINITY;
  for (const { normal, offset } of facing) {
    for (const { u, v } of outline) {
      const across = u * dot(normal, right) + v * dot(normal, up);
      level = Math.min(level, (offset - across - DEEP_MM) / dot(normal, towards) + DEEP_MM);
    }
  }
  return level;
}
