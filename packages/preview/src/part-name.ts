import type { PartView } from '@fettle/protocol';
import type { NumberedFinding } from './page-state.ts';

/** A part's name for those who do not see the picture, with what is wrong with it. */
export function partName(part: PartView, findings: readonly NumberedFinding[]): string {
  const concerned = findings.filter(({ finding }) => finding.parts.includes(part.id));
  return [part.label, ...concerned.map(({ finding }) => finding.sentence)].join('. ');
}
