import type { PlansSoFar } from '@fettle/engine';
import type { PlanTask } from './plan-searcher.ts';

/** What the server and its planning thread say to each other. */

export type ToPlanner =
  | { readonly kind: 'search'; readonly id: number; readonly task: PlanTask }
  | { readonly kind: 'stop'; readonly id: number };

export type FromPlanner =
  /** It listens; a message sent earlier could be lost. */
  | { readonly kind: 'ready' }
  | { readonly kind: 'news' | 'done'; readonly id: number; readonly plans: PlansSoFar }
  | { readonly kind: 'failed'; readonly id: number; readonly why: string };

/** One end of the way to a planning thread, whatever kind of thread it is. */
export interface PlannerThread {
  send(message: ToPlanner): void;
  /** `broken`: it could not be started, or has ended; nothing comes of it any more. */
  listen(heard: (message: FromPlanner) => void, broken: (why: string) => void): void;
  end(): void;
}
