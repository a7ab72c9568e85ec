/** Things that belong together, in the order in which the first of each group comes. */

export type Group<Thing> = readonly [Thing, ...Thing[]];

/** By a key; what has none is left out. */
export function groupedBy<Key, Thing>(
  things: Iterable<Thing>,
  key: (thing: Thing) => Key | undefined,
): ReadonlyMap<Key, Group<Thing>> {
  const groups = new Map<Key, [Thing, ...Thing[]]>();
  for (const thing of things) {
    const of = key(thing);
    if (of === undefined) continue;
    const group = groups.get(of);
    if (group === undefined) groups.set(of, [thing]);
    else group.push(thing);
  }
  return groups;
}

/** By several facts at once: what has the same facts, written out, is alike. */
export function groupAlike<Thing>(things: readonly Thing[], key: (thing: Thing) => unknown): readonly Group<Thing>[] {
  return [...groupedBy(things, (thing) => JSON.stringify(key(thing)) ?? '').values()];
}
