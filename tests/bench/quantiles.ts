/** Times in milliseconds, boiled down to what is worth printing. */
export interface Quantiles {
  readonly p50: number;
  readonly p95: number;
  readonly count: number;
}

/** By nearest rank. Throws on no times at all: that would be a measurement that measured nothing. */
export function quantiles(timesMs: readonly number[]): Quantiles {
  const sorted = [...timesMs].sort((a, b) => a - b);
  const at = (share: number): number => {
    const time = sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
    if (time === undefined) throw new Error('nothing was measured');
    return time;
  };
  return { p50: at(0.5), p95: at(0.95), count: sorted.length };
}

/** Runs `work` so many times unmeasured and so many times measured. */
export function timesOf(work: () => void, warmUps: number, runs: number): readonly number[] {
  for (let run = 0; run < warmUps; run++) work();
  return Array.from({ length: runs }, () => {
    const began = performance.now();
    work();
    return performance.now() - began;
  });
}
