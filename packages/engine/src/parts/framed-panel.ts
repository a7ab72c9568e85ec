import type { Origin } from '@fettle/findings';
import type { FramedDesign, GlassDesign, MiddleRailsDesign } from '../design/construction-design.ts';
import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { Stock } from '../design/shop.ts';
import type { LaidCell, Span } from '../evaluation.ts';
import { spanFrom, spanUpTo } from '../layout/spans.ts';
import { Rational } from '../length/rational.ts';
import type { Block } from './part.ts';
import { slab, type UnmarkedPart } from './slab.ts';

/**
 * Stiles, rails and panels that make a side or a back, from shoulder to shoulder. Stiles run the whole height, rails
 * stand between them, panels fill what is left; what lies in grooves is the business of joinery.
 */
export interface FramePlace {
  readonly id: string;
  /** 'left side' */
  readonly words: string;
  readonly box: Block;
  readonly thin: 'x' | 'z';
  /** The axis its rails run along. */
  readonly across: 'x' | 'z';
  /** Where that axis starts, and where it ends. */
  readonly ends: readonly [string, string];
  readonly stock?: Stock | undefined;
  readonly origin: Origin;
  /** Of a door: the cell it belongs to. */
  readonly cell?: string;
}

/** `dividers`: what meets this frame, for rails that lie behind it. */
export function framedPanelParts(
  framed: FramedDesign,
  place: FramePlace,
  dividers: readonly Span[],
): readonly UnmarkedPart[] {
  const { box, across, thin, id, words } = place;
  const common = { ...box, thin, stock: place.stock, origin: place.origin, frame: id, cell: place.cell } as const;
  const stiles = [spanFrom(box[across].start, framed.stiles), spanUpTo(box[across].end, framed.stiles)] as const;
  const between: Span = {
    start: stiles[0].end,
    size: derive('from stile to stile', [
      plus(`width of the ${words}`, box[across].size),
      less('width of the stiles', framed.stiles, 2),
    ]),
    end: stiles[1].start,
  };
  const bottom = spanFrom(box.y.start, framed.bottomRail);
  const top = spanUpTo(box.y.end, framed.topRail);
  const middle = middleRails(framed.middleRails, bottom, top, dividers);
  const rails = [bottom, ...middle, top];
  const railWords = (at: number): string => {
    if (at === 0) return 'bottom rail';
    if (at === rails.length - 1) return 'top rail';
    return 'middle rail';
  };
  const numbered = (at: number): string =>
    at === 0 ? 'rail-bottom' : at === rails.length - 1 ? 'rail-top' : `rail-middle${at === 1 ? '' : `-${at}`}`;
  const panelDeep = centred(box[thin], framed.panel.thickness);
  return [
    ...stiles.map((span, at) =>
      slab({
        ...common,
        [across]: span,
        id: `${id}/stile-${place.ends[at]}`,
        label: `${place.ends[at]} stile of the ${words}`,
        role: 'stile',
        grain: 'y',
      }),
    ),
    ...rails.map((span, at) =>
      slab({
        ...common,
        [across]: between,
        y: span,
        id: `${id}/${numbered(at)}`,
        label: `${railWords(at)} of the ${words}`,
        role: 'rail',
        grain: across,
      }),
    ),
    ...rails.slice(1).map((upper, at) => {
      const lower = rails[at] as Span;
      if (framed.glass !== undefined) {
        return panePart(
          framed.glass,
          { ...common, across },
          { across: between, y: betweenRails(lower, upper) },
          {
            id: `${id}/pane${at === 0 ? '' : `-${at + 1}`}`,
            words,
          },
        );
      }
      return slab({
        ...common,
        stock: framed.panel.stock,
        origin: framed.panel.origin,
        [across]: between,
        y: betweenRails(lower, upper),
        [thin]: panelDeep,
        id: `${id}/panel${at === 0 ? '' : `-${at + 1}`}`,
        label: `${rails.length === 2 ? 'panel' : panelWords(at, rails.length - 1)} of the ${words}`,
        role: 'panel',
        // A panel stands with its grain upright (common practice).
        grain: 'y',
      });
    }),
  ];
}

/** A pane reaches into the rabbets of its frame all round and lies against their front. */
function panePart(
  glass: GlassDesign,
  {
    across,
    z,
    frame,
    cell,
  }: { readonly across: 'x' | 'z'; readonly z: Span; readonly frame: string; readonly cell: string | undefined },
  seen: { readonly across: Span; readonly y: Span },
  { id, words }: { readonly id: string; readonly words: string },
): UnmarkedPart {
  const into = (span: Span, what: string): Span =>
    spanFrom(
      derive('where the pane begins', [
        plus('where it is seen', span.start),
        less('width of the rabbet', glass.rabbetWidth),
        plus('clearance in all', glass.clearance, Rational.of(1, 2)),
      ]),
      derive(`${what} of the pane`, [
        plus(`${what} that is seen`, span.size),
        plus('width of the rabbets', glass.rabbetWidth, 2),
        less('clearance in all', glass.clearance),
      ]),
    );
  return slab({
    id,
    label: `glass pane of the ${words}, to order`,
    role: 'pane',
    x: across === 'x' ? into(seen.across, 'width') : seen.across,
    y: into(seen.y, 'height'),
    z: spanFrom(
      derive('the front of the rabbet', [
        plus('the back of the frame', z.end),
        less('depth of the rabbet', glass.rabbetDepth),
      ]),
      glass.thickness,
    ),
    thin: 'z',
    grain: 'y',
    origin: glass.origin,
    frame,
    cell,
  });
}

function panelWords(at: number, count: number): string {
  if (at === 0) return 'lower panel';
  return at === count - 1 ? 'upper panel' : 'middle panel';
}

function betweenRails(lower: Span, upper: Span): Span {
  return {
    start: lower.end,
    size: derive('from rail to rail', [
      plus('the lower edge of the rail above', upper.start),
      less('the upper edge of the rail below', lower.end),
    ]),
    end: upper.start,
  };
}

/** In the middle of the thickness of the frame. */
function centred(frame: Span, panel: Figure): Span {
  return spanFrom(
    derive('the panel lies in the middle of the frame', [
      plus('where the frame begins', frame.start),
      plus('thickness of the frame', frame.size, Rational.of(1, 2)),
      less('thickness of the panel', panel, Rational.of(1, 2)),
    ]),
    panel,
  );
}

/** From bottom to top. A rail behind a divider has its middle behind that of the divider. */
function middleRails(
  asked: MiddleRailsDesign | undefined,
  bottom: Span,
  top: Span,
  dividers: readonly Span[],
): readonly Span[] {
  if (asked === undefined) return [];
  const { width, place } = asked;
  switch (place.kind) {
    case 'at-dividers':
      return [...dividers]
        .sort((a, b) => a.start.length.compare(b.start.length))
        .map((divider) =>
          spanFrom(
            derive('the rail lies behind the middle of the divider', [
              plus('where the divider begins', divider.start),
              plus('thickness of the divider', divider.size, Rational.of(1, 2)),
              less('width of the rail', width, Rational.of(1, 2)),
            ]),
            width,
          ),
        );
    case 'even':
      return evenRails(place.count, width, bottom, top);
    default: {
      const unknown: never = place;
      return unknown;
    }
  }
}

function evenRails(count: number, width: Figure, bottom: Span, top: Span): readonly Span[] {
  const spaces = Rational.of(1, count + 1);
  const free = derive('height of each panel between the rails', [
    plus('the lower edge of the top rail', top.start, spaces),
    less('the upper edge of the bottom rail', bottom.end, spaces),
    less('width of the middle rails', width, Rational.of(count).times(spaces)),
  ]);
  return Array.from({ length: count }, (_, at) =>
    spanFrom(
      derive('where the rail begins', [
        plus('the upper edge of the bottom rail', bottom.end),
        plus('height of each panel', free, at + 1),
        plus('width of the rails below', width, at),
      ]),
      width,
    ),
  );
}

/** What lies level and meets the side of the case at this end of the face. */
export function dividersAt(end: 'left' | 'right', laid: LaidCell | undefined): readonly Span[] {
  if (laid === undefined) return [];
  const { cell } = laid;
  if (cell.kind === 'row') {
    const outermost = end === 'left' ? cell.cells[0] : cell.cells.at(-1);
    return dividersAt(
      end,
      laid.cells.find((inner) => inner.cell === outermost),
    );
  }
  if (cell.kind !== 'stack') return [];
  return [
    ...laid.dividers.filter(({ divider }) => divider.form !== 'none').map(({ at }) => at.y),
    ...laid.cells.flatMap((inner) => dividersAt(end, inner)),
  ];
}
