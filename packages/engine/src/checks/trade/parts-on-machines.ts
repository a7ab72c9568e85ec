import {
  crosscutTooLong,
  crosscutTooWide,
  type Finding,
  partNarrowerThanKerf,
  partTooNarrowForMachine,
  partTooShortForMachine,
  type Related,
  ripTooLong,
  ripTooWide,
} from '@fettle/findings';
import type { MachineEntry } from '../../design/shop.ts';
import { type Group, groupAlike } from '../../grouping.ts';
import type { Length, LengthUnit } from '../../length/length.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { widestKerf } from '../../tables/saw-blades.ts';
import type { TradeCase } from './case-facts.ts';
import { beyondStock } from './parts-from-stock.ts';

/**
 * Whether the shop's machines take each part: by the machine that takes most, and for the least length by the machine
 * that asks for most. A limit that no machine gives is not checked.
 */
export function machineFindings({ parts, shop, layout }: TradeCase): readonly Finding[] {
  const machines = shop.machines ?? [];
  // What does not come out of its stock is said there.
  const cut = machines.length === 0 ? [] : parts.filter((part) => beyondStock(part, part.stock) === undefined);
  return [
    ...overLimit(cut, largest(machines, 'ripWidth'), ripExcess, ripTooWide),
    ...overLimit(cut, largest(machines, 'crosscutLength'), (part) => ({ size: part.length.length }), crosscutTooLong),
    ...overLimit(cut, largest(machines, 'crosscutWidth'), (part) => ({ size: part.width.length }), crosscutTooWide),
    ...overLimit(cut, largest(machines, 'ripLength'), ripLengthOf, ripTooLong),
    ...tooNarrow(cut, least(machines, 'leastWidth')),
    ...withinKerf(cut, largest(machines, 'kerf'), layout.unit),
    ...tooShort(cut, largest(machines, 'leastLength')),
  ];
}

interface MachineLimit {
  readonly machine: MachineEntry;
  readonly limit: Length;
}

type LimitName = 'ripWidth' | 'ripLength' | 'crosscutLength' | 'crosscutWidth' | 'leastLength' | 'leastWidth' | 'kerf';

function largest(machines: readonly MachineEntry[], name: LimitName): MachineLimit | undefined {
  let found: MachineLimit | undefined;
  for (const machine of machines) {
    const limit = machine[name]?.length;
    if (limit !== undefined && (found === undefined || limit.compare(found.limit) > 0)) found = { machine, limit };
  }
  return found;
}

function least(machines: readonly MachineEntry[], name: LimitName): MachineLimit | undefined {
  let found: MachineLimit | undefined;
  for (const machine of machines) {
    const limit = machine[name]?.length;
    if (limit !== undefined && (found === undefined || limit.compare(found.limit) < 0)) found = { machine, limit };
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

/** Of a sheet, unless the part is as wide as it: then nothing is to be ripped. */
function ripLengthOf({ stock, width, length }: UnmarkedPart): Measured | undefined {
  if (stock?.form !== 'sheet' || stock.width?.length.equals(width.length) === true) return undefined;
  return { size: length.length };
}

/** By the machine that cuts the narrowest strips. */
function tooNarrow(parts: readonly UnmarkedPart[], there: MachineLimit | undefined): readonly Finding[] {
  if (there === undefined) return [];
  const { machine, limit } = there;
  const narrow = parts.filter(({ width }) => width.length.isPositive() && width.length.compare(limit) < 0);
  return groupAlike(narrow, ({ width }) => width.length.exactInches).map((group) => {
    const [part] = group;
    const size = part.width.length;
    return partTooNarrowForMachine.at(
      part.origin,
      { part: part.label, size, machine: machine.name, limit, difference: limit.minus(size) },
      { related: relatedOf(machine, asParts(group)) },
    );
  });
}

/** A kerf that no blade has is told where it is written, and not of every part. */
function withinKerf(
  parts: readonly UnmarkedPart[],
  there: MachineLimit | undefined,
  unit: LengthUnit,
): readonly Finding[] {
  if (there === undefined || there.limit.compare(widestKerf(unit)) > 0) return [];
  const { machine, limit } = there;
  const within = parts.filter(({ width }) => width.length.isPositive() && width.length.compare(limit) <= 0);
  return groupAlike(within, ({ width }) => width.length.exactInches).map((group) => {
    const [part] = group;
    return partNarrowerThanKerf.at(
      part.origin,
      { part: part.label, size: part.width.length, machine: machine.name, kerf: limit },
      { related: relatedOf(machine, asParts(group)) },
    );
  });
}

function asParts([first, ...rest]: Group<UnmarkedPart>): Group<{ readonly part: UnmarkedPart }> {
  return [{ part: first }, ...rest.map((part) => ({ part }))];
}

function overLimit(
  parts: readonly UnmarkedPart[],
  there: MachineLimit | undefined,
  measure: (part: UnmarkedPart) => Measured | undefined,
  kind: typeof ripTooWide | typeof crosscutTooLong | typeof ripTooLong,
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
