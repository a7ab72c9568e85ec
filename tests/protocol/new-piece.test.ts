import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  type NewPieceParams,
  type NewPieceProblemParams,
  type NewPieceStep,
  newPieceProblemRequest,
  newPieceRequest,
} from '@fettle/protocol';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { bundles } from './server-bundles.ts';
import { SmallEditor } from './small-editor.ts';

/** A new piece as the extension asks for it: one question after another, over the real protocol. */

const everything = {
  name: 'Hall cupboard',
  ruler: 'inches-32',
  holds: ['papers', 'boxes'],
  width: '48',
  height: '96',
  depth: '20',
  people: 'adults',
  stature: 'side',
};

describe.each(bundles)('the server as a %s', (bundle) => {
  let editor: SmallEditor;
  beforeEach(async () => {
    editor = await SmallEditor.start(bundle, {});
  });
  afterEach(() => editor.stop());

  function step(answers: object, beside: NewPieceParams['beside'] = []): Promise<NewPieceStep> {
    return editor.request(newPieceRequest, { answers, usualMeasure: 'mm-half', beside });
  }
  function problem(answers: object, question: string, answer: unknown): Promise<string | null> {
    const params = { answers, usualMeasure: 'mm-half', beside: [], question, answer } as NewPieceProblemParams;
    return editor.request(newPieceProblemRequest, params);
  }
  async function made(answers: object, beside?: NewPieceParams['beside']) {
    const next = await step(answers, beside);
    if (next.kind === 'ask') throw new Error(`${next.question.id} is asked`);
    return next;
  }

  test('every question comes once, in order, and the answers lead to a piece that fits', async () => {
    const asked: string[] = [];
    let answers: Record<string, unknown> = {};
    let next = await step(answers);
    while (next.kind === 'ask') {
      const { id } = next.question;
      asked.push(id);
      expect(next.step).toBe(asked.length);
      const answer = everything[id as keyof typeof everything];
      expect(await problem(answers, id, answer)).toBeNull();
      answers = { ...answers, [id]: answer };
      next = await step(answers);
    }
    expect(asked).toEqual(Object.keys(everything));
    expect(next.piece.name).toBe('hall-cupboard.fettle');
    // As they would stand in the folder: the piece is checked by the very server that wrote it.
    for (const file of [next.piece, next.shop]) {
      if (file !== undefined) writeFileSync(join(editor.folder, file.name), file.text);
    }
    await editor.open('shop.fettle');
    await editor.open(next.piece.name);
    expect((await editor.verdictNow(next.piece.name)).verdict).toMatch(/^fits/);
  });

  test('the measure of the settings stands chosen; a height that does not go in is not offered', async () => {
    const ruler = await step({ name: 'x' });
    expect(ruler.kind === 'ask' && ruler.question.kind === 'one' && ruler.question.chosen).toEqual(['mm-half']);
    const low = await step({ ...everything, height: '40', stature: undefined });
    const offered = low.kind === 'ask' && low.question.kind === 'one' && low.question.options.map(({ id }) => id);
    expect(offered).toEqual(['low', 'side', 'full']);
    // Too high for the place that was given since: asked again.
    expect(await step({ ...everything, height: '40', stature: 'tall' })).toMatchObject({ kind: 'ask', step: 8 });
  });

  test('answers that cannot be used are told why', async () => {
    const { ruler, holds } = everything;
    expect(await problem({}, 'name', '  ')).toMatch(/name/);
    expect(await problem({}, 'name', 'the "big" one')).toMatch(/quotation/);
    expect(await problem({}, 'name', 'a\u202eb')).toMatch(/not seen/);
    expect(await problem({ ruler, holds }, 'width', 'wide')).toMatch(/no length/);
    expect(await problem({ ruler, holds }, 'width', '1200')).toMatch(/unit/);
    expect(await problem({ ruler, holds }, 'width', '1200mm')).toBeNull();
    expect(await problem({ ruler, holds }, 'depth', '6')).toMatch(/12-1\/2"/);
    expect(await problem({ ruler }, 'holds', [])).toMatch(/at least one/);
  });

  test.each([
    ['a number', 7],
    ['nothing', null],
    ['a list', []],
    ['markup', { name: '<script>', holds: ['<b>'], ruler: '__proto__', width: {} }],
  ])('%s for answers is asked about, not failed on', async (_, answers) => {
    expect((await step(answers as object)).kind).toBe('ask');
  });

  test('names of files are plain, new, and kept by no system', async () => {
    const name = async (called: string, ...there: string[]) =>
      (
        await made(
          { ...everything, name: called },
          there.map((each) => ({ name: each })),
        )
      ).piece.name;
    expect(await name('Hall cupboard', 'Hall-Cupboard.fettle', 'hall-cupboard-2.fettle')).toBe(
      'hall-cupboard-3.fettle',
    );
    expect(await name('../../etc/passwd')).toBe('etc-passwd.fettle');
    expect(await name('CON')).toBe('piece-con.fettle');
    expect(await name('shop')).toBe('piece-shop.fettle');
    expect(await name('Schränkchen für Öl')).toBe('schränkchen-für-öl.fettle');
  });

  test('a shop file that serves is used; one that does not is left alone and another stands beside it', async () => {
    const first = await made(everything);
    const shop = first.shop?.text ?? '';
    expect(shop).toContain('birch ply 3/4');
    const again = await made(everything, [{ name: 'shop.fettle', text: shop }]);
    expect(again.shop).toBeUndefined();
    expect(again.piece.text).toContain('use "shop.fettle"');
    // Thinner than the trade calls it, and still a sheet to build from: the maker's own figures count.
    const own = shop.replace('actual 23/32"', 'actual 45/64"');
    expect((await made(everything, [{ name: 'shop.fettle', text: own }])).shop).toBeUndefined();
    const other = await made(everything, [
      { name: 'shop.fettle', text: 'board "pear" any thickness, 8" wide, 90" long' },
    ]);
    expect(other.shop?.name).toBe('first-shop.fettle');
    expect(other.piece.text).toContain('use "first-shop.fettle"');
  });
});
