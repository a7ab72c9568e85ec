import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  type ExportAnswer,
  exportSheetRequest,
  type KeepOffcutsAnswer,
  keepOffcutsRequest,
  type PieceView,
  type SheetView,
  stopPlanningNotification,
} from '@fettle/protocol';
import { afterEach, describe, expect, test } from 'vitest';
import { bundles } from './server-bundles.ts';
import { SmallEditor } from './small-editor.ts';

/** Cutting plans over the real protocol: searched for beside the text, better and better, until the reader has enough. */

const shop = readFileSync(join(import.meta.dirname, '../../examples/shop.fettle'), 'utf8');
const chest = readFileSync(join(import.meta.dirname, '../../examples/chest.fettle'), 'utf8');
const name = 'chest.fettle';

describe.each(bundles)('the server as a %s', (bundle) => {
  let editor: SmallEditor;
  let piece = '';

  afterEach(async () => {
    await editor.stop();
  });

  async function lookAt(sheet: string): Promise<void> {
    editor = await SmallEditor.start(bundle, { 'shop.fettle': shop, [name]: chest });
    await editor.open(name);
    await editor.watch(name);
    piece = (await editor.pictureNow(name)).pieces[0]?.key ?? '';
    await editor.look({ name, piece, sheet });
  }

  const shown = (view: PieceView | undefined, id: string): SheetView | undefined =>
    view?.sheets.find((sheet) => sheet.id === id);
  const last = () => editor.pictures.at(-1)?.pieces[0];
  const isDrawn = (view: PieceView | undefined) => shown(view, 'shopping')?.kind === 'table';

  test('a first plan comes at once, and how far the search is with it, until there is nothing better', async () => {
    await lookAt('shopping');
    await editor.until('a first list', () => isDrawn(last()));
    await editor.until('the last list', () => isDrawn(last()) && last()?.planning === undefined);
    const shares = editor.pictures.flatMap(({ pieces: [view] }) => view?.planning ?? []);
    expect(shares[0]).toBe(0);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    // A process has a thread for it; this worker cannot have workers of its own, and searches all the same.
    expect(editor.log.some((line) => line.includes('without a thread'))).toBe(bundle === 'worker');
    // What is not drawn anew is not sent anew.
    const parts = editor.frames.filter(({ pieces: [view] }) => view?.parts !== undefined);
    expect(parts.length).toBeLessThanOrEqual(2);
  });

  test('what is enough stops the search, and the plan there is stays', async () => {
    await lookAt('shopping');
    const uri = editor.uri(name);
    await editor.until('progress', () => last()?.planning !== undefined);
    await editor.notify(stopPlanningNotification, { uri, piece });
    await editor.until('the end', () => isDrawn(last()) && last()?.planning === undefined);
    const before = last();
    // Nonsense ends nothing.
    await editor.notify(stopPlanningNotification, { uri, piece: 'nobody' });
    await editor.look({ name, piece, sheet: 'cuts' });
    await editor.until('the cuts', () => shown(last(), 'cuts')?.kind === 'table');
    expect(shown(last(), 'shopping')).toBe(shown(before, 'shopping'));
  });

  test('an edit while plans are searched for is answered as ever, and then they are those of the new text', async () => {
    await lookAt('shopping');
    const width = /size (\d+) wide/.exec(chest)?.[1] ?? '';
    await editor.until('a first list', () => isDrawn(last()));
    const first = shown(last(), 'shopping');
    await editor.edit(name, `size ${width} wide`, `size ${Number(width) * 2} wide`);
    const picture = await editor.pictureNow(name);
    // The edit waits for no plan.
    expect(shown(picture.pieces[0], 'shopping')?.kind).toBe('later');
    await editor.until('the new list', () => isDrawn(last()) && shown(last(), 'shopping') !== first);
    const rows = (sheet: SheetView | undefined) => (sheet?.kind === 'table' ? JSON.stringify(sheet.rows) : '');
    expect(rows(shown(last(), 'shopping'))).not.toBe(rows(first));
  });

  test('a file holds the plan as it stays, whether or not somebody looked', async () => {
    await lookAt('elevation');
    const ask = () =>
      editor.request<ExportAnswer>(exportSheetRequest, {
        uri: editor.uri(name),
        piece,
        sheet: 'shopping',
        format: 'csv',
      });
    const one = await ask();
    expect(one.kind === 'file' && one.text).toContain('least');
    expect(await ask()).toEqual(one);
  });

  test('what is left over is written to the shop, and offcuts that were used go', async () => {
    const texts = {
      'shop.fettle': `units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide, costs 80 each {
  offcut 40 long, 12-1/2 wide, 3 of them
  offcut 5 long, 5 wide
}
machine "saw" kerf 1/8
`,
      'box.fettle': `use "shop.fettle"
piece "box" {
  units inches to 1/32
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides   top "ply", between sides }
}
`,
    };
    editor = await SmallEditor.start(bundle, texts);
    await editor.open('box.fettle');
    await editor.verdictNow('box.fettle');
    const ask = { uri: editor.uri('box.fettle'), piece: 'box' };
    const answer = await editor.request<KeepOffcutsAnswer>(keepOffcutsRequest, ask);
    if (answer.kind === 'refused') throw new Error(answer.sentence);
    const [file, ...others] = answer.files;
    expect(others).toEqual([]);
    expect([file?.uri, file?.text]).toEqual([editor.uri('shop.fettle'), texts['shop.fettle']]);
    const [edit] = file?.edits ?? [];
    // Three of the four parts come from the offcuts, so that all of them are gone; the small one stays.
    expect(edit?.text).toMatch(
      /^sheet "ply" actual 3\/4, 96 long, 48 wide, costs 80 each \{\n {2}offcut 5 long, 5 wide\n/,
    );
    expect(edit?.text).not.toContain('3 of them');
    expect(edit?.text).toMatch(/\n {2}offcut .* long, .* wide\n\}$/);
    expect(answer.sentence).toContain('3 offcuts that the plan uses taken out');
    expect(await editor.request(keepOffcutsRequest, { ...ask, piece: 'nobody' })).toMatchObject({ kind: 'refused' });
  });
});
