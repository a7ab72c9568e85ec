import { derive, less, plus } from '../design/derive.ts';
import type { Divider, FaceDesign, FrontFit, GroupCell, OverlayFit } from '../design/design.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { FaceEdges } from '../evaluation.ts';
import { Rational } from '../length/rational.ts';
import { dividerLabel } from './cell-names.ts';
import { fitOf, frontsAtDivider, isBehindFronts, type Side } from './touching-fronts.ts';

/**
 * What makes a front longer or shorter than its opening at each of its edges.
 *
 * An inset front stays one gap away from the case and from a divider it does not cover. Where two inset fronts cover a
 * divider they meet with one gap between them; `anchor` says where that gap sits:
 * - `centre`: the middle of the gap lies on the middle of the divider, and either front laps half the thickness less
 *   half a gap over it;
 * - `start`: the middle of the gap lies on the face that comes first (left in a row, upper in a stack): the front
 *   before stays half a gap short of its opening, the front after laps the whole thickness less half a gap;
 * - `end`: the same with the face that comes last.
 *
 * An overlay front laps an edge of thickness t that it has to itself, of the case or of its frame, by t less the reveal
 * (full), by half of t (half), or by its amount. So it does at a divider with no other overlay or lipped front across
 * it. Two overlay fronts share a covered divider as two inset ones do, t less a gap between them, half each where the
 * anchor is the centre; beside one that laps by an amount a full one takes what that leaves. Of a shown divider each
 * takes its half for an edge of its own: half of t less the reveal (full), a quarter of t (half).
 *
 * A lipped front laps by its lip, everywhere. Where there is no wood to lap, a front stays a gap away (a full one a
 * reveal). Where nothing stands between two spaces their fronts meet with one gap between them, whatever their fit.
 */
export type Edge =
  | { readonly kind: 'case'; readonly label: string; readonly wood?: Figure }
  /** Two spaces with nothing between them. */
  | { readonly kind: 'meeting' }
  | {
      readonly kind: 'divider';
      /** As the boundary is labelled, so that in a sum over the whole row or stack the two cancel. */
      readonly label: string;
      readonly divider: Divider;
      /** Whether the space comes before the divider or after it. */
      readonly side: 'before' | 'after';
      readonly isBehindFronts: boolean;
      /** How the overlay and lipped fronts across it sit. */
      readonly across: readonly FrontFit[];
    };

export type CellEdges = Readonly<Record<Side, Edge>>;

const half = Rational.of(1, 2);
const quarter = Rational.of(1, 4);

export function edgesAgainstCase(edges: FaceEdges): CellEdges {
  const edge = (label: string, wood: Figure | undefined): Edge =>
    wood === undefined ? { kind: 'case', label } : { kind: 'case', label, wood };
  return {
    left: edge('edge at the left', edges.left),
    right: edge('edge at the right', edges.right),
    top: edge('edge above', edges.top),
    bottom: edge('edge below', edges.bottom),
  };
}

/** At the divider after cell `at`: the end of the space before it, and the start of the space after it. */
export function edgesAtDivider(
  group: GroupCell,
  at: number,
  face: Pick<FaceDesign, 'fit'>,
): { readonly before: Edge; readonly after: Edge } {
  const divider = group.dividers[at];
  if (divider === undefined || divider.form === 'none')
    return { before: { kind: 'meeting' }, after: { kind: 'meeting' } };
  const { before, after } = frontsAtDivider(group, at);
  const proud = (fronts: typeof before) =>
    fronts.map((cell) => fitOf(cell, face)).filter((fit) => fit.kind !== 'inset');
  const common = {
    kind: 'divider',
    label: dividerLabel(group, at),
    divider,
    isBehindFronts: isBehindFronts(group, at, face),
  } as const;
  return {
    before: { ...common, side: 'before', across: proud(after) },
    after: { ...common, side: 'after', across: proud(before) },
  };
}

/** What a front of this fit has beyond its opening (+) or is short of it (-) at this edge. */
export function lapAt(edge: Edge, fit: FrontFit): readonly Operand[] {
  if (edge.kind === 'meeting') return [less('gap', fit.gap, half)];
  switch (fit.kind) {
    case 'inset':
      return edge.kind === 'divider' && edge.isBehindFronts ? coveredLap(edge, fit.gap) : [less('gap', fit.gap)];
    case 'overlay':
      if (edge.kind === 'case') return ownEdgeLap(edge.label, edge.wood, fit);
      return edge.across.length === 0
        ? ownEdgeLap(edge.label, edge.divider.material.thickness, fit)
        : sharedLap(edge, fit);
    case 'lipped':
      return edge.kind === 'case' && edge.wood === undefined ? [less('gap', fit.gap)] : [plus('lip', fit.lip)];
    default: {
      const unknown: never = fit;
      return unknown;
    }
  }
}

function ownEdgeLap(label: string, wood: Figure | undefined, fit: OverlayFit): readonly Operand[] {
  if (wood === undefined) return [fit.how === 'full' ? less('reveal', fit.reveal) : less('gap', fit.gap)];
  switch (fit.how) {
    case 'full':
      return [plus(label, wood), less('reveal', fit.reveal)];
    case 'half':
      return [plus(label, wood, half)];
    case 'by':
      return [plus('overlay', fit.by)];
    default: {
      const unknown: never = fit;
      return unknown;
    }
  }
}

type DividerEdge = Extract<Edge, { kind: 'divider' }>;

function sharedLap(edge: DividerEdge, fit: OverlayFit): readonly Operand[] {
  if (fit.how === 'by') return [plus('overlay', fit.by)];
  const { thickness } = edge.divider.material;
  if (edge.divider.mode === 'shown') {
    return fit.how === 'full'
      ? [plus(edge.label, thickness, half), less('reveal', fit.reveal)]
      : [plus(edge.label, thickness, quarter)];
  }
  const amounts = edge.across.flatMap((other) => amountOf(other) ?? []);
  const largest = amounts.reduce<Figure | undefined>(
    (most, one) => (most === undefined || most.length.compare(one.length) < 0 ? one : most),
    undefined,
  );
  const covered = coveredLap(edge, fit.gap);
  if (largest === undefined) return covered;
  const left = [plus(edge.label, thickness), less('overlay across the divider', largest), less('gap', fit.gap)];
  const sharesAlso = fit.how === 'half' || amounts.length < edge.across.length;
  const isCoveredLess = derive('', covered).length.compare(derive('', left).length) < 0;
  return sharesAlso && isCoveredLess ? covered : left;
}

/** How far a front laps whatever there is; undefined where that depends on the wood. */
function amountOf(fit: FrontFit): Figure | undefined {
  if (fit.kind === 'lipped') return fit.lip;
  return fit.kind === 'overlay' && fit.how === 'by' ? fit.by : undefined;
}

function coveredLap(edge: DividerEdge, gap: Figure): readonly Operand[] {
  const { label, divider, side } = edge;
  const halfGap = less('gap', gap, half);
  const { thickness } = divider.material;
  switch (divider.anchor) {
    case 'centre':
      return [plus(label, thickness, half), halfGap];
    case 'start':
      return side === 'before' ? [halfGap] : [plus(label, thickness), halfGap];
    case 'end':
      return side === 'before' ? [plus(label, thickness), halfGap] : [halfGap];
    default: {
      const unknown: never = divider.anchor;
      return unknown;
    }
  }
}

/** The same edge, seen from the front towards the opening. */
export function turned(edge: readonly Operand[]): readonly Operand[] {
  return edge.map((operand) =>
    operand.sign === '' ? operand : { ...operand, sign: operand.sign === '+' ? '-' : '+' },
  );
}
