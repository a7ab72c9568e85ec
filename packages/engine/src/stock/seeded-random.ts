/** Numbers that look random and are the same for the same seed, on every machine (mulberry32, public domain). */
export class SeededRandom {
  private state: number;

  constructor(seed: number) {
    this.state = seed | 0;
  }

  /** At least 0 and less than 1. */
  fraction(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  /** A whole number from 0 to `count - 1`. */
  below(count: number): number {
    return Math.floor(this.fraction() * count);
  }
}
