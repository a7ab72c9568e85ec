/**
 * Where it can be worth while to cut along one side: sums of blanks' sizes, in ascending order from 0. In a plan of
 * guillotine cuts every piece can be pushed against such a place (J. C. Herz, Recursive computational procedure for
 * two-dimensional stock cutting, IBM Journal of Research and Development 16(5), 1972).
 */
export interface CutPositions {
  readonly places: Int32Array;
  /** `rest[i * n + k]`: the index of what is left of place i beside a piece of place k. */
  readonly rest: Int32Array;
  /** A piece of place i is cut at the places from `from[i]` to `to[i] - 1`. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Whether patterns found with them can be cut; if not, their worth is only a bound from above. */
  readonly exact: boolean;
}

/** The index of the last place that is not beyond `size`. */
export function placeAtMost(places: Int32Array, size: number): number {
  let low = 0;
  let high = places.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((places[middle] as number) <= size) low = middle;
    else high = middle - 1;
  }
  return low;
}

/**
 * Sums of `sizes` up to the largest of `wholes`, or a coarser grid that is on the safe side for bounds if
 * there are more than `most`. Undefined if that grid would be too coarse.
 */
export function cutPositions(
  sizes: readonly number[],
  wholes: readonly number[],
  most: number,
): CutPositions | undefined {
  const whole = Math.max(...wholes);
  const distinct = [...new Set(sizes)].filter((size) => size <= whole).sort((a, b) => a - b);
  const least = distinct[0];
  if (least === undefined) return undefined;
  const sums = sumsUpTo(distinct, whole, most * 4);
  const exact = sums === undefined ? undefined : reduced(sums, wholes);
  if (exact !== undefined && exact.length <= most) return { places: exact, ...exactRests(exact), exact: true };
  // Coarse places must lie closer together than the smallest blank, or a rest would be as large as the whole.
  const cells = Math.min(most - 1, whole);
  const grid = Int32Array.from({ length: cells + 1 }, (_, k) => Math.floor((whole * k) / cells));
  if (Math.ceil(whole / cells) >= least) return undefined;
  return { places: grid, ...coarseRests(grid, least), exact: false };
}

/** The index of the first place that is not below `size`; beyond the end if there is none. */
export function placeAtLeast(places: Int32Array, size: number): number {
  const at = placeAtMost(places, size);
  return (places[at] as number) >= size ? at : at + 1;
}

function sumsUpTo(sizes: readonly number[], whole: number, most: number): readonly number[] | undefined {
  const reached = new Set<number>([0]);
  const queue = [0];
  for (let at = 0; at < queue.length; at++) {
    for (const size of sizes) {
      const sum = (queue[at] as number) + size;
      if (sum > whole) break;
      if (reached.has(sum)) continue;
      reached.add(sum);
      queue.push(sum);
      if (queue.length > most) return undefined;
    }
  }
  return queue.sort((a, b) => a - b);
}

/**
 * Only places that are the largest sum beside some other sum (raster points; J. Terno and others, 1987): each piece takes
 * all the room that nothing else can use.
 */
function reduced(sums: readonly number[], wholes: readonly number[]): Int32Array {
  const all = Int32Array.from(sums);
  const kept = new Set<number>([0]);
  for (const whole of new Set(wholes)) {
    for (const sum of sums) if (sum <= whole) kept.add(all[placeAtMost(all, whole - sum)] as number);
  }
  return Int32Array.from([...kept].sort((a, b) => a - b));
}

type Rests = Pick<CutPositions, 'rest' | 'from' | 'to'>;

function exactRests(places: Int32Array): Rests {
  const n = places.length;
  const rest = new Int32Array(n * n);
  const from = new Int32Array(n).fill(1);
  const to = new Int32Array(n).fill(1);
  for (let i = 0; i < n; i++) {
    const whole = places[i] as number;
    let k = 1;
    for (; k < i && 2 * (places[k] as number) <= whole; k++) {
      rest[i * n + k] = placeAtMost(places, whole - (places[k] as number));
    }
    to[i] = k;
  }
  return { rest, from, to };
}

/** A piece of up to place k is larger than place k - 1, and not smaller than the smallest blank. */
function coarseRests(places: Int32Array, least: number): Rests {
  const n = places.length;
  const rest = new Int32Array(n * n);
  const from = new Int32Array(n).fill(placeAtLeast(places, least));
  const to = new Int32Array(n);
  for (let i = 0; i < n; i++) {
    const whole = places[i] as number;
    let k = from[i] as number;
    for (; k < i; k++) {
      const smallest = Math.max(least, (places[k - 1] as number) + 1);
      if (2 * smallest > whole) break;
      rest[i * n + k] = placeAtLeast(places, whole - smallest);
    }
    to[i] = k;
  }
  return { rest, from, to };
}
