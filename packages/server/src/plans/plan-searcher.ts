import { type Patience, type PlanQuestion, type PlansSoFar, searchPlans } from '@fettle/engine';

/** Who searches for plans, in this thread or in another one. */
export interface PlanSearcher {
  /** Never before this call has returned does the listener hear anything. */
  search(task: PlanTask, listener: PlanListener): RunningSearch;
}

/** Plain data, so that it can cross to another thread. */
export interface PlanTask {
  readonly questions: readonly PlanQuestion[];
  readonly patience: Patience;
}

export interface PlanListener {
  /** A little better, or a little further; not more often than one can look. */
  news(plans: PlansSoFar): void;
  /** Nothing more will come. */
  done(plans: PlansSoFar): void;
  failed(why: string): void;
}

export interface RunningSearch {
  /** Nothing more is heard of it. */
  stop(): void;
}

/** For so long a search keeps its thread before it lets others have it, in milliseconds. */
const slice = 8;
/** Between two pieces of news, in milliseconds. */
const pace = 250;

/**
 * Searches in this thread, a little at a time, so that messages come through in between. The first plans are told as soon
 * as all are there.
 */
export const searchInSlices: PlanSearcher = {
  search({ questions, patience }, listener) {
    const search = searchPlans(questions, patience);
    let timer: ReturnType<typeof setTimeout> | undefined;
    let told = Number.NEGATIVE_INFINITY;
    let isWhole = false;
    let isStopped = false;
    const run = () => {
      const begun = Date.now();
      try {
        let step = search.next();
        while (step.done !== true && Date.now() - begun < slice) step = search.next();
        if (step.done === true) return listener.done(step.value);
        const wasWhole = isWhole;
        isWhole ||= step.value.answers.every((answer) => answer !== undefined);
        if (wasWhole !== isWhole || Date.now() - told >= pace) {
          told = Date.now();
          listener.news(step.value);
        }
        // Whoever hears the news may have heard enough.
        if (!isStopped) timer = setTimeout(run, 0);
      } catch (error) {
        listener.failed(error instanceof Error ? (error.stack ?? error.message) : String(error));
      }
    };
    timer = setTimeout(run, 0);
    return {
      stop: () => {
        isStopped = true;
        clearTimeout(timer);
      },
    };
  },
};
