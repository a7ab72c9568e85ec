import type { RefusedSheet, UnplacedBlank, WhyUnplaced } from './sheet-plan.ts';
import type { SheetBlank, SheetKind, SheetProblem } from './sheet-problem.ts';

/**
 * A problem without kerf, trim and nonsense: every blank and every trimmed sheet is a kerf larger, so that pieces lie
 * edge to edge. Blanks of the same size are one type.
 */
export interface PreparedSheets {
  readonly kerf: number;
  readonly kinds: readonly PreparedKind[];
  readonly types: readonly PreparedType[];
  readonly limits: PreparedLimits;
  /** Blanks that can be in no plan. */
  readonly unplaced: readonly UnplacedBlank[];
  readonly refused: readonly RefusedSheet[];
}

export interface PreparedKind {
  readonly sheet: SheetKind;
  readonly width: number;
  readonly length: number;
  readonly cost: number;
  /** `Infinity` if there are as many as wanted. */
  readonly available: number;
}

export interface PreparedType {
  readonly width: number;
  readonly length: number;
  readonly count: number;
  readonly mayTurn: boolean;
  /** The blanks of this size; the sum of their counts is `count`. */
  readonly blanks: readonly SheetBlank[];
}

/** Larger by the kerf, as the pieces are; `Infinity` where there is no limit. */
export interface PreparedLimits {
  readonly longestRip: number;
  readonly longestCrosscut: number;
  readonly stages: number;
  /** The last stage parts a blank from waste, and nothing else. */
  readonly lastStageTrims?: boolean;
}

/** More blanks than this are more than one person saws; the search would only be slow with them. */
const MOST_BLANKS = 50_000;

/** Areas of sheets this long are exact in a double, and so are the sums of many. */
export const LONGEST_SIDE = 2 ** 24;

const isSize = (value: number) => Number.isInteger(value) && value > 0 && value <= LONGEST_SIDE;
const isTrim = (value: number) => Number.isInteger(value) && value >= 0;

/** Never throws: what cannot be used is in `unplaced` and `refused`. A kerf that is no whole number counts as none. */
export function prepareSheets(problem: SheetProblem): PreparedSheets {
  const kerf = Number.isInteger(problem.kerf) && problem.kerf >= 0 && problem.kerf <= LONGEST_SIDE ? problem.kerf : 0;
  const limitOf = (limit: number | undefined, more: number) =>
    limit === undefined || Number.isNaN(limit) ? Number.POSITIVE_INFINITY : limit + more;
  const limits: PreparedLimits = {
    longestRip: limitOf(problem.limits?.longestRip, kerf),
    longestCrosscut: limitOf(problem.limits?.longestCrosscut, kerf),
    stages: limitOf(problem.limits?.stages, 0),
  };
  const kinds: PreparedKind[] = [];
  const refused: RefusedSheet[] = [];
  for (const sheet of problem.sheets) {
    const usable = prepareKind(sheet, kerf);
    if (typeof usable === 'string') refused.push({ sheet: sheet.id, why: usable });
    else kinds.push(usable);
  }
  const types = new Map<string, { type: Omit<PreparedType, 'count' | 'blanks'>; blanks: SheetBlank[] }>();
  const unplaced: UnplacedBlank[] = [];
  let total = 0;
  for (const blank of problem.blanks) {
    if (blank.count === 0) continue;
    const why = whyImpossible(blank, kinds, kerf, limits, problem.limits?.narrowestStrip ?? 0);
    const count = isSize(blank.count) ? blank.count : 1;
    if (why !== undefined || total + count > MOST_BLANKS) {
      unplaced.push({ blank: blank.id, count, why: why ?? 'too many blanks' });
      continue;
    }
    total += count;
    const mayTurn = blank.mayTurn && blank.width !== blank.length;
    const [width, length] =
      mayTurn && blank.width > blank.length ? [blank.length, blank.width] : [blank.width, blank.length];
    const key = `${width} ${length} ${mayTurn}`;
    const type = types.get(key) ?? { type: { width: width + kerf, length: length + kerf, mayTurn }, blanks: [] };
    type.blanks.push(blank);
    types.set(key, type);
  }
  return {
    kerf,
    limits,
    kinds,
    types: [...types.values()].map(({ type, blanks }) => ({
      ...type,
      blanks,
      count: blanks.reduce((sum, { count }) => sum + count, 0),
    })),
    unplaced,
    refused,
  };
}

function prepareKind(sheet: SheetKind, kerf: number): PreparedKind | RefusedSheet['why'] {
  if (!isSize(sheet.width) || !isSize(sheet.length)) return 'no whole positive size';
  const { left, right, near, far } = sheet.trim ?? { left: 0, right: 0, near: 0, far: 0 };
  const width = sheet.width - left - right;
  const length = sheet.length - near - far;
  if (![left, right, near, far].every(isTrim) || width <= 0 || length <= 0) return 'trimmed to nothing';
  if (!Number.isFinite(sheet.cost) || sheet.cost < 0) return 'negative cost';
  const available = sheet.available === undefined ? Number.POSITIVE_INFINITY : Math.floor(sheet.available);
  if (!(available > 0)) return 'none available';
  return { sheet, width: width + kerf, length: length + kerf, cost: sheet.cost, available };
}

function whyImpossible(
  blank: SheetBlank,
  kinds: readonly PreparedKind[],
  kerf: number,
  limits: PreparedLimits,
  narrowest: number,
): WhyUnplaced | undefined {
  if (!isSize(blank.width) || !isSize(blank.length) || !isSize(blank.count)) return 'no whole positive size or count';
  if (kinds.length === 0) return 'no sheets';
  if (Math.min(blank.width, blank.length) < narrowest) return 'narrower than the narrowest strip';
  const width = blank.width + kerf;
  const length = blank.length + kerf;
  const fits = (w: number, l: number) => kinds.some((kind) => w <= kind.width && l <= kind.length);
  const fitsTurned = fits(length, width);
  if (!fits(width, length) && !(blank.mayTurn && fitsTurned)) {
    return fitsTurned ? 'larger than every sheet unless turned' : 'larger than every sheet';
  }
  const canBeCut = kinds.some(
    (kind) => cutsReach(kind, width, length, limits) || (blank.mayTurn && cutsReach(kind, length, width, limits)),
  );
  return canBeCut ? undefined : 'no cuts within the limits make it';
}

/** Whether a piece can be cut from the corner of an empty sheet. */
export function cutsReach(
  kind: { readonly width: number; readonly length: number },
  width: number,
  length: number,
  limits: PreparedLimits,
): boolean {
  if (width > kind.width || length > kind.length) return false;
  const rips = width < kind.width;
  const crosscuts = length < kind.length;
  if ((rips ? 1 : 0) + (crosscuts ? 1 : 0) > limits.stages) return false;
  const ripFirst = (!rips || kind.length <= limits.longestRip) && (!crosscuts || width <= limits.longestCrosscut);
  const crosscutFirst = (!crosscuts || kind.width <= limits.longestCrosscut) && (!rips || length <= limits.longestRip);
  return ripFirst || crosscutFirst;
}
