/** Spans along a line, apart from one another and in order. */
export type Spans = readonly (readonly [number, number])[];

/** With one more; those that touch become one. */
export function joined(spans: Spans, added: readonly [number, number]): Spans {
  let [low, high] = added;
  const before: (readonly [number, number])[] = [];
  const after: (readonly [number, number])[] = [];
  for (const each of spans) {
    if (each[1] < low) before.push(each);
    else if (each[0] > high) after.push(each);
    else {
      low = Math.min(low, each[0]);
      high = Math.max(high, each[1]);
    }
  }
  return [...before, [low, high], ...after];
}
