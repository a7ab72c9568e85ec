import {
  type BuyingPlan,
  type BuyingRequest,
  buyingPlanOf,
  buyingRequest,
  type Evaluation,
  type Patience,
  type PlansSoFar,
  planQuestions,
  usualPatience,
} from '@fettle/engine';
import type { PlanSearcher, RunningSearch } from './plan-searcher.ts';

/** After an edit nothing is searched for until no further edit came for so long, in milliseconds. */
const pauseAfterEdit = 150;

interface Kept {
  plan?: BuyingPlan;
  /** 0 to 1; absent while nothing is searched for. */
  progress?: number;
  search?: RunningSearch;
  /** No better plan is wanted, or there is none. */
  isDone: boolean;
  /** A first plan is enough. */
  isEnough: boolean;
  /** Who waits for the plan as it will stay. */
  waiting: ((plan: BuyingPlan | Error) => void)[];
}

/**
 * The cutting plans of pieces, kept as long as their evaluations. Searched for only while somebody looks at them: what a
 * later text has replaced is given up.
 */
export class PiecePlans {
  readonly #searcher: PlanSearcher;
  readonly #patience: Patience;
  readonly #onFailure: (why: string) => void;
  readonly #kept = new WeakMap<Evaluation, Kept>();
  /** By document, what is looked at there. */
  readonly #wanted = new Map<string, ReadonlySet<Evaluation>>();
  readonly #searching = new Set<Evaluation>();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #onNews: (evaluation: Evaluation) => void = () => undefined;

  constructor(searcher: PlanSearcher, onFailure: (why: string) => void, patience = usualPatience) {
    this.#searcher = searcher;
    this.#onFailure = onFailure;
    this.#patience = patience;
  }

  /** The listener hears of every better plan, and of progress. */
  listen(onNews: (evaluation: Evaluation) => void): void {
    this.#onNews = onNews;
  }

  /** The best plan so far; the same object until there is a better one. */
  planOf(evaluation: Evaluation): BuyingPlan | undefined {
    return this.#kept.get(evaluation)?.plan;
  }

  /** 0 to 1; undefined while nothing is searched for. */
  progressOf(evaluation: Evaluation): number | undefined {
    return this.#kept.get(evaluation)?.progress;
  }

  /** In the document the plans of these pieces are looked at, and of no others. Starts nothing before it returns. */
  want(uri: string, evaluations: readonly Evaluation[]): void {
    const isEdited = (this.#wanted.get(uri)?.size ?? 0) > 0;
    if (evaluations.length === 0) this.#wanted.delete(uri);
    else this.#wanted.set(uri, new Set(evaluations));
    for (const evaluation of this.#searching) {
      const isWanted = [...this.#wanted.values()].some((each) => each.has(evaluation));
      if (!isWanted && this.#kept.get(evaluation)?.waiting.length === 0) this.#giveUp(evaluation);
    }
    const fresh = evaluations.map((evaluation) => this.#of(evaluation)).filter((kept) => isIdle(kept));
    if (fresh.length === 0) return;
    for (const kept of fresh) kept.progress = 0;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#startWanted(), isEdited ? pauseAfterEdit : 0);
  }

  /** The plan there is, is good enough; where there is none yet, the first one will be. */
  stop(evaluation: Evaluation): void {
    const kept = this.#kept.get(evaluation);
    if (kept === undefined || kept.isDone) return;
    kept.isEnough = true;
    if (kept.plan !== undefined) this.#end(evaluation, kept);
  }

  /** The plan as it will stay. Rejects where the search failed. */
  finished(evaluation: Evaluation): Promise<BuyingPlan> {
    const kept = this.#of(evaluation);
    if (kept.isDone && kept.plan !== undefined) return Promise.resolve(kept.plan);
    const answer = new Promise<BuyingPlan>((resolve, reject) => {
      kept.waiting.push((plan) => (plan instanceof Error ? reject(plan) : resolve(plan)));
    });
    this.#begin(evaluation, kept);
    return answer;
  }

  #of(evaluation: Evaluation): Kept {
    const known = this.#kept.get(evaluation);
    if (known !== undefined) return known;
    const kept: Kept = { isDone: false, isEnough: false, waiting: [] };
    this.#kept.set(evaluation, kept);
    return kept;
  }

  #startWanted(): void {
    for (const evaluations of this.#wanted.values()) {
      for (const evaluation of evaluations) this.#begin(evaluation, this.#of(evaluation));
    }
  }

  #begin(evaluation: Evaluation, kept: Kept): void {
    if (kept.isDone || kept.search !== undefined) return;
    const { parts, machines, design } = evaluation;
    kept.progress = 0;
    this.#searching.add(evaluation);
    try {
      const request = buyingRequest(parts, machines ?? [], design.units);
      const task = { questions: planQuestions(request), patience: this.#patience };
      kept.search = this.#searcher.search(task, {
        news: (plans) => this.#take(evaluation, kept, request, plans),
        done: (plans) => {
          kept.isEnough = true;
          this.#take(evaluation, kept, request, plans);
        },
        failed: (why) => this.#fail(evaluation, kept, why),
      });
    } catch (error) {
      this.#fail(evaluation, kept, error instanceof Error ? (error.stack ?? error.message) : String(error));
    }
  }

  #take(evaluation: Evaluation, kept: Kept, request: BuyingRequest, plans: PlansSoFar): void {
    kept.progress = plans.progress;
    const plan = buyingPlanOf(request, plans.answers);
    if (plan !== undefined && isBetter(plan, kept.plan)) kept.plan = plan;
    if (kept.isEnough && kept.plan !== undefined) this.#end(evaluation, kept);
    else this.#onNews(evaluation);
  }

  #end(evaluation: Evaluation, kept: Kept): void {
    kept.isDone = true;
    this.#giveUp(evaluation);
    const { plan } = kept;
    for (const tell of kept.waiting.splice(0)) tell(plan ?? new Error('no plan was found'));
    this.#onNews(evaluation);
  }

  #fail(evaluation: Evaluation, kept: Kept, why: string): void {
    this.#onFailure(why);
    kept.isDone = true;
    this.#giveUp(evaluation);
    for (const tell of kept.waiting.splice(0)) tell(new Error(why));
    this.#onNews(evaluation);
  }

  #giveUp(evaluation: Evaluation): void {
    const kept = this.#kept.get(evaluation);
    this.#searching.delete(evaluation);
    kept?.search?.stop();
    delete kept?.search;
    delete kept?.progress;
  }
}

function isIdle({ isDone, search }: Kept): boolean {
  return !isDone && search === undefined;
}

/** A search that is begun once more finds worse plans first; a plan that is the same again is no other plan. */
function isBetter(one: BuyingPlan, other: BuyingPlan | undefined): boolean {
  if (other === undefined) return true;
  const sum = ({ sheets, boards }: BuyingPlan, of: (each: { plan: { cost: number }; bound: number }) => number) =>
    [...sheets, ...boards].reduce((total, each) => total + of(each), 0);
  return (
    (one.unplanned.length - other.unplanned.length ||
      sum(one, ({ plan }) => plan.cost) - sum(other, ({ plan }) => plan.cost) ||
      sum(other, ({ bound }) => bound) - sum(one, ({ bound }) => bound)) < 0
  );
}
