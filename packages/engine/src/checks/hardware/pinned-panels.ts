import { type Finding, type Mend, screwPinsPanel } from '@fettle/findings';
import { groupAlike } from '../../grouping.ts';
import { type Backing, backingsOf } from '../../hardware/backing.ts';
import { slideLines } from '../../hardware/drawer-slides.ts';
import type { PlacedHardware, Screw } from '../../hardware/placed-hardware.ts';
import type { Length } from '../../length/length.ts';
import { exactSource } from '../../length/trade-formats.ts';
import type { LaidDrawer } from '../../parts/laid-drawers.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { PACKER_LEFT, SHORTEST_SLIDE_SCREW, THICKEST_PACKER } from '../../tables/joinery-limits.ts';
import { limitIn } from '../../tables/trade-limits.ts';
import { givenAt } from '../written-sizes.ts';
import type { FittedCase } from './hardware-findings.ts';

/** Screws of slides that reach through packers into solid panels, which have to move in their frames. */
export function pinnedPanelFindings(one: FittedCase, placed: readonly PlacedHardware[]): readonly Finding[] {
  const farthest = limitIn(THICKEST_PACKER, one.unit);
  const pinning = placed.flatMap((piece): readonly Pinning[] => {
    if (piece.packing === undefined) return [];
    const backings = backingsOf(piece.screws, one.parts, farthest);
    return piece.screws.flatMap((screw, index) => pinnedBy(piece, screw, backings[index]));
  });
  return groupAlike(pinning, ({ piece }) => piece.origin).map((group) => {
    const [{ piece, screw, panel, wood }, ...others] = group;
    const drawers = one.drawers.filter(({ cell }) => group.some((each) => each.piece.cell === cell.id));
    return screwPinsPanel.at(
      piece.origin,
      {
        hardware: piece.label,
        screw: screw.words ?? 'screw',
        others: others.length,
        panel: panel.label,
        length: screw.length,
        wood,
        by: screw.length.minus(wood),
      },
      {
        related: [
          ...(piece.packing === undefined
            ? []
            : [{ role: 'packers', values: {}, origin: piece.packing.origin } as const]),
          { role: 'panel', values: {}, origin: panel.origin },
        ],
        mends: [...shorterScrews(group, drawers, one), ...ontoRail(drawers, piece, one)],
      },
    );
  });
}

interface Pinning {
  readonly piece: PlacedHardware;
  readonly screw: Screw;
  readonly panel: UnmarkedPart;
  /** What the screw goes through before it meets the panel. */
  readonly wood: Length;
}

function pinnedBy(piece: PlacedHardware, screw: Screw, backing: Backing | undefined): readonly Pinning[] {
  // What is wrong with it in another way is told of that.
  if (backing?.kind !== 'solid') return [];
  const panel = backing.parts.find(isFloating);
  if (panel === undefined) return [];
  const wood =
    screw.towards === '-x' ? screw.at.x.minus(panel.blank.x.end.length) : panel.blank.x.start.length.minus(screw.at.x);
  return wood.compare(screw.length) < 0 ? [{ piece, screw, panel, wood }] : [];
}

/** Solid wood in the grooves of a frame: sheets do not move, and may be held. */
function isFloating({ role, stock }: UnmarkedPart): boolean {
  return role === 'panel' && stock?.form === 'board';
}

function shorterScrews(
  group: readonly Pinning[],
  drawers: readonly LaidDrawer[],
  { unit }: FittedCase,
): readonly Mend[] {
  const least = group.map(({ wood }) => wood).reduce((a, b) => a.min(b));
  const size = least.minus(limitIn(PACKER_LEFT, unit));
  const statement = drawers[0]?.drawer.slidesStatement;
  const screws = drawers[0]?.drawer.slideScrews;
  if (size.compare(limitIn(SHORTEST_SLIDE_SCREW, unit)) < 0 || statement === undefined) return [];
  const at = givenAt(screws);
  if (at !== undefined) {
    return [{ how: 'shorter', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
  }
  const words = `, screws ${exactSource(size, unit)} long`;
  return [{ how: 'shorter', values: { size }, changes: [{ kind: 'insert-words', after: statement, words }] }];
}

/** So that the whole slide of every drawer that is set by the same number lies before a rail, and needs no packer. */
function ontoRail(drawers: readonly LaidDrawer[], { packing }: PlacedHardware, one: FittedCase): readonly Mend[] {
  const [first] = drawers;
  const above = first?.drawer.slidesAt?.above;
  const at = givenAt(above);
  if (above === undefined || at === undefined) return [];
  const alike = one.drawers.filter(({ drawer }) => drawer.slidesAt?.above === above);
  const rails = one.parts.filter(({ role, thin }) => role === 'rail' && thin === 'x');
  const moves = alike.flatMap((drawer) => movesOntoRails(drawer, rails, one));
  const shared = moves
    .filter((by) => alike.every((drawer) => isBeforeRail(drawer, by, rails, one)))
    .filter((by) => !above.length.plus(by).isNegative())
    .sort((a, b) => a.abs().compare(b.abs()));
  const [least] = shared;
  if (least === undefined) return [];
  const size = above.length.plus(least);
  return [
    {
      how: 'onto-rail',
      values: { size },
      changes: [
        { kind: 'set-length', at, to: size },
        ...(packing === undefined ? [] : [{ kind: 'remove', at: packing.statement } as const]),
      ],
    },
  ];
}

function movesOntoRails(drawer: LaidDrawer, rails: readonly UnmarkedPart[], one: FittedCase): readonly Length[] {
  const { slides } = drawer.drawer;
  if (slides === undefined) return [];
  const { y } = slideLines(drawer, slides, one.layout);
  return rails.flatMap(({ box }) => [box.y.start.length.minus(y.start.length), box.y.end.length.minus(y.end.length)]);
}

function isBeforeRail(
  { drawer, laid, box, ...rest }: LaidDrawer,
  by: Length,
  rails: readonly UnmarkedPart[],
  { layout }: FittedCase,
): boolean {
  const { slides } = drawer;
  if (slides === undefined) return false;
  const { y } = slideLines({ drawer, laid, box, ...rest }, slides, layout);
  const [from, to] = [y.start.length.plus(by), y.end.length.plus(by)];
  const isWithin = (span: { readonly start: { length: Length }; readonly end: { length: Length } }) =>
    span.start.length.compare(from) <= 0 && span.end.length.compare(to) >= 0;
  return isWithin(box.y) && rails.some((rail) => isWithin(rail.box.y));
}
