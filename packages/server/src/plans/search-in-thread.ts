import {
  type PlanListener,
  type PlanSearcher,
  type PlanTask,
  type RunningSearch,
  searchInSlices,
} from './plan-searcher.ts';
import type { FromPlanner, PlannerThread } from './search-messages.ts';

/** A thread that has not said that it listens by then never will, in milliseconds. */
const patience = 10_000;

interface Asked {
  readonly task: PlanTask;
  readonly listener: PlanListener;
  /** Where it is searched for instead, once the thread is given up. */
  instead?: RunningSearch;
}

/**
 * Searches in a thread of its own, started with the first search and kept. Where there can be no such thread, or it breaks,
 * what it was searching for is searched for here, and everything later as well.
 */
export class SearchInThread implements PlanSearcher {
  readonly #start: () => PlannerThread;
  readonly #onBroken: (why: string) => void;
  readonly #asked = new Map<number, Asked>();
  #thread: PlannerThread | undefined;
  #isReady = false;
  #isBroken = false;
  #last = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(start: () => PlannerThread, onBroken: (why: string) => void) {
    this.#start = start;
    this.#onBroken = onBroken;
  }

  search(task: PlanTask, listener: PlanListener): RunningSearch {
    if (!this.#isBroken) this.#begin();
    if (this.#isBroken) return searchInSlices.search(task, listener);
    const id = ++this.#last;
    this.#asked.set(id, { task, listener });
    if (this.#isReady) this.#thread?.send({ kind: 'search', id, task });
    return {
      stop: () => {
        this.#asked.get(id)?.instead?.stop();
        if (this.#asked.delete(id) && this.#isReady) this.#thread?.send({ kind: 'stop', id });
      },
    };
  }

  #begin(): void {
    if (this.#thread !== undefined) return;
    try {
      this.#thread = this.#start();
      this.#thread.listen(
        (message) => this.#hear(message),
        (why) => this.#break(why),
      );
      this.#timer = setTimeout(() => this.#break('it does not answer'), patience);
    } catch (error) {
      this.#break(String(error));
    }
  }

  #hear(message: FromPlanner): void {
    if (message.kind === 'ready') {
      clearTimeout(this.#timer);
      this.#isReady = true;
      for (const [id, { task }] of this.#asked) this.#thread?.send({ kind: 'search', id, task });
      return;
    }
    const { id } = message;
    const asked = this.#asked.get(id);
    // What was stopped may have been on its way.
    if (asked === undefined) return;
    if (message.kind !== 'news') this.#asked.delete(id);
    switch (message.kind) {
      case 'news':
        asked.listener.news(message.plans);
        return;
      case 'done':
        asked.listener.done(message.plans);
        return;
      case 'failed':
        asked.listener.failed(message.why);
        return;
      default:
        message satisfies never;
    }
  }

  #break(why: string): void {
    if (this.#isBroken) return;
    this.#isBroken = true;
    clearTimeout(this.#timer);
    this.#thread?.end();
    this.#thread = undefined;
    this.#isReady = false;
    this.#onBroken(why);
    for (const asked of this.#asked.values()) asked.instead = searchInSlices.search(asked.task, asked.listener);
  }
}
