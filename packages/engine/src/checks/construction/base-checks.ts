import {
  type Finding,
  footCannotTaper,
  hungWithBase,
  hungWithoutNailer,
  nailerTooSmall,
  nailerWithoutRoom,
  notchCutsFrame,
} from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import type { CarcaseDesign } from '../../design/design.ts';
import type { Figure } from '../../design/figure.ts';
import { Length } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import { exactSource } from '../../length/trade-formats.ts';
import { HEIGHT_FOR_MORE_NAILERS, NARROWEST_NAILER, THINNEST_NAILER } from '../../tables/construction-limits.ts';
import { NAILER_WIDTH, usual } from '../../tables/trade-habits.ts';
import { limitIn } from '../../tables/trade-limits.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { givenAt } from '../written-sizes.ts';

/** What a case stands on or hangs by: whether it can be, and whether it holds. Screening only, no proof of strength. */
export function baseFindings(one: TradeCase): readonly Finding[] {
  return [...hungFindings(one), ...notchFindings(one.design.carcase), ...taperFindings(one.design.carcase)];
}

function hungFindings(one: TradeCase): readonly Finding[] {
  const { carcase } = one.design;
  const { hung, nailers } = carcase;
  const room = nailers === undefined ? [] : roomFindings(one);
  if (hung === undefined) return room;
  const base = (
    [
      ['plinth', carcase.plinth],
      ['toe space', carcase.toeSpace],
      ['base of feet', carcase.feet],
    ] as const
  ).find(([, part]) => part !== undefined);
  if (base?.[1] !== undefined) {
    return [
      hungWithBase.at(
        base[1].origin,
        { base: base[0] },
        {
          related: [{ role: 'hung', values: {}, origin: hung.origin }],
          mends: [{ how: 'stand', values: {}, changes: [{ kind: 'remove', at: hung.whole }] }],
        },
      ),
    ];
  }
  if (room.length > 0) return room;
  return nailers === undefined ? withoutNailers(one) : tooSmall(one);
}

/** Behind the back, up to the back edge; undefined where no back bounds it. */
function roomBehind({ back }: CarcaseDesign): Length | undefined {
  if (back === undefined) return undefined;
  return back.fixing === 'applied' ? Length.zero : back.inset.length;
}

function roomFindings({ design }: TradeCase): readonly Finding[] {
  const { nailers, back } = design.carcase;
  const room = roomBehind(design.carcase);
  if (nailers === undefined || back === undefined || room === undefined) return [];
  const thickness = nailers.thickness.length;
  if (thickness.compare(room) <= 0) return [];
  const at = back.fixing === 'applied' ? undefined : givenAt(back.inset);
  return [
    nailerWithoutRoom.at(
      nailers.origin,
      { thickness, room, difference: thickness.minus(room) },
      {
        related: [{ role: 'back', values: { room }, origin: back.origin }],
        mends:
          at === undefined
            ? []
            : [{ how: 'move-in', values: { size: thickness }, changes: [{ kind: 'set-length', at, to: thickness }] }],
      },
    ),
  ];
}

function withoutNailers({ design }: TradeCase): readonly Finding[] {
  const { hung, back, sides } = design.carcase;
  const { unit } = design.units;
  const limit = limitIn(THINNEST_NAILER, unit);
  if (hung === undefined || (back !== undefined && back.thickness.length.compare(limit) >= 0)) return [];
  const room = roomBehind(design.carcase);
  const fits = sides !== undefined && (room === undefined || sides.thickness.length.compare(room) <= 0);
  const of = sides?.stock === undefined ? 'thick' : `of "${sides.stock.name}" thick`;
  const words =
    sides === undefined
      ? ''
      : `nailers ${exactSource(usual(NAILER_WIDTH, unit).length, unit)} wide ${of} ${exactSource(sides.thickness.length, unit)}, by screws`;
  return [
    hungWithoutNailer.at(
      hung.origin,
      { back: back?.thickness.length, limit },
      {
        mends: fits ? [{ how: 'add', values: {}, changes: [{ kind: 'insert-words', after: hung.whole, words }] }] : [],
      },
    ),
  ];
}

function tooSmall({ design, layout }: TradeCase): readonly Finding[] {
  const { nailers } = design.carcase;
  if (nailers === undefined) return [];
  const { unit } = design.units;
  const check = (what: 'thickness' | 'width', figure: Figure, limit: Length): readonly Finding[] => {
    if (figure.length.compare(limit) >= 0) return [];
    const at = givenAt(figure);
    return [
      nailerTooSmall.at(
        rootOrigin(figure) ?? nailers.origin,
        { what, size: figure.length, limit },
        {
          mends:
            at === undefined
              ? []
              : [{ how: 'enlarge', values: { size: limit }, changes: [{ kind: 'set-length', at, to: limit }] }],
        },
      ),
    ];
  };
  const isHigh = layout.body.y.size.length.compare(limitIn(HEIGHT_FOR_MORE_NAILERS, unit)) > 0;
  const least = isHigh ? 3 : 2;
  return [
    ...check('thickness', nailers.thickness, limitIn(THINNEST_NAILER, unit)),
    ...check('width', nailers.width, limitIn(NARROWEST_NAILER, unit)),
    ...(nailers.count >= least
      ? []
      : [
          nailerTooSmall.at(nailers.countOrigin ?? nailers.origin, {
            what: 'count',
            size: nailers.count,
            limit: least,
          }),
        ]),
  ];
}

function notchFindings({ toeSpace, sides, bottom }: CarcaseDesign): readonly Finding[] {
  const framed = sides?.framed;
  if (toeSpace === undefined || framed === undefined || bottom?.placement === 'under') return [];
  const [depth, stile] = [toeSpace.depth.length, framed.stiles.length];
  if (depth.compare(stile) < 0) return [];
  const at = givenAt(toeSpace.depth);
  const size = stile.times(Rational.of(1, 2));
  return [
    notchCutsFrame.at(
      rootOrigin(toeSpace.depth) ?? toeSpace.origin,
      { depth, stile, difference: depth.minus(stile) },
      {
        related: [{ role: 'stile', values: { stile }, origin: rootOrigin(framed.stiles) ?? framed.origin }],
        // Half of a stile is rarely room for toes: where it is not, nothing is proposed.
        mends:
          at === undefined || size.compare(Length.inches(2)) < 0
            ? []
            : [{ how: 'shallower', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
      },
    ),
  ];
}

function taperFindings({ feet }: CarcaseDesign): readonly Finding[] {
  if (feet?.taperTo === undefined) return [];
  const [to, thickness] = [feet.taperTo.length, feet.thickness.length];
  if (to.isPositive() && to.compare(thickness) < 0) return [];
  const at = givenAt(feet.taperTo);
  const size = thickness.times(Rational.of(1, 2));
  return [
    footCannotTaper.at(
      rootOrigin(feet.taperTo) ?? feet.origin,
      { to, thickness },
      {
        mends:
          at === undefined
            ? []
            : [{ how: 'thinner', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
      },
    ),
  ];
}
