import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Picture } from '@fettle/protocol';
import { afterEach, describe, expect, test } from 'vitest';
import { bundles } from './server-bundles.ts';
import { SmallEditor } from './small-editor.ts';

/** Several folders at once, folders that come and go, and the size up to which a text is checked at every key. */

const example = (name: string) => readFileSync(join(import.meta.dirname, '../../examples', name), 'utf8');
const sideboard = 'sideboard.fettle';

describe.each(bundles)('the server as a %s', (bundle) => {
  let editor: SmallEditor;
  const folders: string[] = [];
  afterEach(async () => {
    await editor.stop();
    for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
  });

  function folderWith(files: Readonly<Record<string, string>>): string {
    const folder = mkdtempSync(join(tmpdir(), 'fettle-second-'));
    folders.push(folder);
    for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
    return folder;
  }
  const change = (added: readonly string[], removed: readonly string[]) => {
    const named = (folder: string) => ({ name: folder, uri: pathToFileURL(folder).href });
    return editor.notify('workspace/didChangeWorkspaceFolders', {
      event: { added: added.map(named), removed: removed.map(named) },
    });
  };

  test('each folder has its own shop file; names of one mean nothing in the other', async () => {
    editor = await SmallEditor.start(bundle, {
      [sideboard]: example(sideboard),
      'shop.fettle': example('shop.fettle'),
    });
    const second = folderWith({
      [sideboard]: example(sideboard),
      'shop.fettle': example('shop.fettle').replace('slide "side mount 14"', 'slide "side mount 15"'),
    });
    await change([second], []);
    await editor.open(sideboard);
    expect((await editor.verdictNow(sideboard)).errors).toBe(0);
    const other = pathToFileURL(join(second, sideboard)).href;
    await editor.open(other, example(sideboard));
    await editor.until('the shop of the second folder', () =>
      editor.verdicts.findLast((each) => each.uri === other && each.verdict.includes('side mount 14')),
    );
    expect((await editor.verdictNow(sideboard)).errors).toBe(0);
  });

  test('a folder that leaves disturbs no text that is still open: what it uses is read all the same', async () => {
    const second = folderWith({ 'shop.fettle': example('shop.fettle') });
    editor = await SmallEditor.start(bundle, {});
    await change([second], []);
    const uri = pathToFileURL(join(second, sideboard)).href;
    await editor.open(uri, example(sideboard));
    await editor.until('a verdict that fits', () =>
      editor.verdicts.findLast((each) => each.uri === uri && each.errors === 0),
    );
    await change([], [second]);
    await editor.edit(uri, '"blankets" rest', '"blankets" front 11 high');
    expect((await editor.verdictNow(uri)).verdict).toBe('1 finding: 27/32" too much');
    await editor.edit(uri, '"blankets" front 11 high', '"blankets" rest');
    expect((await editor.verdictNow(uri)).errors).toBe(0);
  });

  test('a text over the limit is opened at once, and checked when typing pauses', async () => {
    const files = { [sideboard]: example(sideboard), 'shop.fettle': example('shop.fettle') };
    editor = await SmallEditor.start(bundle, files, [], { fettle: { check: { largestText: 100 } } });
    await editor.open(sideboard);
    expect((await editor.verdictNow(sideboard)).errors).toBe(0);
    const before = editor.verdicts.length;
    await editor.edit(sideboard, '"blankets" rest', '"blankets" front 11');
    // The keys wait for nothing: each comes within the pause, however slow the machine is.
    for (const digit of ['1', '12', '123']) {
      await editor.edit(sideboard, `front 11${digit.slice(0, -1)}`, `front 11${digit}`);
    }
    expect((await editor.verdictNow(sideboard)).errors).toBe(1);
    // One build for all of them.
    expect(editor.verdicts.slice(before).filter(({ uri }) => uri === editor.uri(sideboard))).toHaveLength(1);
  });

  test('a text is told of again after an edit of another file only when its findings changed', async () => {
    const files = { [sideboard]: example(sideboard), 'shop.fettle': example('shop.fettle') };
    editor = await SmallEditor.start(bundle, files);
    await editor.open(sideboard);
    await editor.verdictNow(sideboard);
    await editor.open('shop.fettle');
    await editor.verdictNow('shop.fettle');
    const told = () => editor.published.filter(({ uri }) => uri === editor.uri(sideboard)).length;
    const judged = () => editor.verdicts.filter(({ uri }) => uri === editor.uri(sideboard)).length;
    const [before, verdicts] = [told(), judged()];
    // No piece of the sideboard is of another size for it.
    await editor.edit('shop.fettle', 'board "poplar"', '// Fine for what nobody sees.\nboard "poplar"');
    await editor.until('another verdict on the sideboard', () => judged() > verdicts);
    expect(told()).toBe(before);
    await editor.edit('shop.fettle', 'board "poplar"', 'board "tulip wood"');
    await editor.until('another word on the sideboard', () => told() > before);
    expect(editor.diagnostics(sideboard)?.map(({ code }) => code)).toContain('unknown-name');
    // The text that is edited hears of its own each time.
    const own = told();
    await editor.edit(sideboard, '// A sideboard', '// The sideboard');
    await editor.verdictNow(sideboard);
    expect(told()).toBeGreaterThan(own);
  });

  test('lengths are shown as the maker wants to see them; findings and drawings stay as the piece is written', async () => {
    const files = { [sideboard]: example(sideboard), 'shop.fettle': example('shop.fettle') };
    editor = await SmallEditor.start(bundle, files, [], { fettle: { show: { lengths: 'mm' } } });
    await editor.open(sideboard);
    await editor.watch(sideboard);
    const partOf = ({ pieces }: Picture) => pieces[0]?.parts[0] ?? { sizes: [], derivation: '' };
    const inMillimetres = await editor.until('a picture that tells millimetres', () =>
      editor.pictures.find((each) => partOf(each).sizes.some((size) => size.includes('mm'))),
    );
    // As one reads it: without what guards signs from being taken for Markdown.
    const hover = async () =>
      JSON.stringify((await editor.hover(sideboard, '"blankets" rest'))?.contents).replaceAll('\\\\', '');
    // 10-5/32" is 257.96875 mm.
    expect(await hover()).toContain('about 257.969 mm');
    expect(await hover()).not.toContain('10-5/32');
    await editor.edit(sideboard, '"blankets" rest', '"blankets" front 11 high');
    expect((await editor.verdictNow(sideboard)).verdict).toBe('1 finding: 27/32" too much');
    await editor.edit(sideboard, '"blankets" front 11 high', '"blankets" rest');
    await editor.verdictNow(sideboard);
    const [refreshed, before] = [editor.refreshed.length, editor.pictures.length];
    await editor.notify('workspace/didChangeConfiguration', {
      settings: { fettle: { show: { lengths: 'asWritten' } } },
    });
    const inInches = await editor.until('another picture', () =>
      editor.pictures.slice(before).find((each) => partOf(each).sizes.some((size) => size.includes('"'))),
    );
    expect(await hover()).toContain('10-5/32');
    expect(editor.refreshed.slice(refreshed)).toContain('workspace/inlayHint/refresh');
    expect(partOf(inMillimetres).sizes.join()).toMatch(/mm/);
    expect(partOf(inMillimetres).derivation).not.toContain('"');
    const drawn = ({ pieces }: Picture) =>
      pieces[0]?.sheets.flatMap((sheet) => (sheet.kind === 'drawing' ? [sheet.svg, sheet.description] : []));
    expect(drawn(inInches)).toHaveLength(2);
    expect(drawn(inMillimetres)).toEqual(drawn(inInches));
  });

  test('a text over no limit is checked at every key', async () => {
    const files = { [sideboard]: example(sideboard), 'shop.fettle': example('shop.fettle') };
    editor = await SmallEditor.start(bundle, files, [], { fettle: { check: { largestText: 1_000_000 } } });
    await editor.open(sideboard);
    await editor.verdictNow(sideboard);
    const before = editor.verdicts.length;
    for (const height of ['11', '12']) {
      const old = height === '11' ? '"blankets" rest' : '"blankets" front 11 high';
      await editor.edit(sideboard, old, `"blankets" front ${height} high`);
      await editor.verdictNow(sideboard);
    }
    expect(editor.verdicts.slice(before).filter(({ uri }) => uri === editor.uri(sideboard))).toHaveLength(2);
  });
});
