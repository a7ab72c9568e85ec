/**
 * Labels along a line: moves them apart as little as possible so that none overlaps its neighbour. One dimension only;
 * knows nothing of what the labels say.
 */

export interface Wish {
  /** Where its middle would best be. */
  readonly centre: number;
  /** How much of the line it needs, space to its neighbour included. */
  readonly size: number;
}

/**
 * Middles in the order given, which must be ascending by wish. Sum of squared moves is the least possible without
 * bounds; bounds then push the ends inwards. The caller sees to it that the sizes together fit between the bounds.
 */
export function spread(wishes: readonly Wish[], low: number, high: number): number[] {
  // Each cluster stands shoulder to shoulder; `mean` is where its first middle would best be.
  const clusters: { start: number; size: number; sum: number; count: number; from: number }[] = [];
  wishes.forEach((wish, index) => {
    let cluster = {
      start: wish.centre - wish.size / 2,
      size: wish.size,
      sum: wish.centre - wish.size / 2,
      count: 1,
      from: index,
    };
    for (;;) {
      const previous = clusters[clusters.length - 1];
      if (previous === undefined || previous.start + previous.size <= cluster.start) break;
      clusters.pop();
      const sum = previous.sum + cluster.sum - cluster.count * previous.size;
      const count = previous.count + cluster.count;
      cluster = { start: sum / count, size: previous.size + cluster.size, sum, count, from: previous.from };
    }
    clusters.push(cluster);
  });
  let floor = low;
  for (const cluster of clusters) {
    cluster.start = Math.max(cluster.start, floor);
    floor = cluster.start + cluster.size;
  }
  let ceiling = high;
  for (const cluster of [...clusters].reverse()) {
    cluster.start = Math.min(cluster.start, ceiling - cluster.size);
    ceiling = cluster.start;
  }
  const middles: number[] = [];
  for (const cluster of clusters) {
    let cursor = cluster.start;
    for (const wish of wishes.slice(cluster.from, cluster.from + cluster.count)) {
      middles.push(cursor + wish.size / 2);
      cursor += wish.size;
    }
  }
  return middles;
}
