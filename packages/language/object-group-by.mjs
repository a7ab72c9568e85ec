// @ts-check
/**
 * A stand-in for `Object.groupBy`, which the parser library calls and Node 20 (also inside editors of that age) lacks.
 * Loaded first of all: by the bundles, by the grammar's generator and by the tests. It yields to the real one.
 */
if (!('groupBy' in Object)) {
  Object.defineProperty(Object, 'groupBy', {
    configurable: true,
    writable: true,
    value: groupBy,
  });
}

/**
 * @param {Iterable<unknown>} items
 * @param {(item: unknown, index: number) => PropertyKey} keyOf
 * @returns {Record<PropertyKey, unknown[]>} an object without a prototype, as the standard says
 */
function groupBy(items, keyOf) {
  /** @type {Record<PropertyKey, unknown[]>} */
  const groups = Object.create(null);
  let index = 0;
  for (const item of items) {
    const key = keyOf(item, index++);
    const group = groups[key];
    if (group === undefined) groups[key] = [item];
    else group.push(item);
  }
  return groups;
}
