import type { Part } from '@fettle/engine';
import type { Projection } from '../parts-in-view.ts';
import { type Box, boxAround, boxesOverlap, type Line, line, type Point } from '../primitives.ts';
import type { ViewDirection } from '../shapes/view-direction.ts';
import { onPaper } from './on-paper.ts';
import type { ViewedPart } from './viewed-parts.ts';

/**
 * What fills the face of a cut part. Sheet goods have lines along the sheet, as one sees plies; solid wood has slanting
 * lines, close together where it is cut across its grain and wide apart where it is cut along it. Neighbours slant
 * differently or stand closer (ISO 128, from memory); the three signs are ours and stand in the key of the sheet.
 */

export type CutWood = 'sheet' | 'end-grain' | 'long-grain';

export interface Hatch {
  readonly wood: CutWood;
  /** Degrees from the right, counter-clockwise. */
  readonly slant: number;
  /** Between two lines, in mm on paper. */
  readonly spacing: number;
}

const SLANTS = [45, 135] as const;
const CLOSENESS = [1, 0.72, 1.35] as const;
const SPACING_MM: Readonly<Record<Exclude<CutWood, 'sheet'>, number>> = { 'end-grain': 1.1, 'long-grain': 2.4 };
/** Between lines along a sheet, and the most of them. */
const PLY_MM = 0.5;
const MOST_PLIES = 4;
/** Parts closer than this, in real millimetres, are neighbours. */
const NEIGHBOURS_MM = 1;

/** Undefined for glass: its face stays empty. */
export function cutWood(part: Part, from: ViewDirection): CutWood | undefined {
  if (part.role === 'pane') return undefined;
  if (part.stock?.form === 'sheet') return 'sheet';
  return part.grain !== 'none' && Math.abs(from.towards[part.grain]) > 0.5 ? 'end-grain' : 'long-grain';
}

/** By the id of the part. */
export function hatchesOf(viewed: readonly ViewedPart[], from: ViewDirection): ReadonlyMap<string, Hatch> {
  const hatches = new Map<string, Hatch>();
  const done: { readonly places: readonly Box[]; readonly hatch: Hatch }[] = [];
  for (const { part, cut } of [...viewed].sort((a, b) => (a.part.id < b.part.id ? -1 : 1))) {
    if (cut === undefined) continue;
    const wood = cutWood(part, from);
    if (wood === undefined) continue;
    const places = cut.pieces.map((piece) => boxAround(piece.map(({ u, v }) => ({ x: u, y: v }))));
    const beside = done.filter((other) => touch(other.places, places)).map((other) => other.hatch);
    const hatch = wood === 'sheet' ? { wood, slant: sheetSlant(part, from), spacing: PLY_MM } : slanting(wood, beside);
    hatches.set(part.id, hatch);
    done.push({ places, hatch });
  }
  return hatches;
}

function sheetSlant(part: Part, from: ViewDirection): number {
  if (Math.abs(from.towards[part.thin]) > 0.5) return 45;
  return Math.abs(from.right[part.thin]) > 0.5 ? 90 : 0;
}

function slanting(wood: Exclude<CutWood, 'sheet'>, beside: readonly Hatch[]): Hatch {
  const choices = CLOSENESS.flatMap((closeness) =>
    SLANTS.map((slant): Hatch => ({ wood, slant, spacing: SPACING_MM[wood] * closeness })),
  );
  const isFree = (hatch: Hatch): boolean =>
    !beside.some((other) => other.slant === hatch.slant && Math.abs(other.spacing - hatch.spacing) < 0.2);
  return choices.find(isFree) ?? { wood, slant: 45, spacing: SPACING_MM[wood] };
}

function touch(a: readonly Box[], b: readonly Box[]): boolean {
  return a.some((one) => b.some((other) => boxesOverlap(one, other, NEIGHBOURS_MM)));
}

export function hatchLines({ cut }: ViewedPart, hatch: Hatch, to: Projection, pen: number): readonly Line[] {
  if (cut === undefined) return [];
  const pieces = cut.pieces.map((piece) => piece.map((point) => onPaper(point, to)));
  if (hatch.wood === 'sheet' && hatch.slant !== 45) return plyLines(pieces, hatch, pen);
  const angle = (hatch.slant * Math.PI) / 180;
  const normal = { x: Math.sin(angle), y: Math.cos(angle) };
  const places = pieces.flat().map((point) => point.x * normal.x + point.y * normal.y);
  const first = Math.ceil(Math.min(...places) / hatch.spacing);
  const last = Math.floor(Math.max(...places) / hatch.spacing);
  const lines: Line[] = [];
  for (let at = first; at <= last; at++) lines.push(...linesAt(pieces, normal, at * hatch.spacing));
  return lines;
}

/** Evenly between the two faces of the sheet. */
function plyLines(pieces: readonly (readonly Point[])[], hatch: Hatch, pen: number): readonly Line[] {
  const box = boxAround(pieces.flat());
  const isUpright = hatch.slant === 90;
  const thick = isUpright ? box.right - box.left : box.bottom - box.top;
  const count = Math.min(MOST_PLIES, Math.floor((thick - 2 * pen) / PLY_MM));
  const lines: Line[] = [];
  for (let at = 1; at <= count; at++) {
    const share = at / (count + 1);
    lines.push(
      ...(isUpright
        ? linesAt(pieces, { x: 1, y: 0 }, box.left + share * thick)
        : linesAt(pieces, { x: 0, y: 1 }, box.top + share * thick)),
    );
  }
  return lines;
}

/** What lies inside the pieces of the line whose points p have p · normal = `place`. */
function linesAt(pieces: readonly (readonly Point[])[], normal: Point, place: number): readonly Line[] {
  const way = { x: normal.y, y: -normal.x };
  const inside = pieces
    .flatMap((piece) => {
      const crossings: number[] = [];
      piece.forEach((a, index) => {
        const b = piece[(index + 1) % piece.length] ?? a;
        const [one, other] = [height(a, normal) - place, height(b, normal) - place];
        if (one < 0 === other < 0) return;
        const share = one / (one - other);
        crossings.push(height({ x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }, way));
      });
      return crossings.length < 2 ? [] : [[Math.min(...crossings), Math.max(...crossings)] as const];
    })
    .sort((a, b) => a[0] - b[0]);
  const joined: [number, number][] = [];
  for (const [low, high] of inside) {
    const last = joined[joined.length - 1];
    if (last !== undefined && low - last[1] < 0.01) last[1] = Math.max(last[1], high);
    else joined.push([low, high]);
  }
  const point = (along: number): Point => ({
    x: normal.x * place + way.x * along,
    y: normal.y * place + way.y * along,
  });
  return joined
    .filter(([low, high]) => high - low > 0.15)
    .map(([low, high]) => {
      const [one, other] = [point(low), point(high)];
      return line('hatch', one.x, one.y, other.x, other.y);
    });
}

function height(point: Point, normal: Point): number {
  return point.x * normal.x + point.y * normal.y;
}
