import {
  assumed,
  type DoorBefore,
  type Figure,
  type FrontCell,
  type FrontFit,
  type GroupCell,
  INSIDE_BEHIND_DOOR,
  type InsideDesign,
  Length,
  type LengthUnit,
  usual,
} from '@fettle/engine';
import { cannotBeBoth } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import * as vocabulary from '../schema/face.ts';
import { optional } from './read-shop.ts';
import { headOrigin, onlyStatement, type ReadContext, Reader } from './reader.ts';

/** What stands behind a door, as the maker wrote it. */

/** How the cells in it are read: as a stack, whose fronts know the door before them. */
export type ReadCells = (
  statement: Statement,
  behind: DoorBefore,
  basics: Pick<GroupCell, 'id' | 'along' | 'origin' | 'sizeOrigin' | 'behind'>,
) => GroupCell;

export function readInside(
  context: ReadContext,
  statement: Statement,
  door: Pick<FrontCell, 'id' | 'front' | 'fit' | 'behind'>,
  faceFit: FrontFit,
  readCells: ReadCells,
): { readonly inside?: InsideDesign } {
  const found = onlyStatement(context, statement, 'inside');
  if (found === undefined) return {};
  bothInsideAndShelves(context, statement, found);
  const reader = new Reader(found, vocabulary.frontSpecs.inside, context);
  const each = reader.length('<length> clear each side');
  const left = reader.length('<length> clear at left') ?? each;
  const right = reader.length('<length> clear at right') ?? each;
  const behindDoor = reader.length('<length> behind door') ?? usuallyBehind(door.fit ?? faceFit, context.units.unit);
  const behind: DoorBefore = {
    door: { ...optional('front', door.front), ...optional('fit', door.fit), ...optional('behind', door.behind) },
    behindDoor,
  };
  const { origin } = reader;
  const root = readCells(found, behind, {
    id: `${door.id}/inside`,
    along: { kind: 'rest' },
    origin,
    sizeOrigin: origin,
    behind,
  });
  if (root.cells.length === 0) return {};
  const head = headOrigin(context, found);
  const wordOrigin = { unit: head.unit, start: head.start, end: head.start + (found.head?.length ?? 0) };
  return {
    inside: {
      origin,
      wordOrigin,
      behindDoor,
      clear: { ...optional('left', left), ...optional('right', right) },
      root,
    },
  };
}

/** A door on the case leaves the whole depth behind it; one inside it wants a little air. */
function usuallyBehind(fit: FrontFit, unit: LengthUnit): Figure {
  return fit.kind === 'overlay'
    ? assumed(Length.zero, 'fronts behind a door that lies on the case are flush with the case')
    : usual(INSIDE_BEHIND_DOOR, unit);
}

/** Shelves over the whole opening leave no place for what stands inside: they belong into an open space of it. */
function bothInsideAndShelves(context: ReadContext, statement: Statement, found: Statement): void {
  const shelves = onlyStatement(context, statement, 'shelves');
  if (shelves === undefined) return;
  context.findings.push(
    cannotBeBoth.at(
      headOrigin(context, shelves),
      { words: 'shelves', other: 'inside', place: 'what is behind a door' },
      { related: [{ role: 'other', values: { words: 'inside' }, origin: headOrigin(context, found) }] },
    ),
  );
}
