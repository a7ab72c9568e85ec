import type { Cell } from '../../design/design.ts';
import { cellsWithin } from '../../design/inside-design.ts';
import type { Price } from '../../design/shop.ts';
import type { Evaluation, LaidCell } from '../../evaluation.ts';
import { groupAlike } from '../../grouping.ts';
import { hingesOnLid, isHingeOfLid } from '../../hardware/lid-hinges.ts';
import type { HardwareKind, PlacedHardware } from '../../hardware/placed-hardware.ts';
import { WALL_SCREW_LONG } from '../../hardware/wall-screws.ts';
import type { Fasteners } from '../../joinery/joint.ts';
import type { Length } from '../../length/length.ts';
import { fastenersToBuy, isWooden } from './fasteners-to-buy.ts';
import { idAmongAll } from './pieces-together.ts';

/** Hardware of one entry, counted as it is sold. */
export interface HardwareToBuy {
  readonly what: HardwareKind | Fasteners['what'];
  /** The name of its shop entry; absent for hardware that no shop file describes. */
  readonly entry?: string;
  /** Pairs of slides, single pieces of everything else. */
  readonly quantity: number;
  readonly inPairs: boolean;
  /** If not, its entry does not say enough to set it in its place, and it is counted by what is usual. */
  readonly isPlaced: boolean;
  readonly price?: Price;
  /** Of what is told by its size where it has no entry, and is wanted in it. */
  readonly size?: { readonly length: Length; readonly thickness?: Length };
  /** What it is for, where no place of it is drawn: it is counted by what is usual. */
  readonly usualFor?: string;
  /** What fastens all of it, alike ones together, the longer first. */
  readonly screws: readonly { readonly length: Length; readonly diameter: Length; readonly count: number }[];
  /** Ids of the parts it goes on. */
  readonly parts: readonly string[];
}

/** Without more being said a leaf hangs on a pair. */
const HINGES_EACH = 2;

/** What a list of hardware is made from; of several pieces that are bought together each has its own. */
export type Equipped = Pick<Evaluation, 'design' | 'hardware' | 'layout' | 'parts' | 'joints' | 'screws'> & {
  readonly pieces?: readonly Evaluation[];
};

export function hardwareToBuy(evaluation: Equipped): readonly HardwareToBuy[] {
  return evaluation.pieces === undefined ? hardwareOfPiece(evaluation) : hardwareOfAll(evaluation.pieces);
}

/** Alike hardware of several pieces is one row. */
function hardwareOfAll(pieces: readonly Evaluation[]): readonly HardwareToBuy[] {
  const rows = pieces.flatMap((piece, at) =>
    hardwareOfPiece(piece).map((row) => ({ ...row, parts: row.parts.map((id) => idAmongAll(id, at + 1)) })),
  );
  const alike = groupAlike(rows, ({ what, entry, inPairs, isPlaced, price, size, usualFor }) => [
    what,
    entry ?? null,
    inPairs,
    isPlaced,
    price?.amount.toString() ?? null,
    size?.length.exactInches ?? null,
    size?.thickness?.exactInches ?? null,
    usualFor ?? null,
  ]);
  return alike.map((group) => ({
    ...group[0],
    quantity: group.reduce((sum, { quantity }) => sum + quantity, 0),
    screws: countedScrews(group.flatMap(({ screws }) => screws)),
    parts: group.flatMap(({ parts }) => parts),
  }));
}

function hardwareOfPiece(evaluation: Equipped): readonly HardwareToBuy[] {
  const { design, hardware, layout } = evaluation;
  const entries = entriesOf(design);
  const groups = new Map<string, PlacedHardware[]>();
  for (const placed of hardware) {
    // These are made of wood, and stand among the parts.
    if (isWooden(placed)) continue;
    // A vent is an opening: there is nothing of it to be bought.
    if (placed.kind === 'vent') continue;
    const key = JSON.stringify([placed.kind, placed.entry, placed.price?.amount.toString()]);
    groups.set(key, [...(groups.get(key) ?? []), placed]);
  }
  const placed = [...groups.values()].flatMap((group): readonly HardwareToBuy[] => {
    const [first] = group;
    if (first === undefined) return [];
    const { kind, entry } = first;
    const known = entry === undefined ? undefined : entries.get(entry);
    const inPairs = kind === 'slide' && known?.mounting !== 'centre';
    const price = known?.price ?? first.price;
    const screwPrice = known?.screws?.price;
    const parts = [...new Set(group.flatMap(({ on }) => on))];
    return [
      {
        what: kind,
        ...(entry === undefined ? {} : { entry }),
        quantity: inPairs ? Math.ceil(group.length / 2) : group.length,
        inPairs,
        isPlaced: true,
        ...(price === undefined ? {} : { price }),
        ...(kind === 'anchor' ? leastLength(group) : {}),
        screws: screwPrice === undefined ? screwsOf(group) : [],
        parts,
      },
      ...(screwPrice === undefined
        ? []
        : screwsOf(group).map(
            ({ length, diameter, count }): HardwareToBuy => ({
              what: 'screw',
              quantity: count,
              inPairs: false,
              isPlaced: true,
              price: screwPrice,
              size: { length, thickness: diameter },
              screws: [],
              parts,
            }),
          )),
    ];
  });
  return [
    ...placed,
    ...hingesWithoutPlace(hardware, layout.face),
    ...lidHingesWithoutPlace(evaluation),
    ...fastenersToBuy(evaluation),
  ];
}

/** Of wall screws the longest that any of them has to be, which is set with the rest of its place. */
function leastLength(group: readonly PlacedHardware[]): Pick<HardwareToBuy, 'size'> {
  const lengths = group.flatMap(({ set }) =>
    set.flatMap(({ words, figure }) => (words === WALL_SCREW_LONG ? [figure.length] : [])),
  );
  const [first, ...others] = lengths;
  return first === undefined ? {} : { size: { length: others.reduce((most, each) => most.max(each), first) } };
}

/** Hinges that doors name and that could not be set in their places. */
function hingesWithoutPlace(hardware: readonly PlacedHardware[], face: LaidCell | undefined): readonly HardwareToBuy[] {
  const hung = new Set(hardware.flatMap(({ kind, cell }) => (kind === 'hinge' && cell !== undefined ? [cell] : [])));
  const rows = new Map<string, HardwareToBuy>();
  const visit = ({ cell, leaves, cells }: LaidCell): void => {
    for (const inner of cells) visit(inner);
    if (cell.kind !== 'front' || cell.hinges === undefined || hung.has(cell.id)) return;
    const { name, price } = cell.hinges;
    const before = rows.get(name)?.quantity ?? 0;
    rows.set(name, {
      what: 'hinge',
      entry: name,
      quantity: before + leaves.length * (cell.hanging?.count ?? HINGES_EACH),
      inPairs: false,
      isPlaced: false,
      ...(price === undefined ? {} : { price }),
      screws: [],
      parts: [],
    });
  };
  if (face !== undefined) visit(face);
  return [...rows.values()];
}

/** Hinges of a lid that could not be set in their places. */
function lidHingesWithoutPlace({ design, hardware, layout }: Equipped): readonly HardwareToBuy[] {
  const lid = design.carcase.top?.lid;
  if (lid?.hinges === undefined || layout.carcase === undefined) return [];
  if (hardware.some(({ id }) => isHingeOfLid(id))) return [];
  const { name, price } = lid.hinges;
  return [
    {
      what: 'hinge',
      entry: name,
      quantity: hingesOnLid(lid, layout.carcase.body.x.size.length, layout.carcase.unit),
      inPairs: false,
      isPlaced: false,
      ...(price === undefined ? {} : { price }),
      screws: [],
      parts: [],
    },
  ];
}

function screwsOf(group: readonly PlacedHardware[]): HardwareToBuy['screws'] {
  return countedScrews(group.flatMap(({ screws }) => screws.map((screw) => ({ ...screw, count: 1 }))));
}

function countedScrews(screws: HardwareToBuy['screws']): HardwareToBuy['screws'] {
  return groupAlike(screws, ({ length, diameter }) => [length.exactInches, diameter.exactInches])
    .map((alike) => {
      const [{ length, diameter }] = alike;
      return { length, diameter, count: alike.reduce((sum, { count }) => sum + count, 0) };
    })
    .sort((a, b) => b.length.compare(a.length));
}

interface KnownEntry {
  readonly name: string;
  readonly price?: Price;
  readonly mounting?: 'side' | 'under' | 'centre';
  readonly screws?: { readonly price?: Price };
}

/** What a face and a lid name of the shop, by its name. */
function entriesOf({ face, carcase }: Equipped['design']): ReadonlyMap<string, KnownEntry> {
  const entries = new Map<string, KnownEntry>();
  const note = (entry: KnownEntry | undefined) => {
    if (entry !== undefined) entries.set(entry.name, entry);
  };
  const visit = (cell: Cell): void => {
    for (const inner of cellsWithin(cell)) visit(inner);
    if (cell.kind === 'front') {
      note(cell.hanging?.atLeft?.entry);
      note(cell.hanging?.atRight?.entry);
      note(cell.hinges);
      note(cell.pulls?.entry);
      note(cell.drawer?.slides);
    }
  };
  note(carcase.top?.lid?.hinges);
  if (face === undefined) return entries;
  note(face.pulls?.entry);
  note(face.drawers?.slides);
  visit(face.root);
  return entries;
}
