/** Smaller pivots are as good as none. */
const TOO_SMALL = 1e-9;

/** Turns `matrix` into the unit matrix and `inverse`, which comes in as one, into its inverse. */
export function invertMatrix(matrix: Float64Array, inverse: Float64Array, rows: number): boolean {
  for (let place = 0; place < rows; place += 1) {
    let best = place;
    for (let row = place + 1; row < rows; row += 1) {
      if (Math.abs(matrix[row * rows + place] as number) > Math.abs(matrix[best * rows + place] as number)) best = row;
    }
    const pivot = matrix[best * rows + place] as number;
    if (Math.abs(pivot) < TOO_SMALL) return false;
    if (best !== place) {
      swapRows(matrix, rows, best, place);
      swapRows(inverse, rows, best, place);
    }
    const from = place * rows;
    for (let at = 0; at < rows; at += 1) {
      matrix[from + at] = (matrix[from + at] as number) / pivot;
      inverse[from + at] = (inverse[from + at] as number) / pivot;
    }
    for (let row = 0; row < rows; row += 1) {
      const share = matrix[row * rows + place] as number;
      if (row === place || share === 0) continue;
      const to = row * rows;
      for (let at = place; at < rows; at += 1)
        matrix[to + at] = (matrix[to + at] as number) - share * (matrix[from + at] as number);
      for (let at = 0; at < rows; at += 1)
        inverse[to + at] = (inverse[to + at] as number) - share * (inverse[from + at] as number);
    }
  }
  return true;
}

function swapRows(matrix: Float64Array, rows: number, a: number, b: number): void {
  for (let at = 0; at < rows; at += 1) {
    const kept = matrix[a * rows + at] as number;
    matrix[a * rows + at] = matrix[b * rows + at] as number;
    matrix[b * rows + at] = kept;
  }
}
