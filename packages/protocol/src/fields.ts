/** The first checks of anything that came from elsewhere: whether it has fields at all, and what a single field is. */

export type Fields = { readonly [name: string]: unknown };

export function fieldsOf(value: unknown): Fields | undefined {
  return typeof value === 'object' && value !== null ? (value as Fields) : undefined;
}

/** A whole number that is not negative. */
export function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= 0;
}

export function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}

export function isText(value: unknown): value is string {
  return typeof value === 'string';
}

export function isListOf<T>(value: unknown, isOne: (each: unknown) => each is T): value is readonly T[] {
  return Array.isArray(value) && value.every(isOne);
}
