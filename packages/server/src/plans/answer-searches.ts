import { type RunningSearch, searchInSlices } from './plan-searcher.ts';
import type { FromPlanner, ToPlanner } from './search-messages.ts';

/** The planning thread's own side: searches what it is asked, a little at a time, so that it hears when to stop. */
export function answerSearches(tell: (message: FromPlanner) => void): (message: ToPlanner) => void {
  const running = new Map<number, RunningSearch>();
  return (message) => {
    const { id } = message;
    if (message.kind === 'stop') {
      running.get(id)?.stop();
      running.delete(id);
      return;
    }
    const search = searchInSlices.search(message.task, {
      news: (plans) => tell({ kind: 'news', id, plans }),
      done: (plans) => {
        running.delete(id);
        tell({ kind: 'done', id, plans });
      },
      failed: (why) => {
        running.delete(id);
        tell({ kind: 'failed', id, why });
      },
    });
    running.set(id, search);
  };
}
