import type { Finding } from '@fettle/findings';
import type { TradeCase } from '../trade/case-facts.ts';
import { catchFindings } from './catch-findings.ts';
import { glassFindings } from './glass-findings.ts';
import { hingeFindings } from './hinge-findings.ts';
import { edgeFindings } from './hinged-edges.ts';
import { insideDoorFindings } from './inside-doors.ts';
import { openDoorFindings } from './open-doors.ts';
import { pullFindings } from './pull-findings.ts';

/** How doors hang, what fronts are opened by, and what strikes when doors stand open. */
export function hangingFindings(one: TradeCase): readonly Finding[] {
  return [
    ...hingeFindings(one),
    ...edgeFindings(one),
    ...pullFindings(one),
    ...openDoorFindings(one),
    ...insideDoorFindings(one),
    ...glassFindings(one),
    ...catchFindings(one),
  ];
}
