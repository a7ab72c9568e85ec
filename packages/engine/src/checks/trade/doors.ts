import {
  doorTooWide,
  doorWiderThanHigh,
  type Finding,
  hingeDoorThickness,
  hingeDoorTooHigh,
  hingeDoorTooWide,
  hingeWrongFit,
  type Mend,
} from '@fettle/findings';
import type { FaceDesign, FrontCell, FrontFit } from '../../design/design.ts';
import type { Figure } from '../../design/figure.ts';
import type { HingeEntry } from '../../design/shop.ts';
import type { LaidCell } from '../../evaluation.ts';
import { type Group, groupAlike } from '../../grouping.ts';
import { frontThickness } from '../../layout/front-thickness.ts';
import { fitOf } from '../../layout/touching-fronts.ts';
import type { Length } from '../../length/length.ts';
import { limitIn, WIDEST_DOOR } from '../../tables/trade-limits.ts';
import { givenAt, sizeMend } from '../written-sizes.ts';
import { alsoRelated, cellsIn, distinctOrigins, type NamedCell, whoIs } from './alike.ts';
import type { TradeCase } from './case-facts.ts';

/** Doors: their proportions, and what their hinges are made for. One door, one finding: the gravest. */

interface Door extends NamedCell {
  readonly cell: FrontCell;
  readonly width: Length;
  readonly height: Length;
  readonly thickness: Figure;
  readonly fit: FrontFit['kind'];
  /** Between the two leaves it would have as a pair. */
  readonly gap: Length;
  /** Of doors in general, as its maker's system says it. */
  readonly widest: Length;
}

type Trouble = 'wrong-fit' | 'too-thick' | 'too-thin' | 'hinge-width' | 'hinge-height' | 'wide' | 'wider-than-high';

export function doorFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const face = one.face.design;
  const doors = cellsIn(one.face.root).flatMap((named) =>
    doorOf(named, face, limitIn(WIDEST_DOOR, one.design.units.unit)),
  );
  const troubled = doors.flatMap((door) => {
    const trouble = (door.cell.hinges && hingeTrouble(door, door.cell.hinges)) ?? proportionTrouble(door);
    return trouble === undefined ? [] : [{ door, trouble }];
  });
  return groupAlike(troubled, ({ door, trouble }) => [
    trouble,
    door.width.exactInches,
    door.height.exactInches,
    door.thickness.length.exactInches,
    door.cell.hinges?.name,
  ]).map((group) => finding(one, group[0].trouble, group.map(({ door }) => door) as unknown as Group<Door>));
}

function doorOf(named: NamedCell, face: FaceDesign, widest: Length): readonly Door[] {
  const { cell, leaves } = named.laid;
  const leaf = leaves[0];
  if (cell.kind !== 'front' || leaf === undefined || (cell.what !== 'door' && cell.what !== 'lid')) return [];
  const [width, height] = [leaf.x.size.length, leaf.y.size.length];
  if (!width.isPositive() || !height.isPositive()) return [];
  const thickness = frontThickness(cell, face);
  const { kind: fit, gap } = fitOf(cell, face);
  return [{ ...named, cell, width, height, thickness, fit, gap: gap.length, widest }];
}

/** Whether hinges are made for a door like this one: the checks of how they sit on it take that for granted. */
export function hingesSuit({ design, face }: TradeCase, laid: LaidCell, hinge: HingeEntry): boolean {
  if (face === undefined) return false;
  const doors = doorOf({ laid, within: [] }, face.design, limitIn(WIDEST_DOOR, design.units.unit));
  return doors.every((door) => hingeTrouble(door, hinge) === undefined);
}

function hingeTrouble(door: Door, hinge: HingeEntry): Trouble | undefined {
  // A hinge entry says nothing of lipped doors.
  const isKnown = door.fit !== 'lipped' && hinge.madeFor.length > 0;
  if (isKnown && !hinge.madeFor.some((fit) => fit === door.fit)) return 'wrong-fit';
  if (isOver(door.thickness.length, hinge.thickestDoor?.length)) return 'too-thick';
  if (hinge.thinnestDoor !== undefined && door.thickness.length.compare(hinge.thinnestDoor.length) < 0)
    return 'too-thin';
  if (door.cell.what === 'lid') return undefined;
  if (isOver(door.width, hinge.widestDoor?.length)) return 'hinge-width';
  return isOver(door.height, hinge.highestDoor?.length) ? 'hinge-height' : undefined;
}

function proportionTrouble(door: Door): Trouble | undefined {
  // A lid is hinged along its upper edge: it may be as wide as it likes.
  if (door.cell.what === 'lid') return undefined;
  if (isOver(door.width, door.widest)) return 'wide';
  return isOver(door.width, door.height) ? 'wider-than-high' : undefined;
}

function isOver(size: Length, limit: Length | undefined): boolean {
  return limit !== undefined && size.compare(limit) > 0;
}

function finding(one: TradeCase, trouble: Trouble, doors: Group<Door>): Finding {
  const [door, ...others] = doors;
  const { cell, width, height } = door;
  const thickness = door.thickness.length;
  const who = whoIs(cell, door.group);
  const also = alsoRelated(others);
  const hinge = cell.hinges;
  const at = cell.hingesOrigin ?? cell.origin;
  const hinged = { ...who, hinge: hinge?.name ?? '' };
  const related = [
    ...(hinge === undefined ? [] : [{ role: 'hinge', values: { hinge: hinge.name }, origin: hinge.origin }]),
    ...also,
  ];
  const other = otherHinges(one, doors);
  const between = (size: Length, limit: Length) => ({ limit, difference: size.minus(limit).abs() });
  switch (trouble) {
    case 'wrong-fit':
      return hingeWrongFit.at(
        at,
        { ...hinged, fit: door.fit === 'inset' ? 'inset' : 'overlay' },
        { related, mends: other },
      );
    case 'too-thick':
    case 'too-thin': {
      const limit = (trouble === 'too-thick' ? hinge?.thickestDoor : hinge?.thinnestDoor)?.length ?? thickness;
      const facts = { ...hinged, thickness, ...between(thickness, limit), tooThick: trouble === 'too-thick' };
      const asMade = sizeMend('make-thick', givenAt(door.thickness), limit);
      return hingeDoorThickness.at(at, facts, { related, mends: [...other, ...asMade] });
    }
    case 'hinge-width': {
      const facts = { ...hinged, width, ...between(width, hinge?.widestDoor?.length ?? width) };
      return hingeDoorTooWide.at(at, facts, { related, mends: [...other, ...pairMends(doors)] });
    }
    case 'hinge-height': {
      const facts = { ...hinged, height, ...between(height, hinge?.highestDoor?.length ?? height) };
      return hingeDoorTooHigh.at(at, facts, { related, mends: other });
    }
    case 'wide':
      return doorTooWide.at(
        cell.sizeOrigin,
        { ...who, width, ...between(width, door.widest) },
        { related: also, mends: pairMends(doors) },
      );
    case 'wider-than-high':
      return doorWiderThanHigh.at(
        cell.sizeOrigin,
        { ...who, width, height, difference: width.minus(height) },
        { related: also, mends: pairMends(doors) },
      );
    default: {
      const unknown: never = trouble;
      return unknown;
    }
  }
}

/** Hinges of the shop that suit every one of these doors, and leave nothing else wrong with them. */
function otherHinges({ shop }: TradeCase, doors: Group<Door>): readonly Mend[] {
  const places = distinctOrigins(doors.map(({ cell }) => cell.hingesOrigin));
  if (places === undefined || doors.some((door) => proportionTrouble(door) !== undefined)) return [];
  return (shop.hinges ?? [])
    .filter(({ name }) => name !== doors[0].cell.hinges?.name)
    .filter((hinge) => doors.every((door) => hingeTrouble(door, hinge) === undefined))
    .slice(0, 3)
    .map((hinge) => ({
      how: 'use-hinge',
      values: { hinge: hinge.name },
      changes: places.map((at) => ({ kind: 'set-name', at, name: hinge.name }) as const),
    }));
}

/** Two leaves where there is one, if each of them is then as it should be. */
function pairMends(doors: Group<Door>): readonly Mend[] {
  const places = distinctOrigins(doors.map(({ cell }) => cell.singleOrigin));
  if (places === undefined) return [];
  const isMended = doors.every((door) => {
    const leaf: Door = { ...door, width: door.width.minus(door.gap).dividedBy(2) };
    const hinge = door.cell.hinges;
    return (
      leaf.width.isPositive() &&
      proportionTrouble(leaf) === undefined &&
      (hinge === undefined || hingeTrouble(leaf, hinge) === undefined)
    );
  });
  if (!isMended) return [];
  const changes = places.map((at) => ({ kind: 'set-words', at, words: 'doors' }) as const);
  return [{ how: 'pair', values: { count: doors.length }, changes }];
}
