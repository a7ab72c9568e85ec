import {
  clearanceIsNoFloat,
  type Finding,
  type Mend,
  panelFillsFrame,
  panelLeavesGroove,
  railNarrowerThanDivider,
  solidPanelCannotMove,
} from '@fettle/findings';
import type { FramedDesign, FreedomSaid } from '../../design/construction-design.ts';
import { derive, plus, rootOrigin } from '../../design/derive.ts';
import type { Divider, PanelDesign } from '../../design/design.ts';
import type { Figure } from '../../design/figure.ts';
import { groupAlike } from '../../grouping.ts';
import { frontMaterial } from '../../layout/front-thickness.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import { exactSource } from '../../length/trade-formats.ts';
import { dividersAt } from '../../parts/framed-panel.ts';
import { WIDEST_GROOVE_IN_FRAME } from '../../tables/construction-limits.ts';
import { PANEL_FLOAT, SHEET_CLEARANCE, TENON_SHORT, usual } from '../../tables/trade-habits.ts';
import { cellsIn } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { givenAt } from '../written-sizes.ts';

/** Panels in grooves: whether they reach in, whether solid ones can move, and what they leave of their frame. */
export function frameFindings(one: TradeCase): readonly Finding[] {
  const { sides, back } = one.design.carcase;
  return [
    ...(sides?.framed === undefined ? [] : framedFindings(one, sides.framed, sides, 'sides')),
    ...(back?.framed === undefined ? [] : framedFindings(one, back.framed, back, 'back')),
    ...doorFrameFindings(one),
    ...backFindings(one),
    ...dustPanelFindings(one),
    ...middleRailFindings(one),
  ];
}

/** Of each statement once, however many doors are made by it. Panes have checks of their own. */
function doorFrameFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const face = one.face.design;
  const fronts = new Set(
    cellsIn(one.face.root).flatMap(({ laid: { cell } }) =>
      cell.kind === 'front' && cell.what === 'door' ? (frontMaterial(cell, face) ?? []) : [],
    ),
  );
  return [...fronts].flatMap((front) =>
    front.framed === undefined || front.framed.glass !== undefined
      ? []
      : framedFindings(one, front.framed, front, 'doors'),
  );
}

interface HeldPanel {
  /** 'panel of the sides' */
  readonly words: string;
  readonly panel: PanelDesign;
  readonly hold: 'groove' | 'rabbet';
  readonly depth: Figure;
  /** At each edge. */
  readonly shy: Figure;
  /** What is written of it: in all, or at each edge. */
  readonly written: Figure;
  readonly freedom: FreedomSaid | undefined;
  readonly glued?: FreedomSaid['origin'] | undefined;
}

function framedFindings(
  one: TradeCase,
  framed: FramedDesign,
  frame: PanelDesign,
  of: 'sides' | 'back' | 'doors',
): readonly Finding[] {
  const { panel, tenons } = framed;
  const words = `panel of the ${of}`;
  const held: HeldPanel = {
    words,
    panel,
    hold: 'groove',
    depth: panel.groove,
    shy: panel.shyEachEdge,
    written: panel.shyEachEdge,
    freedom: panel.freedom,
    glued: panel.gluedOrigin,
  };
  return [
    ...heldFindings(one, held),
    ...leaving(
      `tenons of the ${of}`,
      'mortise',
      tenons.length,
      tenons.short,
      tenons.origin,
      usual(TENON_SHORT, one.design.units.unit).length,
    ),
    ...fillsFrame(panel.thickness, frame.thickness, `frame of the ${of}`, panel.origin),
  ];
}

function fillsFrame(panel: Figure, frame: Figure, words: string, origin: PanelDesign['origin']): readonly Finding[] {
  const limit = frame.length.times(WIDEST_GROOVE_IN_FRAME);
  // As thick as half of the frame is what a panel flush with its groove's cheeks may be.
  if (panel.length.compare(limit) <= 0) return [];
  const at = givenAt(panel);
  const through = panel.length.compare(frame.length) >= 0;
  return [
    panelFillsFrame.at(
      rootOrigin(panel) ?? origin,
      { frame: words, panel: panel.length, thickness: frame.length, limit, through },
      {
        severity: through ? 'error' : 'warning',
        mends:
          at === undefined
            ? []
            : [{ how: 'thinner', values: { size: limit }, changes: [{ kind: 'set-length', at, to: limit }] }],
      },
    ),
  ];
}

/** What lies in a groove: first whether it does so at all, then whether its words suit its stock, then whether it can move. */
function heldFindings(one: TradeCase, held: HeldPanel): readonly Finding[] {
  const { panel, words, hold, depth, shy, written } = held;
  const { unit } = one.design.units;
  const isSheet = panel.stock?.form === 'sheet';
  const usualSize = usual(isSheet ? SHEET_CLEARANCE : PANEL_FLOAT, unit).length;
  const leaves = leaving(words, hold, depth, shy, panel.origin, usualSize, written);
  if (leaves.length > 0) return leaves;
  const said = suitsStock(held, unit);
  if (said.length > 0) return said;
  if (panel.stock?.form !== 'board') return [];
  const width = widthOf(one, panel);
  if (held.glued !== undefined) {
    return [
      solidPanelCannotMove.at(
        held.glued,
        { panel: words, why: 'glued', width },
        { mends: [{ how: 'remove', values: {}, changes: [{ kind: 'remove', at: held.glued }] }] },
      ),
    ];
  }
  if (shy.length.isPositive()) return [];
  const at = givenAt(written);
  const size = usual(PANEL_FLOAT, unit).length;
  return [
    solidPanelCannotMove.at(
      rootOrigin(written) ?? panel.origin,
      { panel: words, why: 'no-float', width },
      {
        mends:
          at === undefined ? [] : [{ how: 'float', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }],
      },
    ),
  ];
}

function widthOf({ parts }: TradeCase, panel: PanelDesign): Length {
  const { unit, start } = panel.origin;
  const own = parts.filter(({ origin }) => origin.unit === unit && origin.start === start);
  return own.reduce((widest, { width }) => widest.max(width.length), Length.zero);
}

function suitsStock({ panel, words, freedom, written }: HeldPanel, unit: LengthUnit): readonly Finding[] {
  const { stock } = panel;
  if (stock === undefined || freedom === undefined) return [];
  const wanted = stock.form === 'sheet' ? 'clearance' : 'float';
  if (freedom.kind === wanted) return [];
  const size = exactSource(written.length.isPositive() ? written.length : usual(PANEL_FLOAT, unit).length, unit);
  const said = wanted === 'clearance' ? `clearance ${size}` : `float ${size} each side`;
  return [
    clearanceIsNoFloat.at(
      freedom.origin,
      { panel: words, stock: stock.name, said: freedom.kind },
      {
        mends: [
          {
            how: 'say',
            values: { words: said },
            changes: [{ kind: 'set-words', at: freedom.origin, words: said }],
          },
        ],
      },
    ),
  ];
}

function leaving(
  what: string,
  hold: 'groove' | 'rabbet' | 'mortise',
  depth: Figure,
  short: Figure,
  origin: PanelDesign['origin'],
  size: Length,
  written: Figure = short,
): readonly Finding[] {
  if (!depth.length.isPositive() || short.length.compare(depth.length) < 0) return [];
  const at = givenAt(written);
  const mends: readonly Mend[] =
    at === undefined || size.compare(depth.length) >= 0
      ? []
      : [{ how: 'shorten', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
  return [
    panelLeavesGroove.at(
      rootOrigin(written) ?? origin,
      { what: `${what} ${hold === 'mortise' ? 'are' : 'is'}`, hold, depth: depth.length, short: short.length },
      { mends },
    ),
  ];
}

function backFindings(one: TradeCase): readonly Finding[] {
  const { back } = one.design.carcase;
  if (back?.shy === undefined || back.fixing === 'applied') return [];
  const { shy, fixing, depth, freedom } = back;
  const half = derive('at each edge', [plus('short in all', shy, Rational.of(1, 2))]);
  return heldFindings(one, {
    words: 'back',
    // A frame around panels keeps its size, whatever it is made of.
    panel: back.framed === undefined ? back : { origin: back.origin, thickness: back.thickness },
    hold: fixing,
    depth,
    shy: half,
    written: asWritten(shy),
    freedom,
  });
}

/** Float is written for one edge and counted at both; clearance is written in all. */
function asWritten(shy: Figure): Figure {
  const { reason } = shy;
  return reason.kind === 'derived' ? (reason.operands[0]?.figure ?? shy) : shy;
}

function dustPanelFindings(one: TradeCase): readonly Finding[] {
  return groupAlike(
    dividersOf(one).filter(({ dustPanel }) => dustPanel !== undefined),
    ({ dustPanel }) => dustPanel?.origin,
  ).flatMap(([divider]) => {
    const panel = divider.dustPanel;
    if (panel === undefined) return [];
    return [
      ...heldFindings(one, {
        words: 'dust panel',
        panel,
        hold: 'groove',
        depth: panel.groove,
        shy: panel.shyEachEdge,
        written: panel.shyEachEdge,
        freedom: panel.freedom,
      }),
      ...fillsFrame(panel.thickness, divider.material.thickness, 'web frame', panel.origin),
    ];
  });
}

function dividersOf({ face }: TradeCase): readonly Divider[] {
  return face === undefined
    ? []
    : cellsIn(face.root).flatMap(({ laid }) => laid.dividers.map(({ divider }) => divider));
}

function middleRailFindings({ design, face }: TradeCase): readonly Finding[] {
  const rails = design.carcase.sides?.framed?.middleRails;
  if (rails === undefined || rails.place.kind !== 'at-dividers' || face === undefined) return [];
  const beside = [...dividersAt('left', face.root), ...dividersAt('right', face.root)];
  const thickest = beside.reduce((most, { size }) => most.max(size.length), Length.zero);
  const rail = rails.width.length;
  if (rail.compare(thickest) >= 0) return [];
  const at = givenAt(rails.width);
  const meant = cellsIn(face.root)
    .flatMap(({ laid }) => laid.dividers)
    .find(({ divider }) => divider.material.thickness.length.equals(thickest));
  return [
    railNarrowerThanDivider.at(
      rootOrigin(rails.width) ?? rails.origin,
      { rail, divider: thickest },
      {
        related:
          meant === undefined ? [] : [{ role: 'divider', values: { divider: thickest }, origin: meant.divider.origin }],
        mends:
          at === undefined
            ? []
            : [{ how: 'widen', values: { size: thickest }, changes: [{ kind: 'set-length', at, to: thickest }] }],
      },
    ),
  ];
}
