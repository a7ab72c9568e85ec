import type { Finding } from '@fettle/findings';
import type { PlacedHardware } from '../../hardware/placed-hardware.ts';
import type { JoinedCase } from '../joinery/joined-case.ts';
import { packerFindings } from './packer-findings.ts';
import { screwFindings } from './screw-findings.ts';

/** Whether hardware in its place has wood to hold in. */
export function hardwareFindings(one: JoinedCase, placed: readonly PlacedHardware[]): readonly Finding[] {
  return [...packerFindings(placed), ...screwFindings(one, placed)];
}
