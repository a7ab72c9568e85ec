import { chmodSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { FileChangeType, type Hover, type InlayHint, type WorkspaceSymbol } from 'vscode-languageserver/node';
import { bundles } from './server-bundles.ts';
import { SmallEditor } from './small-editor.ts';

/** What goes wrong around a text: files that vanish, folders that are large, texts from odd places, a server that dies. */

const sideboard = 'sideboard.fettle';
const shop = 'shop.fettle';
const example = (name: string) => readFileSync(join(import.meta.dirname, '../../examples', name), 'utf8');
const workshop = { [sideboard]: example(sideboard), [shop]: example(shop) };
/** Error and Warning; what is only not checked yet is a hint. */
const grave = 2;

describe.each(bundles)('the server as a %s', (bundle) => {
  let editor: SmallEditor;

  afterEach(async () => {
    await editor.stop();
  });

  const codes = (name: string) =>
    editor
      .diagnostics(name)
      ?.filter(({ severity }) => (severity ?? 1) <= grave)
      .map(({ code }) => code);

  async function openSideboard(): Promise<void> {
    editor = await SmallEditor.start(bundle, workshop);
    await editor.open(sideboard);
    await editor.verdictNow(sideboard);
    expect(codes(sideboard)).toEqual([]);
  }

  test('a shop file that is deleted is missed, once, and welcome again', async () => {
    await openSideboard();
    rmSync(join(editor.folder, shop));
    const before = editor.refreshed.length;
    await editor.tellOfFile(shop, FileChangeType.Deleted);
    // What stands beside the text has changed without a key in it.
    for (const what of ['codeLens', 'inlayHint']) {
      await editor.until(`word to ask for ${what} again`, () =>
        editor.refreshed.slice(before).includes(`workspace/${what}/refresh`),
      );
    }
    await editor.until('a missing file', () => codes(sideboard)?.includes('file-not-found'));
    // One cause, one finding: the names it declared are not missed one by one.
    expect(codes(sideboard)?.filter((code) => code === 'file-not-found')).toHaveLength(1);
    expect(codes(sideboard)).not.toContain('unknown-name');
    writeFileSync(join(editor.folder, shop), workshop[shop]);
    await editor.tellOfFile(shop, FileChangeType.Created);
    await editor.until('no complaint', () => codes(sideboard)?.length === 0);
  });

  test('a shop file that is renamed is missed under its old name and known under the new one', async () => {
    await openSideboard();
    renameSync(join(editor.folder, shop), join(editor.folder, 'store.fettle'));
    await editor.notify('workspace/didChangeWatchedFiles', {
      changes: [
        { uri: editor.uri(shop), type: FileChangeType.Deleted },
        { uri: editor.uri('store.fettle'), type: FileChangeType.Created },
      ],
    });
    await editor.until('a missing file', () => codes(sideboard)?.includes('file-not-found'));
    await editor.edit(sideboard, 'use "shop.fettle"', 'use "store.fettle"');
    await editor.verdictNow(sideboard);
    expect(codes(sideboard)).toEqual([]);
  });

  test('a shop file that another program empties, halves or fills with noise does no harm', async () => {
    await openSideboard();
    const half = workshop[shop].slice(0, workshop[shop].length / 2);
    for (const content of ['', half, '\u0000\uFFFF{{{"""', workshop[shop].replaceAll('\n', '\r\n')]) {
      writeFileSync(join(editor.folder, shop), content);
      const told = editor.verdicts.length;
      await editor.tellOfFile(shop, FileChangeType.Changed);
      await editor.until('another verdict', () =>
        editor.verdicts.slice(told).some(({ uri }) => uri === editor.uri(sideboard)),
      );
      expect(await editor.hover(sideboard, 'drawer "dice"')).not.toBeNull();
    }
    // The last one is the shop as it was, with other line ends.
    await editor.until('no complaint', () => codes(sideboard)?.length === 0);
  });

  test('a file one may only read is read like any other', async () => {
    await openSideboard();
    chmodSync(join(editor.folder, shop), 0o444);
    await editor.open(shop);
    expect((await editor.verdictNow(shop)).errors).toBe(0);
    await editor.edit(sideboard, 'slides "side mount 14"', 'slides "side mount 12"');
    expect((await editor.verdictNow(sideboard)).errors).toBe(0);
  });

  test('an older copy of a file, as a comparison shows it, is answered and adds no name to the others', async () => {
    await openSideboard();
    const older = `git:${join(editor.folder, sideboard)}?HEAD`;
    const past = `sheet "from the past" actual 3/4\n${workshop[sideboard].replace('size 60', 'siez 60')}`;
    await editor.open(older, past);
    await editor.verdictNow(older);
    // It is read with the shop of today, and what is wrong with it is its own.
    expect(codes(older)).toContain('unknown-word');
    expect(codes(older)).not.toContain('file-not-found');
    const pieces = await editor.request<WorkspaceSymbol[]>('workspace/symbol', { query: 'Games sideboard' });
    expect(pieces.map(({ location }) => location.uri)).toEqual([editor.uri(sideboard)]);
    expect((await editor.verdictNow(sideboard)).errors).toBe(0);
    await editor.edit(sideboard, 'sides "ash panel" thick', 'sides "from the past" thick');
    await editor.verdictNow(sideboard);
    expect(codes(sideboard)).toContain('unknown-name');
    await editor.close(older);
    await editor.until('an empty list', () => editor.diagnostics(older)?.length === 0);
  });

  test('a text never saved uses no neighbour by accident, and says so', async () => {
    editor = await SmallEditor.start(bundle, workshop);
    const unsaved = 'untitled:Untitled-1';
    await editor.open(unsaved, workshop[sideboard]);
    await editor.verdictNow(unsaved);
    expect(codes(unsaved)).toEqual(['file-not-found']);
    const hover = await editor.hover(unsaved, 'drawer "dice"');
    expect(JSON.stringify((hover as Hover).contents)).toContain('drawer');
  });

  test('a folder of 400 files: all are known, and one is answered like one alone', async () => {
    const many = Object.fromEntries(
      Array.from({ length: 400 }, (_, n) => [
        `stock-${n}.fettle`,
        `sheet "panel ${n}" actual ${n + 1}/64, 96 long, 48 wide`,
      ]),
    );
    editor = await SmallEditor.start(bundle, { ...workshop, ...many });
    await editor.open(sideboard);
    expect((await editor.verdictNow(sideboard)).errors).toBe(0);
    const found = await editor.request<WorkspaceSymbol[]>('workspace/symbol', { query: 'panel 399' });
    expect(found.map(({ name }) => name)).toContain('panel 399');
    await editor.until('a word on every file', () => new Set(editor.published.map(({ uri }) => uri)).size >= 402);
    const built = editor.published.length;
    await editor.edit(sideboard, '"blankets" rest', '"blankets" front 11 high');
    expect((await editor.verdictNow(sideboard)).errors).toBe(1);
    // Files that have nothing to do with it are left alone.
    expect(new Set(editor.published.slice(built).map(({ uri }) => uri))).toEqual(new Set([editor.uri(sideboard)]));
  });

  test('all edits in flight when the server dies are in the text it is started with again', async () => {
    await openSideboard();
    for (let eighths = 1; eighths <= 7; eighths += 2) {
      const before = eighths === 1 ? 'rest' : `front 9-${eighths - 2}/8 high`;
      void editor.edit(sideboard, `"blankets" ${before}`, `"blankets" front 9-${eighths}/8 high`);
    }
    await editor.serverDies();
    const text = editor.text(sideboard);
    expect(text).toContain('front 9-7/8 high');
    const again = await SmallEditor.start(bundle, workshop);
    try {
      await again.open(sideboard, text);
      expect((await again.verdictNow(sideboard)).errors).toBe(1);
      await again.edit(sideboard, '"blankets" front 9-7/8 high', '"blankets" rest');
      expect((await again.verdictNow(sideboard)).errors).toBe(0);
      const hints = await again.request<InlayHint[]>('textDocument/inlayHint', {
        textDocument: { uri: again.uri(sideboard) },
        range: { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } },
      });
      expect(hints.map(({ label }) => label)).toContain('= 10-5/32"');
    } finally {
      await again.stop();
    }
  });
});
