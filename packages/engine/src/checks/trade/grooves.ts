import {
  type Finding,
  grooveBreaksOut,
  grooveTooDeep,
  type Mend,
  noCutterForGroove,
  sheetMayNotEnterGroove,
} from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import type { BackDesign, CarcaseDesign, PanelDesign, PieceDesign } from '../../design/design.ts';
import type { CutterEntry } from '../../design/shop.ts';
import { groupAlike } from '../../grouping.ts';
import { Length } from '../../length/length.ts';
import { downToMark } from '../../length/ruler-marks.ts';
import { exactSource } from '../../length/trade-formats.ts';
import { laidDrawers } from '../../parts/laid-drawers.ts';
import {
  DEEPEST_GROOVE,
  GROOVE_DEPTH,
  LEAST_BEHIND_GROOVE,
  LOOSEST_GROOVE,
  limitIn,
  sheetRange,
  USUAL_BEHIND_GROOVE,
} from '../../tables/trade-limits.ts';
import { depthNeeded } from '../suits-box.ts';
import { givenAt } from '../written-sizes.ts';
import type { TradeCase } from './case-facts.ts';

/** Grooves and rabbets: what they leave of the wood they are cut in, and whether the shop can cut them. */
export function grooveFindings(one: TradeCase): readonly Finding[] {
  const { carcase, units } = one.design;
  const { back } = carcase;
  const findings: Finding[] = [];
  if (back !== undefined && back.fixing !== 'applied' && back.depth.length.isPositive()) {
    findings.push(...tooDeep(carcase, back, back.fixing, Length.of(units.ruler, units.unit)));
    if (back.fixing === 'groove') findings.push(...breaksOut(one, back));
  }
  findings.push(...cutterFindings(one));
  return findings;
}

/** The groove runs in whatever the back reaches into; the thinnest of them suffers first. */
function tooDeep(
  carcase: CarcaseDesign,
  back: BackDesign,
  hold: 'groove' | 'rabbet',
  ruler: Length,
): readonly Finding[] {
  const over =
    carcase.stretchers === undefined
      ? { part: 'top', panel: carcase.top }
      : { part: 'stretchers', panel: carcase.stretchers };
  const grooved: readonly { readonly part: string; readonly panel: PanelDesign | undefined }[] = [
    { part: 'sides', panel: carcase.sides },
    { part: 'bottom', panel: carcase.bottom },
    over,
  ];
  let thinnest: { readonly part: string; readonly panel: PanelDesign } | undefined;
  for (const { part, panel } of grooved) {
    if (panel === undefined || !panel.thickness.length.isPositive()) continue;
    const isThinner = thinnest === undefined || panel.thickness.length.compare(thinnest.panel.thickness.length) < 0;
    if (isThinner) thinnest = { part, panel };
  }
  if (thinnest === undefined) return [];
  const thickness = thinnest.panel.thickness.length;
  const depth = back.depth.length;
  const limit = thickness.times(DEEPEST_GROOVE);
  if (depth.compare(limit) <= 0) return [];
  const at = givenAt(back.depth);
  const through = depth.compare(thickness) >= 0;
  const third = downToMark(thickness.times(GROOVE_DEPTH), ruler);
  return [
    grooveTooDeep.at(
      rootOrigin(back.depth) ?? back.origin,
      { hold, depth, part: thinnest.part, thickness, limit, difference: depth.minus(limit), through },
      {
        severity: through ? 'error' : 'warning',
        related: [{ role: 'part', values: { part: thinnest.part, thickness }, origin: thinnest.panel.origin }],
        mends:
          at === undefined
            ? []
            : [{ how: 'shallower', values: { size: third }, changes: [{ kind: 'set-length', at, to: third }] }],
      },
    ),
  ];
}

function breaksOut(one: TradeCase, back: BackDesign): readonly Finding[] {
  const { unit } = one.design.units;
  const limit = limitIn(LEAST_BEHIND_GROOVE, unit);
  const inset = back.inset.length;
  if (inset.isNegative() || inset.compare(limit) >= 0) return [];
  const at = givenAt(back.inset);
  const room = depthToSpare(one);
  const mends = [limitIn(USUAL_BEHIND_GROOVE, unit), limit]
    .filter((size) => room === undefined || size.minus(inset).compare(room) <= 0)
    .flatMap((size): Mend[] => {
      if (at !== undefined) {
        return [{ how: 'move-in', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
      }
      if (back.inset.reason.kind !== 'assumed') return [];
      const words = `, ${exactSource(size, unit)} in from back edge,`;
      return [{ how: 'move-in', values: { size }, changes: [{ kind: 'insert-words', after: back.origin, words }] }];
    });
  return [grooveBreaksOut.at(rootOrigin(back.inset) ?? back.origin, { left: inset, limit }, { mends })];
}

/** How much shallower the inside may become before a slide does not fit; undefined where none limits it. */
function depthToSpare({ face, layout }: TradeCase): Length | undefined {
  if (face === undefined) return undefined;
  return laidDrawers(face.design, layout, face.root).reduce<Length | undefined>((least, { drawer, box }) => {
    if (drawer.slides === undefined) return least;
    const spare = box.depthThere.length.minus(depthNeeded(drawer.slides));
    return least === undefined ? spare : least.min(spare);
  }, undefined);
}

interface Groove {
  readonly words: string;
  readonly panel: PanelDesign;
  readonly depth: Length;
}

function groovesOf(design: PieceDesign): readonly Groove[] {
  const { back } = design.carcase;
  const grooves: Groove[] = [];
  if (back?.fixing === 'groove') grooves.push({ words: 'back', panel: back, depth: back.depth.length });
  const drawers = design.face?.drawers;
  if (drawers?.bottom !== undefined && drawers.bottomHeld !== 'applied') {
    grooves.push({ words: 'drawer bottoms', panel: drawers.bottom, depth: drawers.bottomGroove.length });
  }
  return grooves.filter(({ panel, depth }) => panel.thickness.length.isPositive() && depth.isPositive());
}

function cutterFindings({ design, shop }: TradeCase): readonly Finding[] {
  const grooves = groovesOf(design);
  // The shop is asked only where something is to be cut.
  const cutters = grooves.length === 0 ? [] : (shop.cutters ?? []);
  if (cutters.length === 0) return [];
  return groupAlike(grooves, ({ panel, depth }) => [panel.thickness.length.exactInches, depth.exactInches]).flatMap(
    ([groove]) => {
      const width = groove.panel.thickness.length;
      const fitting = cutters.filter((cutter) => cutsWidth(cutter, width));
      const cutting = fitting.filter(
        ({ deepest }) => deepest === undefined || deepest.length.compare(groove.depth) >= 0,
      );
      return cutting.length > 0 ? tightSheet(groove, cutting) : [noCutter(groove, fitting, cutters)];
    },
  );
}

function cutsWidth({ narrowest, widest }: CutterEntry, width: Length): boolean {
  return narrowest.length.compare(width.plus(LOOSEST_GROOVE)) <= 0 && widest.length.compare(width) >= 0;
}

function noCutter(groove: Groove, fitting: readonly CutterEntry[], cutters: readonly CutterEntry[]): Finding {
  const facts = { panel: groove.words, width: groove.panel.thickness.length, depth: groove.depth };
  const find = (why: 'too-wide' | 'too-shallow' | 'in-passes', cutter: CutterEntry, cuts: Length): Finding =>
    noCutterForGroove.at(
      groove.panel.origin,
      { ...facts, why, cutter: cutter.name, cuts },
      {
        severity: why === 'in-passes' ? 'note' : 'warning',
        related: [{ role: 'cutter', values: { cutter: cutter.name }, origin: cutter.origin }],
      },
    );
  const deepest = best(fitting, (cutter) => cutter.deepest?.length ?? Length.zero);
  if (deepest !== undefined) return find('too-shallow', deepest, deepest.deepest?.length ?? Length.zero);
  const narrower = cutters.filter(({ widest }) => widest.length.compare(facts.width) < 0);
  const widest = best(narrower, (cutter) => cutter.widest.length);
  if (widest !== undefined) return find('in-passes', widest, widest.widest.length);
  // Every cutter is wider: `cutters` is not empty, so there is a narrowest of them.
  const narrowest = best(cutters, (cutter) => cutter.narrowest.length.negated()) as CutterEntry;
  return find('too-wide', narrowest, narrowest.narrowest.length);
}

function best(cutters: readonly CutterEntry[], by: (cutter: CutterEntry) => Length): CutterEntry | undefined {
  return cutters.reduce<CutterEntry | undefined>(
    (found, each) => (found === undefined || by(each).compare(by(found)) > 0 ? each : found),
    undefined,
  );
}

/** Only plywood varies so much: a stock without grain is MDF or the like. A cutter that can be set is set to the sheet. */
function tightSheet(groove: Groove, cutting: readonly CutterEntry[]): readonly Finding[] {
  const { stock } = groove.panel;
  if (stock?.form !== 'sheet' || stock.nominal === undefined || stock.grain === 'none') return [];
  const nominal = stock.nominal.length;
  const { most } = sheetRange(nominal);
  if (cutting.some(({ widest }) => widest.length.compare(most) >= 0)) return [];
  const widest = best(cutting, (cutter) => cutter.widest.length);
  if (widest === undefined) return [];
  return [
    sheetMayNotEnterGroove.at(
      groove.panel.origin,
      { stock: stock.name, nominal, most, cutter: widest.name, cuts: widest.widest.length },
      { related: [{ role: 'cutter', values: { cutter: widest.name }, origin: widest.origin }] },
    ),
  ];
}
