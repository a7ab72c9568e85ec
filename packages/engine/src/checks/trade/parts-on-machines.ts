import {
  crosscutTooLong,
  crosscutTooWide,
  type Finding,
  partTooShortForMachine,
  type Related,
  ripTooWide,
} from '@fettle/findings';
import type { MachineEntry } from '../../design/shop.ts';
import { type Group, groupAlike } from '../../grouping.ts';
import type { Length } from '../../length/length.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import type { TradeCase } from './case-facts.ts';
import { beyondStock } from './parts-from-stock.ts';

/**
 * Whether the shop's machines take each part: by the machine that takes most, and for the least length by the machine
 * that asks for most. A limit that no machine gives is not checked.
 */
export function machineFindings({ parts, shop }: TradeCase): readonly Finding[] {
  const machines = shop.machines ?? [];
  // What does not come out of its stock is said there.
  const cut = machines.length === 0 ? [] : parts.filter((part) => beyondStock(part, part.stock) === undefined);
  return [
    ...overLimit(cut, largest(machines, 'ripWidth'), ripExcess, ripTooWide),
    ...overLimit(cut, largest(machines, 'crosscutLength'), (part) => ({ size: part.length.length }), crosscutTooLong),
    ...overLimit(cut, largest(machines, 'crosscutWidth'), (part) => ({ size: part.width.length }), crosscutTooWide),
    ...tooShort(cut, largest(machines, 'leastLength')),
  ];
}

interface MachineLimit {
  readonly machine: MachineEntry;
  readonly limit: Length;
}

type LimitName = 'ripWidth' | 'crosscutLength' | 'crosscutWidth' | 'leastLength';

function largest(machines: readonly MachineEntry[], name: LimitName): MachineLimit | undefined {
  let found: MachineLimit | undefined;
  for (const machine of machines) {
    const limit = machine[name]?.length;
    if (limit !== undefined && (found === undefined || limit.compare(found.limit) > 0)) found = { machine, limit };
  }
  return found;
}

interface Measured {
  readonly size: Length;
  readonly offcut?: Length;
}

/** Sheets only: a board is ripped before it is glued up. Undefined where nothing is to be ripped. */
function ripExcess(part: UnmarkedPart): Measured | undefined {
  const { stock } = part;
  if (stock?.form !== 'sheet') return undefined;
  const size = part.width.length;
  if (stock.width === undefined) return { size };
  const offcut = stock.width.length.minus(size);
  return offcut.isPositive() ? { size, offcut } : undefined;
}

function overLimit(
  parts: readonly UnmarkedPart[],
  there: MachineLimit | undefined,
  measure: (part: UnmarkedPart) => Measured | undefined,
  kind: typeof ripTooWide | typeof crosscutTooLong,
): readonly Finding[] {
  if (there === undefined) return [];
  const { machine, limit } = there;
  const over = parts.flatMap((part) => {
    const measured = measure(part);
    if (measured === undefined || measured.size.compare(limit) <= 0) return [];
    // Cut off from the far side of the blade.
    if (measured.offcut !== undefined && measured.offcut.compare(limit) <= 0) return [];
    return [{ part, ...measured }];
  });
  return groupAlike(over, ({ size }) => size.exactInches).map((group) => {
    const [{ part, size, offcut }] = group;
    return kind.at(
      part.origin,
      {
        part: part.label,
        size,
        ...(offcut === undefined ? {} : { offcut }),
        machine: machine.name,
        limit,
        difference: size.minus(limit),
      },
      { related: relatedOf(machine, group) },
    );
  });
}

/** By the longer edge: a narrow strip across the grain is fed along it. */
function tooShort(parts: readonly UnmarkedPart[], there: MachineLimit | undefined): readonly Finding[] {
  if (there === undefined) return [];
  const { machine, limit } = there;
  const short = parts
    .map((part) => ({ part, size: part.length.length.max(part.width.length) }))
    .filter(({ size }) => size.isPositive() && size.compare(limit) < 0);
  return groupAlike(short, ({ size }) => size.exactInches).map((group) => {
    const [{ part, size }] = group;
    return partTooShortForMachine.at(
      part.origin,
      { part: part.label, size, machine: machine.name, limit },
      { related: relatedOf(machine, group) },
    );
  });
}

/** The machine, and the other statements whose parts are as large: several parts of one statement are one party. */
function relatedOf(machine: MachineEntry, group: Group<{ readonly part: UnmarkedPart }>): readonly Related[] {
  const statements = groupAlike(group, ({ part }) => part.origin);
  const others = statements.filter(([{ part }]) => part.origin !== group[0].part.origin);
  return [
    { role: 'machine', values: { machine: machine.name }, origin: machine.origin },
    ...others.map(([{ part }]) => ({ role: 'also', values: { part: part.label }, origin: part.origin })),
  ];
}
