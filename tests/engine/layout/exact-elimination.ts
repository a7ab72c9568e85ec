import type { Operand } from '../../../packages/engine/src/design/figure.ts';
import type { AxisCell, AxisRequest } from '../../../packages/engine/src/layout/axis.ts';

/**
 * A second, unrelated way to size a row or stack without limits: write down every statement as an equation and solve
 * them all at once by Gaussian elimination. Shares nothing with the solver, not even its fractions: these are plain
 * pairs of big integers.
 *
 * Unknowns: for each cell its opening and its front, and one share. A cell without a front has front = opening.
 */

type Fraction = readonly [bigint, bigint];

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : gcd(b, a % b));

function fraction(n: bigint, d: bigint): Fraction {
  const common = gcd(n, d) * (d < 0n ? -1n : 1n);
  return [n / common, d / common];
}

const zero: Fraction = [0n, 1n];
const one: Fraction = [1n, 1n];
const minus = ([a, b]: Fraction, [c, d]: Fraction): Fraction => fraction(a * d - c * b, b * d);
const plus = ([a, b]: Fraction, [c, d]: Fraction): Fraction => fraction(a * d + c * b, b * d);
const times = ([a, b]: Fraction, [c, d]: Fraction): Fraction => fraction(a * c, b * d);
const over = ([a, b]: Fraction, [c, d]: Fraction): Fraction => fraction(a * d, b * c);
const negative = ([a, b]: Fraction): Fraction => [-a, b];

export function readFraction(text: string): Fraction {
  const [n = '0', d = '1'] = text.split('/');
  return fraction(BigInt(n), BigInt(d));
}

export const writeFraction = ([n, d]: Fraction): string => (d === 1n ? `${n}` : `${n}/${d}`);

/** The exact solution of `rows` (coefficients, then the right side), or undefined when there is not exactly one. */
export function eliminate(rows: readonly (readonly Fraction[])[], unknowns: number): readonly Fraction[] | undefined {
  const matrix = rows.map((row) => [...row]);
  for (let column = 0; column < unknowns; column++) {
    const pivotAt = matrix.findIndex((row, at) => at >= column && row[column]?.[0] !== 0n);
    const pivotRow = matrix[pivotAt];
    const swapped = matrix[column];
    if (pivotRow === undefined || swapped === undefined) return undefined;
    matrix[pivotAt] = swapped;
    matrix[column] = pivotRow;
    const pivot = pivotRow[column] ?? zero;
    for (let at = 0; at <= unknowns; at++) pivotRow[at] = over(pivotRow[at] ?? zero, pivot);
    matrix.forEach((row, rowAt) => {
      const factor = row[column] ?? zero;
      if (rowAt === column || factor[0] === 0n) return;
      for (let at = 0; at <= unknowns; at++) row[at] = minus(row[at] ?? zero, times(factor, pivotRow[at] ?? zero));
    });
  }
  const isConsistent = matrix.slice(unknowns).every((row) => row[unknowns]?.[0] === 0n);
  return isConsistent ? matrix.slice(0, unknowns).map((row) => row[unknowns] ?? zero) : undefined;
}

/** Opening and front of every cell, in lowest terms; undefined when the statements do not decide them. */
export function sizesByElimination(
  request: AxisRequest,
): readonly { readonly opening: string; readonly front: string }[] | undefined {
  const { cells } = request;
  const count = cells.length * 2 + 1;
  const opening = (at: number) => at * 2;
  const front = (at: number) => at * 2 + 1;
  const shareAt = count - 1;
  const rows: Fraction[][] = [];
  const equation = (terms: readonly (readonly [number, Fraction])[], right: Fraction) => {
    const row = Array.from({ length: count + 1 }, () => zero);
    for (const [at, factor] of terms) row[at] = plus(row[at] ?? zero, factor);
    row[count] = right;
    rows.push(row);
  };

  const sharesFronts = cells
    .filter(
      (cell) => cell.measured === undefined && ['share', 'rest', 'graded', 'graded-by-ratio'].includes(cell.asked.kind),
    )
    .every((cell) => cell.hasFront);
  cells.forEach((cell, at) => {
    equation(
      [
        [front(at), one],
        [opening(at), negative(one)],
      ],
      deltaOf(cell),
    );
    const { asked } = cell;
    if (cell.measured !== undefined) {
      equation([[opening(at), one]], readFraction(cell.measured.length.exactInches));
      return;
    }
    const shared = sharesFronts ? front(at) : opening(at);
    switch (asked.kind) {
      case 'fixed':
        equation(
          [[asked.basis === 'front' ? front(at) : opening(at), one]],
          readFraction(asked.figure.length.exactInches),
        );
        break;
      case 'share':
        equation(
          [
            [shared, one],
            [shareAt, negative(readFraction(asked.weight.toString()))],
          ],
          zero,
        );
        break;
      case 'rest':
        equation(
          [
            [shared, one],
            [shareAt, negative(one)],
          ],
          zero,
        );
        break;
      case 'graded-by-ratio': {
        let factor: Fraction = one;
        for (let step = 0; step < asked.step; step++) factor = times(factor, readFraction(asked.ratio.toString()));
        equation(
          [
            [shared, one],
            [shareAt, negative(factor)],
          ],
          zero,
        );
        break;
      }
      case 'graded':
        equation(
          [
            [shared, one],
            [shareAt, negative(one)],
          ],
          times(readFraction(asked.by.length.exactInches), [BigInt(asked.step), 1n]),
        );
        break;
      case 'same': {
        const target = cells.findIndex((other) => other.name === asked.as);
        const face = asked.basis === 'front' ? front : opening;
        equation(
          [
            [face(at), one],
            [face(target), negative(one)],
          ],
          zero,
        );
        break;
      }
      default: {
        const unknown: never = asked;
        throw new Error(`no equation for ${JSON.stringify(unknown)}`);
      }
    }
  });
  const boundaries = request.boundaries.map((boundary) => readFraction(boundary.thickness.length.exactInches));
  equation(
    cells.map((_, at) => [opening(at), one] as const),
    boundaries.reduce(minus, readFraction(request.total.length.exactInches)),
  );
  const solution = eliminate(rows, count);
  return solution?.length === count
    ? cells.map((_, at) => ({
        opening: writeFraction(solution[opening(at)] ?? zero),
        front: writeFraction(solution[front(at)] ?? zero),
      }))
    : undefined;
}

function deltaOf(cell: AxisCell): Fraction {
  if (!cell.hasFront) return zero;
  return [...cell.deltaStart, ...cell.deltaEnd].reduce((sum, operand) => plus(sum, termOf(operand)), zero);
}

function termOf(operand: Operand): Fraction {
  const size = times(readFraction(operand.figure.length.exactInches), readFraction(String(operand.times ?? 1)));
  return operand.sign === '-' ? negative(size) : operand.sign === '+' ? size : zero;
}
