import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { checkLengthPlan } from '../../packages/engine/src/stock/lengths/check-length-plan.ts';
import type { LengthPlan } from '../../packages/engine/src/stock/lengths/length-problem.ts';
import { planLengths } from '../../packages/engine/src/stock/lengths/plan-lengths.ts';
import { type LengthInstance, lengthInstances, problemOf } from '../fixtures/cutting/length-instances.ts';

/**
 * Published problems of cutting lengths, one second of processor time each, every one in a process of its own: nothing is
 * warm that would not be warm for a maker. What the processor does beside the search (compiling, tidying up) counts, too.
 */

const SETS = ['1d', 'kerf-1d', '1d-multistock'] as const;
const MILLISECONDS = 1000;

interface Outcome {
  readonly set: string;
  readonly id: string;
  readonly cost: number;
  readonly bound: number;
  readonly known: number;
  readonly knownBound: number;
  readonly firstMs: number;
  readonly bestMs: number;
  readonly allMs: number;
  readonly longestStepMs: number;
  readonly wrong: readonly string[];
}

function instancesOf(repository: string, set: string): readonly LengthInstance[] {
  return lengthInstances(join(repository, 'tests/fixtures/cutting'), set);
}

/** Runs in the process of one problem: prints its outcome. */
export function measureOneLengthProblem(repository: string, set: string, place: number): void {
  const instance = instancesOf(repository, set)[place];
  if (instance === undefined) throw new Error(`there is no problem ${place} in ${set}`);
  const start = processor();
  let last = start;
  let plan: LengthPlan | undefined;
  let bound = 0;
  let firstMs = 0;
  let bestMs = 0;
  let longestStepMs = 0;
  const problem = problemOf(instance);
  for (const step of planLengths(problem)) {
    const now = processor();
    longestStepMs = Math.max(longestStepMs, now - last);
    last = now;
    if (step.plan !== undefined) {
      if (plan === undefined) firstMs = now - start;
      plan = step.plan;
      bestMs = now - start;
    }
    bound = step.bound;
    if (now - start > MILLISECONDS) break;
  }
  if (plan === undefined) throw new Error('there is no plan');
  const known = instance.opt ?? instance.ub ?? 0;
  const outcome: Outcome = {
    set: instance.set ?? instance.base ?? set,
    id: instance.id,
    cost: plan.cost,
    bound,
    known,
    knownBound: instance.opt ?? instance.lb ?? 0,
    firstMs,
    bestMs,
    allMs: processor() - start,
    longestStepMs,
    wrong: checkLengthPlan(problem, plan),
  };
  console.log(JSON.stringify(outcome));
}

function processor(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Starts a process for each problem, one after the other, and prints a line for each and a sum for each file. */
export function measureCuttingLengths(repository: string, bundle: string): void {
  for (const set of SETS) {
    const outcomes = instancesOf(repository, set).map((_, place): Outcome => {
      const ran = spawnSync(process.execPath, [bundle, repository, 'one-length', set, String(place)], {
        encoding: 'utf8',
      });
      if (ran.status !== 0) throw new Error(ran.stderr);
      return JSON.parse(ran.stdout);
    });
    console.log(`\n${set}.json, ${MILLISECONDS} ms of processor time each`);
    for (const outcome of outcomes) console.log(lineOf(outcome));
    const proved = outcomes.filter(({ cost, bound }) => cost === bound).length;
    const sum = (value: (outcome: Outcome) => number) => outcomes.reduce((total, outcome) => total + value(outcome), 0);
    const above = Math.max(...outcomes.map(({ cost, known }) => cost - known));
    console.log(
      `together ${sum(({ cost }) => cost)}, best known ${sum(({ known }) => known)}, bound ${sum(({ bound }) => bound)}; ` +
        `${proved} of ${outcomes.length} proved; at most ${above} above the best known`,
    );
  }
}

function lineOf({
  set,
  id,
  cost,
  bound,
  known,
  knownBound,
  firstMs,
  bestMs,
  allMs,
  longestStepMs,
  wrong,
}: Outcome): string {
  const milliseconds = (value: number) => value.toFixed(0).padStart(6);
  return [
    `${set} ${id}`.padEnd(28),
    String(cost).padStart(8),
    (known === knownBound ? String(known) : `${knownBound}–${known}`).padStart(14),
    String(bound).padStart(8),
    (cost === bound ? 'proved' : `${cost - bound} open`).padStart(10),
    `first${milliseconds(firstMs)}  best${milliseconds(bestMs)}  all${milliseconds(allMs)}  step${milliseconds(longestStepMs)} ms`,
    ...wrong,
    ...(bound > known ? ['BOUND ABOVE A PLAN'] : []),
  ].join('  ');
}
