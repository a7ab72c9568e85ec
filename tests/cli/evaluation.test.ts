import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { EvaluationJson } from '@fettle/cli';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Bench, repository } from './running-cli.ts';

let bench: Bench;
let sideboard: EvaluationJson;
beforeAll(() => {
  bench = new Bench();
  const ended = bench.run(['make', 'sideboard.fettle', '--out', 'drawn']);
  if (ended.code !== 0) throw new Error(ended.err);
  sideboard = JSON.parse(bench.read('drawn/games-sideboard-evaluation.json')) as EvaluationJson;
});
afterAll(() => bench.remove());

type Cell = NonNullable<EvaluationJson['face']>;

function cell(name: string, within: Cell | undefined = sideboard.face): Cell | undefined {
  if (within === undefined || within.name === name) return within;
  return within.cells.map((inner) => cell(name, inner)).find((found) => found?.name === name);
}

/** Worked out by hand from the words of the sideboard. */
describe('the numbers worked by hand come out as exact fractions', () => {
  test('60 less two overhangs of 3/4: the body is 58-1/2 wide; 34 less 7/8 less 3: 30-1/8 high', () => {
    expect(sideboard.size).toMatchObject({
      width: { exact: '60', shown: '60"' },
      height: { exact: '34' },
      depth: { exact: '17' },
    });
    expect(sideboard.carcase?.body).toMatchObject({
      width: { exact: '117/2', shown: '58-1/2"' },
      height: { exact: '241/8', shown: '30-1/8"' },
      depth: { exact: '65/4' },
    });
  });

  test('less two sides: the face is 57 wide; less bottom and stretchers: 28-5/8 high', () => {
    expect(sideboard.carcase?.face).toMatchObject({ width: { exact: '57' }, height: { exact: '229/8' } });
    expect(sideboard.face?.opening).toEqual(sideboard.carcase?.face);
  });

  test('57 less 18 less two partitions, halved: the door openings are 18-3/4', () => {
    for (const name of ['left', 'right']) expect(cell(name)?.opening.width.exact).toBe('75/4');
    expect(sideboard.face?.cells[1]?.opening.width.exact).toBe('18');
  });

  test('18-3/4 less three gaps of 3/32, halved: a door is 9-15/64 wide, no mark of a ruler of 1/32', () => {
    const leaf = {
      width: { exact: '591/64', shown: '9-7/32" + 1/64"' },
      height: { exact: '455/16', shown: '28-7/16"' },
    };
    for (const name of ['left', 'right']) expect(cell(name)?.leaves).toMatchObject([leaf, leaf]);
    expect(sideboard.parts.filter((part) => part.role === 'door')).toHaveLength(4);
  });

  test('18 less two gaps: drawer fronts are 17-13/16 wide, and 5, 6, 7 and 10-5/32 high', () => {
    const heights = { cards: '5', dice: '6', maps: '7', blankets: '325/32' };
    for (const [name, height] of Object.entries(heights)) {
      expect(cell(name)).toMatchObject({
        kind: 'drawer',
        front: { width: { exact: '285/16', shown: '17-13/16"' }, height: { exact: height } },
      });
    }
  });

  test('18 less 1/2 at each side: the boxes on side-mount slides are 17 wide and 14 deep', () => {
    for (const name of ['cards', 'dice', 'maps', 'blankets']) {
      expect(cell(name)?.box).toMatchObject({ width: { exact: '17', shown: '17"' }, depth: { exact: '14' } });
    }
  });

  test('each place is a start, a size and an end that agree: the left leaf of the right pair', () => {
    // 3/4 overhang, 3/4 side, then 57 of face; from its right end 18-3/4 back, and one gap in.
    expect(cell('right')?.leaves[0]).toMatchObject({
      left: { exact: '1275/32' },
      right: { exact: '3141/64' },
      bottom: { exact: '123/32' },
      top: { exact: '1033/32' },
    });
  });
});

test('parts carry mark, stock, sizes, grain and place; the cut list accounts for each of them once', () => {
  const front = sideboard.parts.find((part) => part.role === 'drawer-front' && part.label.includes('cards'));
  expect(front).toMatchObject({
    mark: 'K1',
    stock: 'ash panel 1/2',
    length: { exact: '285/16' },
    width: { exact: '5' },
    thickness: { exact: '1/2' },
    grain: 'left-to-right',
    cell: cell('cards')?.id,
  });
  expect(front?.position.width.exact).toBe('285/16');
  const listed = sideboard.cutList.flatMap((row) => row.parts);
  expect([...listed].sort()).toEqual(sideboard.parts.map((part) => part.id).sort());
  for (const row of sideboard.cutList) {
    expect(row.marks).toHaveLength(row.quantity);
    expect(row.parts).toHaveLength(row.quantity);
  }
});

test('what is assumed says why and which parts hang on it', () => {
  const shy = sideboard.assumed.find((value) => value.what === 'left short of both grooves');
  expect(shy?.length.exact).toBe('1/16');
  expect(shy?.because).toContain('grooves');
  expect(shy?.parts).toHaveLength(4);
  expect(shy?.parts).toContain(sideboard.parts.find((part) => part.role === 'drawer-bottom')?.id);
  const ids = new Set(sideboard.parts.map((part) => part.id));
  for (const { parts } of sideboard.assumed) for (const id of parts) expect(ids).toContain(id);
});

test('a piece in millimetres has its exact lengths in millimetres', () => {
  const text = 'piece "Shelf" { units mm to 1  size 600 wide, 720 high, 1-1/2" deep }';
  bench.run(['make', '-', '--out', 'metric', '--even-with-errors'], { input: text });
  const { units, size } = JSON.parse(bench.read('metric/shelf-evaluation.json')) as EvaluationJson;
  expect(units).toEqual({ unit: 'mm', ruler: '1' });
  expect(size).toMatchObject({ width: { exact: '600', shown: '600 mm' }, depth: { exact: '381/10' } });
});

/** Every name of a field somewhere in a value, but for the facts, whose names depend on the code. */
function fieldsIn(value: unknown, found = new Set<string>()): ReadonlySet<string> {
  if (Array.isArray(value)) for (const item of value) fieldsIn(item, found);
  else if (typeof value === 'object' && value !== null) {
    for (const [name, inner] of Object.entries(value)) {
      found.add(name);
      if (name !== 'facts') fieldsIn(inner, found);
    }
  }
  return found;
}

describe('the README of the command line', () => {
  const read = (name: string) => readFileSync(join(repository, 'packages/cli', name), 'utf8');
  const documented = new Set([...read('README.md').matchAll(/`([a-zA-Z]+)`/g)].map((match) => match[1] ?? ''));

  test('names every field that the evaluation and the check are declared with', () => {
    const sources = ['length-json', 'finding-json', 'evaluation-json'].map((name) => read(`src/${name}.ts`)).join('\n');
    const declared = [...sources.matchAll(/^ {2}readonly ([a-zA-Z]+)\??:/gm)].map((match) => match[1] ?? '');
    expect(declared.length).toBeGreaterThan(40);
    expect(declared.filter((name) => !documented.has(name) && !['exact', 'shown'].includes(name))).toEqual([]);
  });

  test('names every field that is really written', () => {
    bench.write('over.fettle', bench.sideboard(['"blankets" rest', '"blankets" front 11 high']));
    bench.run(['make', 'over.fettle', '--out', 'over', '--even-with-errors']);
    const written = fieldsIn([sideboard, JSON.parse(bench.read('over/games-sideboard-evaluation.json'))]);
    expect(written.size).toBeGreaterThan(40);
    expect([...written].filter((name) => !documented.has(name) && !['exact', 'shown'].includes(name))).toEqual([]);
  });
});
