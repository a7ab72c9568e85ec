import { readFileSync } from 'node:fs';
import { explodedView, toSvg, walk } from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';
import { createFettleServices, evaluateDocument } from '@fettle/language';
import { URI } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { expect, it } from 'vitest';
import { partGroups, readSvg, withClass } from '../reading-svg.ts';

/** The exploded view is for finding every part: it is painted as a viewer would paint it, and what shows is measured. */

const examples = ['blanket-chest', 'chest', 'linen-press', 'pantry', 'sideboard', 'vanity', 'wall-cupboard'];

async function exampleOf(name: string): Promise<Evaluation> {
  const { shared, Fettle } = createFettleServices(NodeFileSystem);
  const path = new URL(`../../../examples/${name}.fettle`, import.meta.url);
  const document = shared.workspace.LangiumDocumentFactory.fromString(readFileSync(path, 'utf8'), URI.parse(path.href));
  shared.workspace.LangiumDocuments.addDocument(document);
  await shared.workspace.DocumentBuilder.build([document], { validation: false });
  const [piece] = evaluateDocument(Fettle, document).pieces;
  if (piece === undefined) throw new Error(`${name} holds no piece`);
  return piece.evaluation;
}

/** On paper, in mm. */
const STEP = 0.5;

type Corner = readonly [number, number];

function holds(outline: readonly Corner[], x: number, y: number): boolean {
  let inside = false;
  outline.forEach(([x1, y1], at) => {
    const [x2, y2] = outline[(at + 1) % outline.length] as Corner;
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
  });
  return inside;
}

/** Of each part, as shares of its own outline: what is still seen once everything has been painted over it. */
function seenShares(evaluation: Evaluation): ReadonlyMap<string, number> {
  const painted = new Map<string, string>();
  const own = new Map<string, number>();
  for (const [part, group] of partGroups(readSvg(toSvg(explodedView(evaluation))))) {
    const places = new Set<string>();
    for (const shape of withClass(group, 'polygon', 'surface')) {
      const outline = (shape.getAttribute('points') ?? '')
        .split(' ')
        .map((pair) => pair.split(',').map(Number) as unknown as Corner);
      const across = outline.map(([x]) => x);
      const down = outline.map(([, y]) => y);
      for (let column = Math.ceil(Math.min(...across) / STEP); column * STEP <= Math.max(...across); column++) {
        for (let row = Math.ceil(Math.min(...down) / STEP); row * STEP <= Math.max(...down); row++) {
          if (holds(outline, column * STEP, row * STEP)) places.add(`${column} ${row}`);
        }
      }
    }
    own.set(part, places.size);
    for (const place of places) painted.set(place, part);
  }
  const seen = new Map<string, number>();
  for (const part of painted.values()) seen.set(part, (seen.get(part) ?? 0) + 1);
  return new Map([...own].map(([part, size]) => [part, (seen.get(part) ?? 0) / Math.max(1, size)]));
}

it.each(examples)('one sees something of every part of the %s', async (name) => {
  const evaluation = await exampleOf(name);
  const shares = seenShares(evaluation);
  expect([...shares.keys()].sort()).toEqual(evaluation.parts.map(({ id }) => id).sort());
  expect([...shares].filter(([, share]) => share < 0.05)).toEqual([]);
  const dashed = [...walk(explodedView(evaluation).content)].filter(
    (primitive) => 'role' in primitive && primitive.role === 'hidden',
  );
  expect(dashed).toEqual([]);
});
