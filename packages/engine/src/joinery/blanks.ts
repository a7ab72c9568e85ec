import { derive, less, plus } from '../design/derive.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { Span } from '../evaluation.ts';
import type { Block } from '../parts/part.ts';
import type { Axis } from '../parts/slab.ts';
import type { FaceOfPart } from './feature.ts';

/** How much longer a part is cut than one sees of it, and where. */
export interface Growth {
  readonly part: string;
  readonly at: FaceOfPart;
  readonly by: Figure;
  /** 'depth of the dado' */
  readonly words: string;
  /** The other edge moves along, so that the part keeps its width. */
  readonly shifts?: boolean;
}

/** What is cut: what one sees, and what goes into joints on each side. Growth on the same side counts once, the first. */
export function blankOf(box: Block, growth: readonly Growth[]): Block {
  return { x: grown(box.x, 'x', growth), y: grown(box.y, 'y', growth), z: grown(box.z, 'z', growth) };
}

function grown(span: Span, axis: Axis, growth: readonly Growth[]): Span {
  const before = growth.find(({ at }) => at === `-${axis}`);
  const after = growth.find(({ at }) => at === `+${axis}`);
  if (before === undefined && after === undefined) return span;
  const start: Operand[] = [];
  const end: Operand[] = [];
  const size: Operand[] = [];
  if (before !== undefined) {
    start.push(less(before.words, before.by));
    if (before.shifts === true) end.push(less(before.words, before.by));
    else size.push(plus(before.words, before.by));
  }
  if (after !== undefined) {
    end.push(plus(after.words, after.by));
    if (after.shifts === true) start.push(plus(after.words, after.by));
    else size.push(plus(after.words, after.by));
  }
  return {
    start:
      start.length === 0
        ? span.start
        : derive('where it begins in the joint', [plus('what is seen', span.start), ...start]),
    size:
      size.length === 0
        ? span.size
        : derive('with what goes into the joints', [plus('from shoulder to shoulder', span.size), ...together(size)]),
    end: end.length === 0 ? span.end : derive('where it ends in the joint', [plus('what is seen', span.end), ...end]),
  };
}

/** Two terms that are the same figure are one term that counts twice. */
function together(operands: readonly Operand[]): readonly Operand[] {
  const [first, second] = operands;
  if (first === undefined || second === undefined) return operands;
  return first.figure === second.figure && first.label === second.label ? [{ ...first, times: 2 }] : operands;
}
