import {
  edgingAcrossGrain,
  edgingLeavesNoCore,
  type Finding,
  faceFrameNotSolid,
  faceFrameTooThin,
  floorIsOpenFrame,
  mitreWithoutCorner,
  type Origin,
  solidTopCannotMove,
} from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import type { CarcaseDesign } from '../../design/design.ts';
import type { LaidCell } from '../../evaluation.ts';
import { groupAlike } from '../../grouping.ts';
import { axisOf } from '../../joinery/feature.ts';
import { plainCellLabel } from '../../layout/cell-names.ts';
import { Length } from '../../length/length.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { THINNEST_FACE_FRAME } from '../../tables/construction-limits.ts';
import { limitIn } from '../../tables/trade-limits.ts';
import { cellsIn } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { givenAt } from '../written-sizes.ts';

/** Tops that cannot move, floors that are open, strips that cannot be, face frames that are too weak. */
export function caseFindings(one: TradeCase): readonly Finding[] {
  return [...topFindings(one), ...floorFindings(one), ...edgingFindings(one), ...faceFrameFindings(one)];
}

/** Solid sides move as their top does; sheets, and frames around panels, stay as they are. */
function caseMoves({ sides }: CarcaseDesign): boolean {
  return sides?.stock === undefined || (sides.stock.form === 'board' && sides.framed === undefined);
}

function topFindings({ design, parts }: TradeCase): readonly Finding[] {
  const { carcase } = design;
  const { top, sides } = carcase;
  if (top === undefined || sides === undefined || top.stock?.form !== 'board' || caseMoves(carcase)) return [];
  const part = parts.find(({ role }) => role === 'top');
  if (part === undefined) return [];
  const width = part.width.length;
  const related = { role: 'case', values: {}, origin: sides.origin } as const;
  if (top.fixing?.kind === 'glued') {
    const at = top.fixing.origin;
    return [
      solidTopCannotMove.at(
        at,
        { why: 'glued', width },
        {
          related: [related],
          mends: [{ how: 'slotted', values: {}, changes: [{ kind: 'set-words', at, words: 'slotted behind' }] }],
        },
      ),
    ];
  }
  const join = top.join ?? carcase.join;
  if (top.placement !== 'between' || join?.kind !== 'dado') return [];
  return [
    solidTopCannotMove.at(
      top.origin,
      { why: 'dado', width },
      { related: [{ role: 'join', values: {}, origin: join.origin }, related] },
    ),
  ];
}

function floorFindings({ face }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  const open = cellsIn(face.root).flatMap(({ laid }) => {
    const { cell } = laid;
    if (cell.kind !== 'stack') return [];
    return laid.dividers.flatMap(({ divider }) => {
      if (divider.form !== 'web-frame' || divider.dustPanel !== undefined) return [];
      const above = laid.cells.find((inner) => inner.cell === cell.cells[cell.dividers.indexOf(divider)]);
      const standing = above === undefined ? undefined : heldAtFoot(above);
      return standing === undefined ? [] : [{ divider, standing, group: cell }];
    });
  });
  return groupAlike(open, ({ divider }) => divider.origin).map(([{ divider, standing, group }]) => {
    const { cell } = standing;
    const at = divider.formOrigin;
    return floorIsOpenFrame.at(
      at ?? divider.origin,
      { cell: cell.name === undefined ? plainCellLabel(cell, group) : `"${cell.name}"` },
      {
        related: [{ role: 'cell', values: {}, origin: cell.origin }],
        mends:
          at === undefined
            ? []
            : [{ how: 'panel', values: {}, changes: [{ kind: 'set-words', at, words: 'panel' } as const] }],
      },
    );
  });
}

/** The first space that stands on the foot of this one and in which things lie on that foot. */
function heldAtFoot(laid: LaidCell): LaidCell | undefined {
  const { cell } = laid;
  switch (cell.kind) {
    case 'open':
      return laid;
    case 'front':
      return cell.what === 'door' || cell.what === 'lid' ? laid : undefined;
    case 'stack': {
      const lowest = laid.cells.find((inner) => inner.cell === cell.cells.at(-1));
      return lowest && heldAtFoot(lowest);
    }
    case 'row':
      return laid.cells.map(heldAtFoot).find((found) => found !== undefined);
    default: {
      const unknown: never = cell;
      return unknown;
    }
  }
}

function edgingFindings({ parts }: TradeCase): readonly Finding[] {
  const edged = parts.filter(({ edging }) => edging.length > 0);
  return groupAlike(edged, ({ edged: asked }) => asked?.origin).flatMap((alike) => {
    const wrong = alike.map(wrongEdging).find((finding) => finding !== undefined);
    return wrong === undefined ? [] : [wrong];
  });
}

function wrongEdging(part: UnmarkedPart): Finding | undefined {
  const { edging, label, stock, grain, width } = part;
  const [first] = edging;
  if (first === undefined) return undefined;
  for (const axis of ['x', 'y', 'z'] as const) {
    const across = edging.filter(({ at }) => axisOf(at) === axis);
    const strips = Length.sum(across.map(({ thickness }) => thickness.length));
    const size = part.blank[axis].size.length;
    if (across.length > 0 && strips.compare(size) >= 0) {
      return edgingLeavesNoCore.at(rootOrigin(first.thickness) ?? first.origin, { part: label, size, strips });
    }
  }
  if (stock?.form === 'board' && edging.some(({ at }) => axisOf(at) === grain)) {
    return edgingAcrossGrain.at(first.origin, { part: label, width: width.length });
  }
  const meets = new Set(edging.map(({ at }) => axisOf(at))).size > 1;
  if (first.corners !== 'mitred' || meets) return undefined;
  const at: Origin | undefined = part.edged?.cornersOrigin;
  return mitreWithoutCorner.at(
    at ?? first.origin,
    { part: label },
    { mends: at === undefined ? [] : [{ how: 'remove', values: {}, changes: [{ kind: 'remove', at }] }] },
  );
}

function faceFrameFindings({ design, shop }: TradeCase): readonly Finding[] {
  const { frame } = design.carcase;
  if (frame === undefined) return [];
  const { stock, stockOrigin, thickness } = frame;
  if (stock?.form === 'sheet') {
    const boards =
      frame.asked === undefined ? [] : (shop.stocks ?? []).filter((each) => isBoardFor(each, thickness.length));
    return [
      faceFrameNotSolid.at(
        stockOrigin ?? frame.origin,
        { stock: stock.name },
        {
          related: [{ role: 'stock', values: { stock: stock.name }, origin: stock.origin }],
          mends:
            stockOrigin === undefined
              ? []
              : boards.slice(0, 3).map(({ name }) => ({
                  how: 'use-stock',
                  values: { stock: name },
                  changes: [{ kind: 'set-name', at: stockOrigin, name } as const],
                })),
        },
      ),
    ];
  }
  const limit = limitIn(THINNEST_FACE_FRAME, design.units.unit);
  if (thickness.length.compare(limit) >= 0) return [];
  const at = givenAt(thickness);
  return [
    faceFrameTooThin.at(
      rootOrigin(thickness) ?? frame.origin,
      { thickness: thickness.length, limit, difference: limit.minus(thickness.length) },
      {
        mends:
          at === undefined
            ? []
            : [{ how: 'thicken', values: { size: limit }, changes: [{ kind: 'set-length', at, to: limit }] }],
      },
    ),
  ];
}

function isBoardFor(
  stock: { readonly form: string; readonly actual?: { readonly length: Length } },
  thickness: Length,
): boolean {
  return stock.form === 'board' && (stock.actual === undefined || stock.actual.length.equals(thickness));
}
