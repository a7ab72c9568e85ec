/**
 * Cells of typed arrays whose index is known to be inside. One function for each kind of array, so that the just-in-time
 * compiler sees one type at each place and leaves no trace of the call.
 */
export function cell(array: Int32Array, index: number): number {
  return array[index] as number;
}

export function realCell(array: Float64Array, index: number): number {
  return array[index] as number;
}

/** The same numbers in an array at least twice as long. */
export function grown(array: Int32Array, atLeast: number): Int32Array {
  const larger = new Int32Array(Math.max(array.length * 2, atLeast));
  larger.set(array);
  return larger;
}
