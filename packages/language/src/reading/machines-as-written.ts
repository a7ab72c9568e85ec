import { isKerfOfABlade, Length, widestKerf } from '@fettle/engine';
import { kerfNotOfABlade, type Mend } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { machine } from '../schema/shop.ts';
import { type ReadContext, Reader } from './reader.ts';

/** Whether the kerf of a machine can be that of a blade. */
export function machineFindings(context: ReadContext, statement: Statement): void {
  if (specOf(statement).spec.word !== 'machine') return;
  const pattern = 'kerf <length>';
  const reader = new Reader(statement, machine, { ...context, findings: [] });
  const [kerf, at] = [reader.length(pattern)?.length, reader.slotOrigin(pattern)];
  if (kerf === undefined || at === undefined) return;
  const { unit } = context.units;
  const limit = widestKerf(unit);
  const name = statement.name ?? '';
  if (!kerf.isPositive()) {
    const size = kerf.abs();
    const mends: readonly Mend[] =
      size.isPositive() && size.compare(limit) <= 0
        ? [{ how: 'write', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }]
        : [];
    context.findings.push(kerfNotOfABlade.at(at, { machine: name, kerf }, { mends }));
    return;
  }
  if (kerf.compare(limit) <= 0) return;
  const inMillimetres = Length.of(kerf.in(unit), 'mm');
  const isMeant = unit === 'in' && isKerfOfABlade(inMillimetres, 'mm');
  const mends: readonly Mend[] = isMeant
    ? [
        {
          how: 'write',
          values: { size: inMillimetres },
          changes: [{ kind: 'set-words', at, words: `${kerf.in(unit)}mm` }],
        },
      ]
    : [];
  context.findings.push(kerfNotOfABlade.at(at, { machine: name, kerf, limit }, { mends }));
}
