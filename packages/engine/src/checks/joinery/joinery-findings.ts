import type { Finding } from '@fettle/findings';
import type { PieceDesign } from '../../design/design.ts';
import { depthFindings } from './depths-and-walls.ts';
import { meetingFindings } from './features-that-meet.ts';
import type { JoinedCase } from './joined-case.ts';
import { proportionFindings } from './proportions.ts';
import { sizeFindings } from './sizes-of-joints.ts';
import { toolFindings } from './tools-for-joints.ts';

/**
 * Whether every joint can be cut and holds, found before a saw is set. One cause, one finding: what breaks through is
 * not also told to be thin or to meet what lies behind it.
 */
export function joineryFindings(design: PieceDesign, one: JoinedCase): readonly Finding[] {
  const withoutSize = sizeFindings(design);
  // What such a joint leads to is no news.
  if (withoutSize.length > 0) return withoutSize;
  const all = [
    ...proportionFindings(design, one),
    ...depthFindings(one),
    ...meetingFindings(one),
    ...toolFindings(one),
  ];
  const broken = new Set(all.filter(({ severity }) => severity === 'error').map(placeOf));
  return all.filter((finding) => finding.severity === 'error' || !broken.has(placeOf(finding)));
}

function placeOf({ origin }: Finding): string {
  return `${origin.unit} ${origin.start} ${origin.end}`;
}
