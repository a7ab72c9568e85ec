import { joined, type Spans } from './joined-spans.ts';
import type { Stretch } from './seen-edges.ts';
import type { Flat } from './view-direction.ts';

/**
 * Lines on paper, each drawn once: where edges of several parts fall on one another the first that asks has the line,
 * and the others are told what is left for them.
 */

interface Line {
  taken: Spans;
}

/** Lines closer than this, in the unit of the stretches, are one. */
const ONE_LINE = 0.02;

export class DrawnLines {
  readonly #lines = new Map<string, Line>();

  /** What of the stretch is not drawn yet; it counts as drawn from now on. */
  take({ from, to }: Stretch): readonly Stretch[] {
    const du = to.u - from.u;
    const dv = to.v - from.v;
    const length = Math.hypot(du, dv);
    if (length === 0) return [];
    const isForward = Math.abs(du) > 1e-6 * length ? du > 0 : dv > 0;
    const way = { u: (isForward ? du : -du) / length, v: (isForward ? dv : -dv) / length };
    const aside = from.u * way.v - from.v * way.u;
    const low = Math.min(along(from, way), along(to, way));
    const line = this.#lineAt(way, aside);
    const free = without([low, low + length], line.taken);
    line.taken = joined(line.taken, [low, low + length]);
    const at = (place: number): Flat => {
      const share = (place - low) / length;
      const [start, end] = isForward ? [from, to] : [to, from];
      return { u: start.u + share * (end.u - start.u), v: start.v + share * (end.v - start.v) };
    };
    return free.map(([one, other]) => ({ from: at(one), to: at(other) }));
  }

  #lineAt(way: Flat, aside: number): Line {
    const bearing = Math.round(Math.atan2(way.v, way.u) / 1e-4);
    const place = Math.round(aside / ONE_LINE);
    for (const near of [place, place - 1, place + 1]) {
      const known = this.#lines.get(`${bearing} ${near}`);
      if (known !== undefined) return known;
    }
    const made: Line = { taken: [] };
    this.#lines.set(`${bearing} ${place}`, made);
    return made;
  }
}

function along({ u, v }: Flat, way: Flat): number {
  return u * way.u + v * way.v;
}

function without(whole: readonly [number, number], taken: Spans): Spans {
  const rest: [number, number][] = [];
  let cursor = whole[0];
  for (const [from, to] of taken) {
    if (to <= cursor || whole[1] <= from) continue;
    if (from - cursor > ONE_LINE) rest.push([cursor, from]);
    cursor = Math.max(cursor, to);
  }
  if (whole[1] - cursor > ONE_LINE) rest.push([cursor, whole[1]]);
  return rest;
}
