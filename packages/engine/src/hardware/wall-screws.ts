import type { Origin } from '@fettle/findings';
import { derive, less, plus } from '../design/derive.ts';
import type { PieceDesign } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { ScrewEntry } from '../design/shop.ts';
import type { CarcaseLayout } from '../evaluation.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { WALL_HIDDEN, WALL_HOLD, WALL_STUDS } from '../tables/hanging-habits.ts';
import { usual } from '../tables/trade-habits.ts';
import type { FittedHardware, PlacedHardware } from './placed-hardware.ts';

/**
 * The screws that a hung piece is fixed to its wall by: through each of its strips, or through a back that carries it
 * alone. Where the studs are is not known here, so only how many there are, how long and how high; what the wall holds
 * is never judged.
 */
export interface WallScrews {
  readonly rows: readonly WallRow[];
  /** In each row: as many as it surely meets studs, at least two. */
  readonly inEach: number;
  /** What they have to be at least, and what they go through before they hold. */
  readonly needed: Figure;
  readonly before: Figure;
  readonly asked?: { readonly screw: ScrewEntry; readonly origin: Origin };
  readonly origin: Origin;
}

interface WallRow {
  readonly part: UnmarkedPart;
  readonly words: string;
  /** From the lower edge of the piece. */
  readonly middle: Figure;
}

const half = Rational.of(1, 2);
const quarter = Rational.of(1, 4);
/** However far apart studs are said to be: no strip takes more. */
const MOST_IN_A_ROW = 100;

/** The words under which the least length of a wall screw is set. */
export const WALL_SCREW_LONG = 'long, at least';

export interface HungCase {
  readonly design: PieceDesign;
  readonly layout: CarcaseLayout;
  readonly parts: readonly UnmarkedPart[];
}

/** Undefined for a piece that does not hang, or has nothing to hang by. */
export function planWallScrews(one: HungCase): WallScrews | undefined {
  const { design, layout } = one;
  const { hung, back, nailers } = design.carcase;
  const rows = rowsOf(one);
  const [first] = rows;
  if (hung === undefined || first === undefined) return undefined;
  const { unit } = layout;
  const studs = hung.studsApart ?? usual(WALL_STUDS, unit);
  const across = first.part.box.x.size.length;
  const met = studs.length.isPositive() ? Math.floor(across.ratioTo(studs.length).toNumber()) : 0;
  const before = derive('what the screw passes before it holds', [
    ...(back === undefined ? [] : [plus('thickness of the back', back.thickness)]),
    ...(nailers === undefined ? [] : [plus('thickness of the strip', nailers.thickness)]),
    plus('what lines the wall', usual(WALL_HIDDEN, unit)),
  ]);
  return {
    rows,
    inEach: Math.min(Math.max(met, 2), MOST_IN_A_ROW),
    needed: derive('least length of the screw', [
      plus('what it passes before it holds', before),
      plus('what has to hold', usual(WALL_HOLD, unit)),
    ]),
    before,
    ...(hung.screw === undefined ? {} : { asked: { screw: hung.screw, origin: hung.screwOrigin ?? hung.origin } }),
    origin: hung.origin,
  };
}

function rowsOf({ parts }: HungCase): readonly WallRow[] {
  const strips = parts.filter(({ role }) => role === 'nailer');
  if (strips.length > 0) {
    return strips.map((part) => ({
      part,
      words: part.label,
      middle: derive('the middle of the strip', [
        plus('its lower edge', part.box.y.start),
        plus('its width', part.box.y.size, half),
      ]),
    }));
  }
  const back = parts.find(({ role }) => role === 'back');
  if (back === undefined) return [];
  const { start, end, size } = back.box.y;
  return [
    {
      part: back,
      words: 'upper part of the back',
      middle: derive('a quarter from the top of the back', [
        plus('its upper edge', end),
        less('height of the back', size, quarter),
      ]),
    },
    {
      part: back,
      words: 'lower part of the back',
      middle: derive('a quarter from the foot of the back', [
        plus('its lower edge', start),
        plus('height of the back', size, quarter),
      ]),
    },
  ];
}

export function fitWallScrews(one: HungCase): FittedHardware {
  const plan = planWallScrews(one);
  if (plan === undefined) return { placed: [], features: [] };
  const { aboveFloor } = one.layout;
  const { rows, inEach, needed, asked, origin } = plan;
  return {
    placed: rows.flatMap(({ part, words, middle }) =>
      Array.from({ length: inEach }, (_, at): PlacedHardware => {
        const height =
          aboveFloor === undefined
            ? { words: 'middle above the lower edge of the piece', figure: middle }
            : {
                words: 'middle above the floor',
                figure: derive('the line of the screws on the wall', [
                  plus('from the floor to the piece', aboveFloor),
                  plus('from its lower edge to the middle of the screw', middle),
                ]),
              };
        return {
          id: `${part.id}/wall-screw-${words === part.label ? '' : `${words} `}${at + 1}`,
          kind: 'anchor',
          ...(asked === undefined ? {} : { entry: asked.screw.name }),
          label: `wall screw ${at + 1} of the ${words}`,
          on: [part.id],
          set: [height, { words: WALL_SCREW_LONG, figure: needed }],
          screws: [],
          origin,
        };
      }),
    ),
    features: [],
  };
}
