import type { Evaluation, LaidCell, Part, PartRole } from '@fettle/engine';
import type { Box } from './primitives.ts';
import { realMm } from './shown-lengths.ts';
import { edgesOf, isSeen, type SeenEdges, type Slab } from './visible-edges.ts';

/**
 * What of a piece is seen from the front: each part's outline and which of its edges are seen or hidden, in real
 * millimetres with y upwards. Knows nothing of scale, paper or lettering.
 */

export interface PartInView {
  readonly part: Part;
  /** For a front the maker's own name, empty if there is none; for any other part its kind. */
  readonly name: string;
  readonly slab: Slab;
  readonly edges: SeenEdges;
  readonly seen: boolean;
  readonly isFront: boolean;
  readonly hinge?: 'left' | 'right' | 'top';
}

/** A pull on a front, or a vent in one, as one sees it. */
export interface PullInView {
  readonly id: string;
  readonly label: string;
  readonly slab: Pick<Slab, 'x0' | 'x1' | 'y0' | 'y1'>;
  readonly isRound: boolean;
}

export interface ViewOfParts {
  readonly parts: readonly PartInView[];
  readonly pulls: readonly PullInView[];
  /** Parts whose size is not positive or not known: they cannot be drawn. */
  readonly withoutSize: readonly Part[];
  /** Names or marks of single doors for which no text says on which side they hang. */
  readonly hingeUnknown: number;
}

/** Edges closer than this are one edge. */
const TOLERANCE_MM = 0.001;

/** A part of whose edges a smaller share is seen counts as hidden. */
const LEAST_SEEN = 0.2;

export const FRONTS: readonly PartRole[] = ['door', 'drawer-front', 'false-front', 'lid'];
const BOXES: readonly PartRole[] = ['drawer-side', 'drawer-end', 'drawer-bottom', 'drawer-partition'];
/** Hidden edges of these are worth a dashed line; those of drawer boxes and backs would only clutter the sheet. */
const SHOWN_HIDDEN: readonly PartRole[] = [
  'top',
  'plinth',
  'side',
  'bottom',
  'stretcher',
  'partition',
  'divider-rail',
  'divider-panel',
  'shelf',
  'frame-stile',
  'frame-rail',
];
/** Where two parts end in one plane, the line between them belongs to the first of these. */
const NEARER_FIRST: readonly PartRole[] = [
  'top',
  ...FRONTS,
  'frame-stile',
  'frame-rail',
  'side',
  'partition',
  'bottom',
  'stretcher',
  'plinth',
];

export function viewOfParts(evaluation: Evaluation): ViewOfParts {
  const cells = cellsById(evaluation.layout.face);
  const covered = new Set(evaluation.parts.filter((part) => FRONTS.includes(part.role)).map((part) => part.cell));
  const sized: { part: Part; slab: Slab }[] = [];
  const withoutSize: Part[] = [];
  evaluation.parts.forEach((part, index) => {
    // A box is inside its opening, behind its front; what shows of it through the gaps is not worth a line.
    if (BOXES.includes(part.role) && part.cell !== undefined && covered.has(part.cell)) return;
    const slab = slabOf(part, index);
    if (slab === undefined) withoutSize.push(part);
    else sized.push({ part, slab });
  });
  const slabs = sized.map((entry) => entry.slab);
  let hingeUnknown = 0;
  const parts = sized.map(({ part, slab }): PartInView => {
    const cell = part.cell === undefined ? undefined : cells.get(part.cell);
    const isBehindDoor = cell?.cell.behind !== undefined;
    const edges = edgesShown(part, isBehindDoor, edgesOf(slab, slabs, TOLERANCE_MM));
    const hinge = hingeOf(part, slab, cell);
    if (part.role === 'door' && hinge === undefined && !isBehindDoor) hingeUnknown += 1;
    // What stands behind a door is shown as hidden things are, and has its name on the inside elevation.
    const isFront = !isBehindDoor && (FRONTS.includes(part.role) || fillsDoor(part));
    const name = isFront ? (cell?.cell.name ?? '') : part.role === 'top' ? part.label : part.role.replace('-', ' ');
    const seen = isSeen(slab, slabs, TOLERANCE_MM);
    return { part, name, slab, edges, seen, isFront, ...(hinge === undefined ? {} : { hinge }) };
  });
  return { parts, pulls: pullsOf(evaluation, cells), withoutSize, hingeUnknown };
}

function pullsOf({ hardware }: Evaluation, cells: ReadonlyMap<string, LaidCell>): readonly PullInView[] {
  return hardware.flatMap(({ kind, id, label, outline, cell }) => {
    if ((kind !== 'pull' && kind !== 'vent') || outline === undefined) return [];
    if (cell !== undefined && cells.get(cell)?.cell.behind !== undefined) return [];
    const { x, y, isRound } = outline;
    const slab = { x0: realMm(x.from), x1: realMm(x.to), y0: realMm(y.from), y1: realMm(y.to) };
    return Object.values(slab).every(Number.isFinite) ? [{ id, label, slab, isRound }] : [];
  });
}

/** What is nearly all hidden is drawn as hidden: the slivers of it that show through gaps would only be specks. */
function edgesShown(part: Part, isBehindDoor: boolean, { seen, hidden }: SeenEdges): SeenEdges {
  const length = (stretches: SeenEdges['seen']): number =>
    stretches.reduce((sum, stretch) => sum + stretch.to - stretch.from, 0);
  const isSliver = length(seen) < LEAST_SEEN * (length(seen) + length(hidden));
  return { seen: isSliver ? [] : seen, hidden: isShownHidden(part, isBehindDoor) ? hidden : [] };
}

function isShownHidden({ role }: Part, isBehindDoor: boolean): boolean {
  return SHOWN_HIDDEN.includes(role) || (isBehindDoor && FRONTS.includes(role));
}

/** A panel or a pane of a framed door: the door is lettered there, and the lowest shows how it swings. */
function fillsDoor({ role, cell }: Part): boolean {
  return (role === 'panel' || role === 'pane') && cell !== undefined;
}

/** A lid hangs from its upper edge, the leaves of a pair from their outer edges, a single door where the maker says. */
function hingeOf(part: Part, slab: Slab, cell: LaidCell | undefined): PartInView['hinge'] {
  if (part.role === 'lid') return 'top';
  const isDoor = part.role === 'door' || (fillsDoor(part) && /\/(?:panel|pane)$/.test(part.id));
  if (!isDoor || cell === undefined) return undefined;
  if (cell.leaves.length === 1) return cell.cell.kind === 'front' ? cell.cell.hingeSide : undefined;
  if (cell.leaves.length !== 2 || cell.front === undefined) return undefined;
  const middle = (realMm(cell.front.x.start.length) + realMm(cell.front.x.end.length)) / 2;
  return (slab.x0 + slab.x1) / 2 < middle ? 'left' : 'right';
}

function slabOf(part: Part, index: number): Slab | undefined {
  const { x, y, z } = part.box;
  const rank = NEARER_FIRST.indexOf(part.role);
  const slab = {
    x0: realMm(x.start.length),
    x1: realMm(x.end.length),
    y0: realMm(y.start.length),
    y1: realMm(y.end.length),
    depth: realMm(z.start.length),
    order: (rank < 0 ? NEARER_FIRST.length : rank) * 1e6 + index,
  };
  const isFiniteSlab = Object.values(slab).every(Number.isFinite);
  return isFiniteSlab && slab.x1 - slab.x0 > 0 && slab.y1 - slab.y0 > 0 ? slab : undefined;
}

function cellsById(root: LaidCell | undefined): ReadonlyMap<string, LaidCell> {
  const cells = new Map<string, LaidCell>();
  const waiting = root === undefined ? [] : [root];
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    cells.set(cell.cell.id, cell);
    waiting.push(...cell.cells);
  }
  return cells;
}

/** From real millimetres, y upwards from the floor, to a place on paper. */
export interface Projection {
  /** Millimetres on paper for one on the piece. */
  readonly factor: number;
  /** Where the piece's left end and the floor meet. */
  readonly x: number;
  readonly y: number;
}

export function boxOnPaper(slab: Pick<Slab, 'x0' | 'x1' | 'y0' | 'y1'>, to: Projection): Box {
  return {
    left: to.x + slab.x0 * to.factor,
    right: to.x + slab.x1 * to.factor,
    top: to.y - slab.y1 * to.factor,
    bottom: to.y - slab.y0 * to.factor,
  };
}
