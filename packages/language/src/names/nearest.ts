/**
 * The nearest known name to one that is not known: at most one slip in three letters (a letter too many, missing,
 * wrong, or two swapped). Undefined when nothing is near. Cost is bounded: long names are compared by their first
 * 64 letters. `most` allows fewer slips.
 */
export function nearestName(
  name: string,
  known: Iterable<string>,
  most = Number.POSITIVE_INFINITY,
): string | undefined {
  const wanted = name.slice(0, 64).toLowerCase();
  const limit = Math.min(most, Math.max(1, Math.floor(wanted.length / 3)));
  let best: string | undefined;
  let bestDistance = limit + 1;
  for (const candidate of known) {
    const distance = slipsBetween(wanted, candidate.slice(0, 64).toLowerCase(), bestDistance);
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/** Whether `near` is the one known name that is near: what stands there can hardly mean another. */
export function isOnlyNear(name: string, near: string, known: Iterable<string>): boolean {
  return (
    nearestName(
      name,
      [...new Set(known)].filter((each) => each !== near),
    ) === undefined
  );
}

/** Optimal string alignment distance; anything from `enough` on is reported as `enough`. */
function slipsBetween(a: string, b: string, enough: number): number {
  if (Math.abs(a.length - b.length) >= enough) return enough;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, (beforeLast[j - 2] ?? 0) + 1);
      }
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least >= enough) return enough;
    beforeLast = last;
    last = row;
  }
  return Math.min(last[b.length] ?? enough, enough);
}
