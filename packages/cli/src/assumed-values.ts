import type { Figure, Part, Units } from '@fettle/engine';
import type { AssumedJson } from './evaluation-json.ts';
import { lengthJson } from './length-json.ts';

/** Finds the habits of the trade that stand in where the text says nothing, and which parts hang on them. */

interface Found {
  readonly what: string;
  readonly figure: Figure;
  readonly because: string;
  readonly parts: Set<string>;
}

/** In the order in which the parts come upon them. */
export function assumedValues(parts: readonly Part[], units: Units): readonly AssumedJson[] {
  const found = new Map<string, Found>();
  const leaves = new Map<Figure, ReadonlySet<Leaf>>();
  for (const part of parts) {
    const { x, y, z } = part.box;
    const sizes = { length: part.length, width: part.width, thickness: part.thickness };
    const places = [x, y, z].flatMap(({ start, size, end }) => [start, size, end]);
    const roots = [
      ...Object.entries(sizes).map(([what, figure]) => ({ what: `${what} of the ${part.role}`, figure })),
      ...places.map((figure) => ({ what: `place of the ${part.role}`, figure })),
    ];
    for (const root of roots) {
      for (const leaf of assumedUnder(root, leaves)) {
        const key = JSON.stringify([leaf.what, leaf.figure.length.exactInches, leaf.because]);
        const known = found.get(key);
        if (known === undefined) found.set(key, { ...leaf, parts: new Set([part.id]) });
        else known.parts.add(part.id);
      }
    }
  }
  return [...found.values()].map(({ what, figure, because, parts: concerned }) => ({
    what,
    length: lengthJson(figure.length, units),
    because,
    parts: [...concerned],
  }));
}

interface Leaf {
  readonly what: string;
  readonly figure: Figure;
  readonly because: string;
}

interface Root {
  readonly what: string;
  readonly figure: Figure;
}

/**
 * Terms are shared by many sums, so each is looked into once; without recursion, because a long stack hangs each place
 * on the one before.
 */
function assumedUnder(root: Root, done: Map<Figure, ReadonlySet<Leaf>>): ReadonlySet<Leaf> {
  const waiting: Root[] = [root];
  for (let top = waiting.at(-1); top !== undefined; top = waiting.at(-1)) {
    const { figure, what } = top;
    const terms = done.has(figure) ? [] : termsOf(figure);
    const open = terms.filter((term) => !done.has(term.figure));
    if (open.length > 0) {
      waiting.push(...open);
      continue;
    }
    waiting.pop();
    if (!done.has(figure)) done.set(figure, gathered(figure, what, terms, done));
  }
  return done.get(root.figure) ?? new Set();
}

const nothing: ReadonlySet<Leaf> = new Set();

function gathered(
  figure: Figure,
  what: string,
  terms: readonly Root[],
  done: ReadonlyMap<Figure, ReadonlySet<Leaf>>,
): ReadonlySet<Leaf> {
  const { reason } = figure;
  if (reason.kind === 'assumed') return new Set([{ what, figure, because: reason.because }]);
  const filled = terms.flatMap((term) => {
    const leaves = done.get(term.figure) ?? nothing;
    return leaves.size === 0 ? [] : [leaves];
  });
  // Most sums hang on no habit or on those of one term: then the same set serves again.
  const [only] = filled;
  if (only === undefined) return nothing;
  return filled.every((each) => each === only) ? only : new Set(filled.flatMap((each) => [...each]));
}

function termsOf(figure: Figure): readonly Root[] {
  const { reason } = figure;
  return reason.kind === 'derived'
    ? reason.operands.map(({ label, figure: term }) => ({ what: label, figure: term }))
    : [];
}
