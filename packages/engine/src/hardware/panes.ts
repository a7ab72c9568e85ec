import type { FrontCell } from '../design/design.ts';
import type { LaidCell } from '../evaluation.ts';
import type { FaceOfPart, Feature } from '../joinery/feature.ts';
import { doorFrame } from '../layout/front-thickness.ts';
import type { Length } from '../length/length.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { boxOf, intervalOf } from '../solids/index.ts';
import type { HardwareCase } from './fit-hardware.ts';
import type { FittedHardware } from './placed-hardware.ts';

/** Cuts the rabbets that panes lie in: along the inner edges of a frame, from the back, once it is glued up. */
export function fitPanes({ design, face: root, parts }: HardwareCase): FittedHardware {
  const { face } = design;
  const features: Feature[] = [];
  const visit = ({ cell, cells }: LaidCell): void => {
    for (const inner of cells) visit(inner);
    if (face === undefined || cell.kind !== 'front') return;
    const glass = doorFrame(cell, face)?.glass;
    if (glass === undefined) return;
    for (const pane of parts.filter(({ role, cell: of }) => role === 'pane' && of === cell.id)) {
      features.push(...rabbetsAround(pane, parts, cell, glass));
    }
  };
  visit(root);
  return { placed: [], features };
}

type Glass = NonNullable<NonNullable<ReturnType<typeof doorFrame>>['glass']>;

/** In each member that the rabbet of this pane reaches into. */
function rabbetsAround(
  pane: UnmarkedPart,
  parts: readonly UnmarkedPart[],
  cell: FrontCell,
  { rabbetWidth, rabbetDepth, clearance, origin }: Glass,
): readonly Feature[] {
  const free = clearance.length.dividedBy(2);
  const x = intervalOf(pane.box.x.start.length.minus(free), pane.box.x.end.length.plus(free));
  const y = intervalOf(pane.box.y.start.length.minus(free), pane.box.y.end.length.plus(free));
  return parts
    .filter((part) => part.frame === pane.frame && part.cell === cell.id && part.role !== 'pane')
    .flatMap((part): Feature[] => {
      const back = part.box.z.end.length;
      const within = (axis: 'x' | 'y', reach: { readonly from: Length; readonly to: Length }) => ({
        from: reach.from.max(part.box[axis].start.length),
        to: reach.to.min(part.box[axis].end.length),
      });
      const [acrossX, acrossY] = [within('x', x), within('y', y)];
      if (acrossX.from.compare(acrossX.to) >= 0 || acrossY.from.compare(acrossY.to) >= 0) return [];
      const isStile = part.role === 'stile';
      const entry: FaceOfPart = '+z';
      return [
        {
          id: `${pane.id} rabbet in ${part.id}`,
          kind: 'rabbet',
          part: part.id,
          solid: boxOf(acrossX, acrossY, intervalOf(back.minus(rabbetDepth.length), back)),
          entry,
          runs: isStile ? 'y' : 'x',
          measures: { width: rabbetWidth, depth: rabbetDepth },
          stage: 'after glue-up',
          origin,
        },
      ];
    });
}
