import type { PlansSoFar } from '@fettle/engine';
import { expect, test } from 'vitest';
import { answerSearches } from '../../packages/server/src/plans/answer-searches.ts';
import { type PlanTask, searchInSlices } from '../../packages/server/src/plans/plan-searcher.ts';
import { SearchInThread } from '../../packages/server/src/plans/search-in-thread.ts';
import type { FromPlanner, PlannerThread } from '../../packages/server/src/plans/search-messages.ts';

/** A thread that searches: what becomes of a search when it works, when it is stopped, and when the thread dies. */

const task: PlanTask = {
  questions: [
    {
      kind: 'sheets',
      problem: {
        sheets: [{ id: 'ply', width: 48, length: 96, cost: 1 }],
        blanks: [{ id: 'side', width: 12, length: 36, count: 20, mayTurn: false }],
        kerf: 1,
      },
    },
  ],
  patience: { steps: 5, seed: 1 },
};

/** No bound proves any plan of it the least. */
const hard: PlanTask['questions'][number] = {
  kind: 'sheets',
  problem: {
    sheets: [{ id: 'ply', width: 48, length: 96, cost: 1 }],
    blanks: [11, 13, 17, 19, 23, 25].flatMap((width) =>
      [29, 31, 37, 41, 43].map((length) => ({ id: `${width} x ${length}`, width, length, count: 3, mayTurn: false })),
    ),
    kerf: 1,
  },
};

/** A thread within this one, whose messages cross as plain data. */
function sameThread(): PlannerThread & { breakDown(): void } {
  let heard: (message: FromPlanner) => void = () => undefined;
  let broken: (why: string) => void = () => undefined;
  let isAlive = true;
  const answer = answerSearches((message) => {
    if (isAlive) heard(structuredClone(message));
  });
  return {
    send: (message) => {
      if (isAlive) answer(structuredClone(message));
    },
    listen(hear, breaks) {
      heard = hear;
      broken = breaks;
      setTimeout(() => heard({ kind: 'ready' }), 0);
    },
    end: () => {
      isAlive = false;
    },
    breakDown() {
      isAlive = false;
      broken('it was told to');
    },
  };
}

function searched(searcher: SearchInThread): Promise<PlansSoFar> {
  return new Promise((resolve, reject) => {
    searcher.search(task, { news: () => undefined, done: resolve, failed: (why) => reject(new Error(why)) });
  });
}

test('the answer is that of the search, wherever it ran', async () => {
  const thread = new SearchInThread(sameThread, (why) => expect.fail(why));
  const there = await searched(thread);
  const reports: string[] = [];
  const here = await searched(
    new SearchInThread(
      () => {
        throw new Error('no workers here');
      },
      (why) => reports.push(why),
    ),
  );
  expect(here).toEqual(there);
  expect(here.progress).toBe(1);
  expect(reports).toEqual(['Error: no workers here']);
});

test('a thread that dies takes no search with it', async () => {
  const ends = sameThread();
  const reports: string[] = [];
  const searcher = new SearchInThread(
    () => ends,
    (why) => reports.push(why),
  );
  const answer = searched(searcher);
  ends.breakDown();
  expect((await answer).answers).toHaveLength(1);
  expect(reports).toEqual(['it was told to']);
  // And what comes later is searched for as well.
  expect((await searched(searcher)).answers).toHaveLength(1);
});

test('nothing is heard of a search that was stopped', async () => {
  const searcher = new SearchInThread(sameThread, (why) => expect.fail(why));
  const heard: string[] = [];
  const listen = (kind: string) => () => heard.push(kind);
  searcher.search(task, { news: listen('news'), done: listen('done'), failed: listen('failed') }).stop();
  await searched(searcher);
  expect(heard).toEqual([]);
});

test('who has heard enough hears nothing more, even if he says so while he hears it', async () => {
  let heard = 0;
  await new Promise<void>((resolve) => {
    const search = searchInSlices.search(
      { questions: [hard], patience: { steps: 1_000_000, seed: 1 } },
      {
        news: () => {
          heard += 1;
          search.stop();
          setTimeout(resolve, 50);
        },
        done: () => expect.fail('it was stopped'),
        failed: (why) => expect.fail(why),
      },
    );
  });
  expect(heard).toBe(1);
});
