import type { PictureFinding } from './picture.ts';
import { isSameData } from './same-data.ts';

/**
 * How findings travel: of a text with many pieces an edit changes those of one, and moves those behind it. What stayed is
 * told by its place in the list before.
 */

/** So many findings of the list before, from that place on, all of their words so much further on in the text. */
export interface KeptFindings {
  readonly from: number;
  readonly count: number;
  readonly moved: number;
}

export type FindingsFrame = readonly (PictureFinding | KeptFindings)[];

/** How many findings of the list before may have gone at one place, before what follows counts as new. */
const mostGone = 50;

export function findingsFrame(now: readonly PictureFinding[], before: readonly PictureFinding[]): FindingsFrame {
  const frame: (PictureFinding | KeptFindings)[] = [];
  let next = 0;
  for (let at = 0; at < now.length; ) {
    const finding = now[at] as PictureFinding;
    const from = placeOf(finding, before, next);
    if (from === undefined) {
      frame.push(finding);
      at += 1;
      continue;
    }
    const moved = movedBy(before[from], finding) ?? 0;
    let count = 1;
    while (movedBy(before[from + count], now[at + count]) === moved) count += 1;
    frame.push({ from, count, moved });
    at += count;
    next = from + count;
  }
  return frame;
}

function placeOf(finding: PictureFinding, before: readonly PictureFinding[], from: number): number | undefined {
  for (let at = from; at < before.length && at <= from + mostGone; at++) {
    if (movedBy(before[at], finding) !== undefined) return at;
  }
  return undefined;
}

/** Undefined where they are not the same but for their place. */
function movedBy(one: PictureFinding | undefined, other: PictureFinding | undefined): number | undefined {
  if (one === undefined || other === undefined) return undefined;
  const isSame =
    one.code === other.code &&
    one.severity === other.severity &&
    one.sentence === other.sentence &&
    one.piece === other.piece &&
    one.span.end - one.span.start === other.span.end - other.span.start &&
    isSameData(one.parts, other.parts);
  return isSame ? other.span.start - one.span.start : undefined;
}

/** Undefined when the frame speaks of findings there were not. */
export function findingsAfter(
  frame: FindingsFrame,
  before: readonly PictureFinding[],
): readonly PictureFinding[] | undefined {
  const findings: PictureFinding[] = [];
  for (const each of frame) {
    if (!('from' in each)) {
      findings.push(each);
      continue;
    }
    const { from, count, moved } = each;
    if (from + count > before.length) return undefined;
    for (const finding of before.slice(from, from + count)) {
      const { start, end } = finding.span;
      findings.push(moved === 0 ? finding : { ...finding, span: { start: start + moved, end: end + moved } });
    }
  }
  return findings;
}
