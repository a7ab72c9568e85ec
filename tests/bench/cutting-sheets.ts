import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { MaxRectsPacker } from 'maxrects-packer';
import { SeededRandom } from '../../packages/engine/src/stock/seeded-random.ts';
import { checkSheetPlan } from '../../packages/engine/src/stock/sheets/check-sheet-plan.ts';
import { searchSheets } from '../../packages/engine/src/stock/sheets/search-sheets.ts';
import type { SheetKind, SheetProblem } from '../../packages/engine/src/stock/sheets/sheet-problem.ts';

/**
 * Plans for sheets against the published problems in `tests/fixtures/cutting`: each from a cold start, in a process of its
 * own, for a second of processor time. Beside them, on the same problems, the best of four ways to run a packer of
 * rectangles for general purposes, which need not keep to guillotine cuts.
 */

const SECONDS = 1;

interface KnownSheetProblem {
  readonly id: string;
  readonly problem: SheetProblem;
  /** The best cost known and the best bound; without a bound, both are the same. */
  readonly best: number;
  readonly bound: number;
}

interface Outcome {
  readonly first: number;
  readonly firstMs: number;
  readonly cost: number;
  readonly bound: number;
  readonly seconds: number;
}

interface Instance {
  readonly id: string;
  readonly sheet?: readonly [number, number];
  readonly items: readonly (readonly number[])[];
  readonly groups?: readonly { readonly blank: readonly number[] }[];
  readonly kerf?: number;
  readonly og?: { readonly lb: number; readonly ub: number };
  readonly rg?: { readonly lb: number; readonly ub: number };
  readonly single_best_3stage_exact_oriented?: number;
  readonly mixed_sheets?: readonly (readonly [number, number, number])[];
  readonly mixed_best_2stage_oriented?: number;
  readonly mixed_lb_2stage_oriented?: number;
  readonly mixed_best_2stage_rotated?: number;
  readonly mixed_lb_2stage_rotated?: number;
}

/** The sides of the sheets of the ten classes. */
const CLASS_SIDES = [10, 30, 40, 100, 100, 300, 100, 100, 100, 100];

const SETS = ['2bp', 'furniture-a', 'gcut-bin-packing', 'kerf-2d', 'groups-2d', 'gcut-cutting-stock', 'gcut mixed'];

function knownProblems(repository: string, set: string, mayTurn: boolean): readonly KnownSheetProblem[] {
  const file = set === 'gcut mixed' ? 'gcut-cutting-stock' : set;
  const text = readFileSync(join(repository, `tests/fixtures/cutting/${file}.json`), 'utf8');
  const { instances } = JSON.parse(text) as { readonly instances: readonly Instance[] };
  return instances.flatMap((instance) => {
    const sizes = [...instance.items, ...(instance.groups ?? []).map(({ blank }) => blank)];
    const blanks = sizes.map(([width = 0, length = 0, count = 1], place) => ({
      id: `${place}`,
      width,
      length,
      count,
      mayTurn,
    }));
    const known = knownValue(set, instance, mayTurn);
    if (known === undefined) return [];
    const { sheets, best, bound } = known;
    return [{ id: instance.id, problem: { sheets, blanks, kerf: instance.kerf ?? 0 }, best, bound }];
  });
}

function knownValue(set: string, instance: Instance, mayTurn: boolean) {
  const single = (side: readonly [number, number]): SheetKind[] => [
    { id: 'sheet', width: side[0], length: side[1], cost: 1 },
  ];
  if (set === 'gcut mixed') {
    const best = mayTurn ? instance.mixed_best_2stage_rotated : instance.mixed_best_2stage_oriented;
    const bound = mayTurn ? instance.mixed_lb_2stage_rotated : instance.mixed_lb_2stage_oriented;
    if (best === undefined || bound === undefined) return undefined;
    const sheets = (instance.mixed_sheets ?? []).map(([width, length, cost], place) => ({
      id: `sheet ${place}`,
      width,
      length,
      cost,
    }));
    return { sheets, best, bound };
  }
  if (set === 'gcut-cutting-stock') {
    const best = instance.single_best_3stage_exact_oriented;
    return mayTurn || best === undefined ? undefined : { sheets: single([250, 250]), best, bound: best };
  }
  const values = mayTurn ? instance.rg : instance.og;
  if (values === undefined) return undefined;
  const side = CLASS_SIDES[Number(/^cl(\d\d)/.exec(instance.id)?.[1] ?? 1) - 1] ?? 0;
  return { sheets: single(instance.sheet ?? [side, side]), best: values.ub, bound: values.lb };
}

function processorSeconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

function search(problem: SheetProblem, seconds: number): Outcome {
  const begun = processorSeconds();
  const steps = searchSheets(problem);
  let { value, done } = steps.next();
  const first = value.plan.cost;
  const firstMs = (processorSeconds() - begun) * 1000;
  while (done !== true && processorSeconds() - begun < seconds) ({ value, done } = steps.next());
  const faults = checkSheetPlan(problem, value.plan);
  if (faults.length > 0 || value.plan.unplaced.length > 0) throw new Error(`a plan that cannot be cut: ${faults[0]}`);
  return { first, firstMs, cost: value.plan.cost, bound: value.bound, seconds: processorSeconds() - begun };
}

/** The packer's rules by area and by longest edge: its names for these numbers do not exist when it runs. */
const PACKING_RULES = [0, 1];

/** The fewest sheets of four runs of the packer: two rules, two orders. The kerf is added to pieces and sheet. */
function packed({ sheets: [sheet], blanks, kerf }: SheetProblem): number {
  if (sheet === undefined) throw new Error('a problem without sheets');
  const pieces = blanks.flatMap(({ width, length, count }) =>
    Array.from({ length: count }, () => ({ width: width + kerf, height: length + kerf })),
  );
  const bySide = [...pieces].sort((a, b) => Math.max(b.width, b.height) - Math.max(a.width, a.height));
  const byArea = [...pieces].sort((a, b) => b.width * b.height - a.width * a.height);
  const runs = PACKING_RULES.flatMap((logic) =>
    [bySide, byArea].map((order) => {
      const allowRotation = blanks.some(({ mayTurn }) => mayTurn);
      const options = { smart: false, pot: false, square: false, allowRotation, logic };
      const packer = new MaxRectsPacker(sheet.width + kerf, sheet.length + kerf, 0, options);
      for (const { width, height } of order) packer.add(width, height, undefined);
      return packer.bins.length;
    }),
  );
  return Math.min(...runs);
}

/** One problem, for a process of its own; prints what it found. */
export function measureOneSheetProblem(repository: string, set: string, place: number, mayTurn: boolean): void {
  const known = knownProblems(repository, set, mayTurn)[place];
  if (known === undefined) throw new Error(`no problem ${place} in ${set}`);
  console.log(JSON.stringify(search(known.problem, SECONDS)));
}

export function measureCuttingSheets(repository: string, bundle: string): void {
  console.log(`\nSheets, cost of plans after ${SECONDS} s of processor time, each problem from a cold start`);
  const row = (cells: readonly string[]) =>
    console.log(cells.map((cell, place) => (place === 0 ? cell.padEnd(30) : cell.padStart(10))).join(' '));
  row(['', 'problems', 'first', 'plan', 'best known', 'over', 'bound', 'known', 'packer', 'proved', 'longest s']);
  for (const set of SETS) {
    for (const mayTurn of [false, true]) {
      const problems = knownProblems(repository, set, mayTurn);
      if (problems.length === 0) continue;
      const outcomes = problems.map((_, place) => {
        const job = [bundle, repository, 'one-sheet', set, `${place}`, `${mayTurn}`];
        return JSON.parse(execFileSync(process.execPath, job, { encoding: 'utf8' })) as Outcome;
      });
      const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
      const plans = sum(outcomes.map(({ cost }) => cost));
      const best = sum(problems.map((known) => known.best));
      row([
        `${set}${mayTurn ? ', turning' : ''}`,
        `${problems.length}`,
        `${sum(outcomes.map(({ first }) => first))}`,
        `${plans}`,
        `${Math.round(best)}`,
        `${(100 * (plans / best - 1)).toFixed(2)} %`,
        `${sum(outcomes.map(({ bound }) => bound))}`,
        `${Math.round(sum(problems.map(({ bound }) => bound)))}`,
        set === 'gcut mixed' ? '' : `${sum(problems.map(({ problem }) => packed(problem)))}`,
        `${outcomes.filter(({ cost, bound }) => cost === bound).length}`,
        Math.max(...outcomes.map(({ seconds }) => seconds)).toFixed(2),
      ]);
      problems.forEach(({ id, best: known }, place) => {
        const { cost = 0 } = outcomes[place] ?? {};
        if (set !== 'gcut mixed' && cost > known) console.log(`  ${id}: ${cost} against ${known}`);
      });
    }
  }
  measureManyParts();
}

/** Sides, backs, shelves, doors and drawer parts of so many cases, in half millimetres, from sheets of 2440 × 1220 mm. */
function partsOfCases(count: number): SheetProblem {
  const random = new SeededRandom(count);
  const blanks = Array.from({ length: count }, (_, place) => {
    const between = (least: number, most: number) => least + random.below(most - least);
    const long = random.fraction() < 0.3;
    return {
      id: `${place}`,
      width: between(120, 1200),
      length: long ? between(1200, 4200) : between(400, 1600),
      count: 1,
      mayTurn: random.fraction() < 0.5,
    };
  });
  return { sheets: [{ id: 'plywood', width: 2440, length: 4880, cost: 1 }], blanks, kerf: 6 };
}

function measureManyParts(): void {
  console.log('\nMany parts of different sizes: the first plan');
  search(partsOfCases(200), 0.5);
  for (const count of [250, 500, 1000, 2000, 4000, 8000]) {
    const { firstMs, first, bound } = search(partsOfCases(count), 0);
    const perPart = (1000 * firstMs) / (count * Math.log2(count));
    const time = `${firstMs.toFixed(0).padStart(6)} ms, ${perPart.toFixed(2)} µs for n log n`;
    console.log(`  ${String(count).padStart(5)} parts: ${time}, ${first} sheets, at least ${bound}`);
  }
  const [early, late] = [1, 10].map((seconds) => search(partsOfCases(1000), seconds));
  if (early === undefined || late === undefined) return;
  const over = (100 * (early.cost / late.cost - 1)).toFixed(2);
  console.log(
    `  1000 parts: first ${early.first} sheets, ${early.cost} after 1 s, ${late.cost} after 10 s (${over} % over)`,
  );
}
