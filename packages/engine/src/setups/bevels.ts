import { groupAlike } from '../grouping.ts';
import type { Length } from '../length/length.ts';
import type { Part } from '../parts/part.ts';

/** A bevelled edge, by how one tilts a saw or holds a plane for it. */
export interface BevelSetup {
  /** What is taken off at the back, over so much of thickness. */
  readonly off: Length;
  readonly over: Length;
  /** From square, to a tenth: it is set on a scale, never calculated with. */
  readonly degrees: string;
  readonly parts: readonly string[];
}

export function bevelSetups(parts: readonly Part[]): readonly BevelSetup[] {
  const all = parts.flatMap(({ id, features }) =>
    features.flatMap(({ kind, measures: { width, depth } }) =>
      kind !== 'bevel' || width === undefined || depth === undefined
        ? []
        : [{ part: id, off: depth.length, over: width.length }],
    ),
  );
  return groupAlike(all, ({ off, over }) => [off, over]).map((same) => {
    const [{ off, over }] = same;
    return { off, over, degrees: bevelDegrees(off, over), parts: same.map(({ part }) => part) };
  });
}

/** '7.1', from square. */
export function bevelDegrees(off: Length, over: Length): string {
  return ((Math.atan2(off.approximateInches, over.approximateInches) * 180) / Math.PI).toFixed(1);
}
