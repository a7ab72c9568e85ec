/** Whether two pieces of plain JSON say the same. */
export function isSameData(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) || Array.isArray(other)) {
    return (
      Array.isArray(one) &&
      Array.isArray(other) &&
      one.length === other.length &&
      one.every((each, at) => isSameData(each, other[at]))
    );
  }
  const names = Object.keys(one);
  return (
    names.length === Object.keys(other).length &&
    names.every((name) => Object.hasOwn(other, name) && isSameData(fieldOf(one, name), fieldOf(other, name)))
  );
}

function fieldOf(data: object, name: string): unknown {
  return (data as Readonly<Record<string, unknown>>)[name];
}
