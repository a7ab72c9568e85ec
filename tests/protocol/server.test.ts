import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { type DocumentSymbol, FileChangeType } from 'vscode-languageserver/node';
import { bundles } from './server-bundles.ts';
import { SmallEditor } from './small-editor.ts';

/** The main job over the real protocol, with the bundles as they are shipped. */

function example(name: string): string {
  return readFileSync(join(import.meta.dirname, '../../examples', name), 'utf8');
}

const sideboard = 'sideboard.fettle';
const workshop = { [sideboard]: example(sideboard), 'shop.fettle': example('shop.fettle') };
const rest = '"blankets" rest';
const tooHigh = 'front 11 high';
/** Error and Warning; what is only not checked yet is a hint. */
const grave = 2;

describe.each(bundles)('the server as a %s', (bundle) => {
  let editor: SmallEditor;

  afterEach(async () => {
    await editor.stop();
  });

  async function openSideboard(): Promise<void> {
    editor = await SmallEditor.start(bundle, workshop);
    await editor.open(sideboard);
    await editor.watch(sideboard);
    await editor.pictureNow(sideboard);
  }

  /** What is wrong with a text, once that is known for the text as it is now. */
  async function complaints(name: string) {
    await editor.verdictNow(name);
    return (editor.diagnostics(name) ?? []).filter((each) => (each.severity ?? 1) <= grave);
  }

  test('finds nothing wrong with the sideboard and draws it', async () => {
    await openSideboard();
    expect(await complaints(sideboard)).toEqual([]);
    const picture = await editor.pictureNow(sideboard);
    expect(picture.readable).toBe(true);
    expect(picture.verdict).toMatch(/^fits/);
    const [piece] = picture.pieces;
    expect(piece?.name).toBe('Games sideboard');
    // The first sheet is looked at; the others are there, and drawn when somebody does.
    const [first, ...others] = piece?.sheets ?? [];
    expect([first?.id, first?.kind]).toEqual(['elevation', 'drawing']);
    expect(new Set(others.map(({ kind }) => kind))).toEqual(new Set(['later']));
    const tables = others.flatMap((sheet) => (sheet.kind === 'later' && sheet.shows === 'table' ? [sheet.title] : []));
    expect(tables).toEqual(['Cut list', 'Set-ups', 'Drawers', 'Doors', 'Hardware', 'Shopping', 'Cut order']);
    const start = piece?.span.start ?? 0;
    const text = editor.text(sideboard).slice(start);
    const words = (id: string) => {
      const part = piece?.parts.find((each) => each.label.startsWith(id));
      return part === undefined ? undefined : text.slice(part.span.start, part.span.end);
    };
    expect(words('drawer front "maps"')).toBe('drawer "maps"     front 7 high');
    for (const part of piece?.parts ?? []) {
      expect(part.span.start, part.label).toBeLessThan(part.span.end);
      expect(part.derivation, part.label).toMatch(/^Length .*\d/);
    }
  });

  test('every part in the drawing, the lists and the plans is one the picture knows', async () => {
    await openSideboard();
    for (const id of ['elevation', 'cut-list', 'shopping', 'cutting:ash panel', 'cuts']) {
      await editor.look({ name: sideboard, piece: 'Games sideboard', sheet: id });
      const [piece, sheet] = await editor.until(id, () => {
        const [seen] = editor.pictures.at(-1)?.pieces ?? [];
        const found = seen?.sheets.find((each) => each.id === id && each.kind !== 'later');
        return seen === undefined || found === undefined ? undefined : ([seen, found] as const);
      });
      if (sheet.kind === 'later') throw new Error(`${sheet.id} was not drawn`);
      const known = new Set(piece.parts.map((part) => part.id));
      const shown =
        sheet.kind === 'table'
          ? sheet.rows.flatMap(({ parts }) => parts)
          : [...sheet.svg.matchAll(/data-part="([^"]+)"/g)].map(([, part]) => part ?? '');
      expect(shown.length, id).toBeGreaterThan(5);
      expect(
        shown.filter((part) => !known.has(part)),
        id,
      ).toEqual([]);
    }
  });

  test('a front that is too high is underlined, and a fix takes the line away', async () => {
    await openSideboard();
    await editor.edit(sideboard, rest, `"blankets" ${tooHigh}`);
    const [clash, ...others] = await complaints(sideboard);
    if (clash === undefined) throw new Error('nothing was underlined');
    expect(others).toEqual([]);
    expect(editor.wordsUnder(sideboard, clash)).toBe(tooHigh);
    expect(clash.code).toBe('fronts-do-not-add-up');
    // 5 + 6 + 7 + 11 and five gaps of 3/32 make 29-15/32; the opening is 28-5/8.
    expect(String(clash.message)).toContain('27/32" too much');
    const spoilt = await editor.pictureNow(sideboard);
    expect(spoilt.verdict).toBe('1 finding: 27/32" too much');
    const marked = spoilt.findings.find((finding) => finding.code === clash.code)?.parts ?? [];
    expect(marked.length).toBeGreaterThan(0);

    const actions = await editor.codeActions(sideboard, clash);
    const edits = actions.find((action) => action.title.includes('"blankets"'))?.edit?.changes?.[editor.uri(sideboard)];
    if (edits === undefined)
      throw new Error(`no fix for "blankets" among ${actions.map(({ title }) => title).join(', ')}`);
    await editor.apply(sideboard, edits);
    expect(await complaints(sideboard)).toEqual([]);
  });

  test('tells under the pointer how a size came about', async () => {
    await openSideboard();
    const hover = await editor.hover(sideboard, 'drawer "blankets"');
    // The front that takes the rest: 28-5/8 less 5, 6, 7 and five gaps of 3/32.
    expect(JSON.stringify(hover?.contents)).toMatch(/10\\\\-5\/32/);
  });

  test('draws nothing for a text nobody watches, but has a verdict on it', async () => {
    editor = await SmallEditor.start(bundle, workshop);
    await editor.open(sideboard);
    await editor.edit(sideboard, rest, `"blankets" ${tooHigh}`);
    expect((await editor.verdictNow(sideboard)).errors).toBe(1);
    expect(editor.pictures).toEqual([]);
    await editor.watch(sideboard);
    const { version } = await editor.pictureNow(sideboard);
    await editor.watch();
    await editor.edit(sideboard, tooHigh, 'rest');
    expect((await editor.verdictNow(sideboard)).errors).toBe(0);
    // The same text may be drawn again when better plans are found; a later one is not drawn.
    expect(editor.pictures.map((each) => each.version)).toEqual(editor.pictures.map(() => version));
  });

  test('says when a text cannot be read, and draws again once it can', async () => {
    await openSideboard();
    const opening = 'face inset, gap 3/32 {';
    const spoilt = 'face inset, gap 3/32';
    await editor.edit(sideboard, opening, spoilt);
    const broken = await editor.pictureNow(sideboard);
    expect(broken.readable).toBe(false);
    expect(await complaints(sideboard)).toHaveLength(1);
    await editor.edit(sideboard, spoilt, opening);
    const mended = await editor.pictureNow(sideboard);
    expect(mended.readable).toBe(true);
    expect(mended.pieces[0]?.parts.length).toBeGreaterThan(10);
    expect(await complaints(sideboard)).toEqual([]);
  });

  test('of many edits in one breath the last one holds', async () => {
    await openSideboard();
    let before = rest;
    for (let sixteenths = 1; sixteenths <= 30; sixteenths++) {
      const after = `"blankets" front 11-${sixteenths}/32 high`;
      void editor.edit(sideboard, before, after);
      before = after;
    }
    void editor.edit(sideboard, before, rest);
    expect(await complaints(sideboard)).toEqual([]);
    const picture = await editor.pictureNow(sideboard);
    expect(picture.verdict).toMatch(/^fits/);
    const versions = editor.pictures.map(({ version }) => version);
    expect(versions).toEqual([...versions].sort((a, b) => a - b));
    expect(versions.at(-1)).toBe(32);
  });

  test('a question that follows an edit at once is answered from the new text', async () => {
    await openSideboard();
    void editor.edit(sideboard, '// A sideboard', '// Moved down a line\n// A sideboard');
    void editor.edit(sideboard, 'drawer "dice"', 'drawer "cubes"');
    const symbols = await editor.request<readonly DocumentSymbol[]>('textDocument/documentSymbol', {
      textDocument: { uri: editor.uri(sideboard) },
    });
    const all = (list: readonly DocumentSymbol[]): readonly DocumentSymbol[] =>
      list.flatMap((symbol) => [symbol, ...all(symbol.children ?? [])]);
    const cubes = all(symbols).find((symbol) => symbol.name.includes('cubes'));
    if (cubes === undefined)
      throw new Error(
        `no "cubes" among ${all(symbols)
          .map(({ name }) => name)
          .join(', ')}`,
      );
    const lines = editor.text(sideboard).split('\n');
    expect(lines[cubes.selectionRange.start.line]).toContain('drawer "cubes"');
  });

  test('a shop file that changes on disk changes what uses it', async () => {
    await openSideboard();
    const before = editor.pictures.length;
    const shop = example('shop.fettle').replace(
      '"side mount 14" side mount, 14 long',
      '"side mount 14" side mount, 24 long',
    );
    writeFileSync(join(editor.folder, 'shop.fettle'), shop);
    await editor.tellOfFile('shop.fettle', FileChangeType.Changed);
    const picture = await editor.until('a new picture', () => editor.pictures[before]);
    // The case is 17 deep: slides of 24 cannot be housed.
    expect(picture.findings.map(({ code }) => code)).toContain('slide-too-long');
    expect(picture.version).toBe(1);
  });

  test('an open shop file holds against the one on disk', async () => {
    await openSideboard();
    await editor.open('shop.fettle');
    await editor.verdictNow('shop.fettle');
    writeFileSync(join(editor.folder, 'shop.fettle'), '');
    await editor.tellOfFile('shop.fettle', FileChangeType.Changed);
    await editor.edit(sideboard, rest, `${rest} `);
    expect(await complaints(sideboard)).toEqual([]);
  });

  test('files of others disturb no build', async () => {
    editor = await SmallEditor.start(bundle, { ...workshop, 'notes.txt': 'glue' });
    // A text with a name that leads nowhere is built again with every update, so it shows whether there was one.
    await editor.open(sideboard);
    await editor.edit(sideboard, 'top "ash"', 'top "asch"');
    await editor.verdictNow(sideboard);
    const told = editor.verdicts.length;
    await editor.tellOfFile('notes.txt', FileChangeType.Changed);
    await editor.tellOfFile('notes.txt', FileChangeType.Created);
    await editor.tellOfFile('notes.txt', FileChangeType.Deleted);
    await editor.hover(sideboard, 'drawer "dice"');
    expect(editor.verdicts).toHaveLength(told);
    await editor.tellOfFile('shop.fettle', FileChangeType.Changed);
    await editor.until('another verdict', () => editor.verdicts.length > told);
  });

  test('a folder that appears brings its texts with it', async () => {
    editor = await SmallEditor.start(bundle, {
      [sideboard]: workshop[sideboard].replace('shop.fettle', 'stock/ours.fettle'),
    });
    await editor.open(sideboard);
    expect((await complaints(sideboard)).map(({ code }) => code)).toContain('file-not-found');
    mkdirSync(join(editor.folder, 'stock'));
    writeFileSync(join(editor.folder, 'stock', 'ours.fettle'), example('shop.fettle'));
    await editor.tellOfFile('stock', FileChangeType.Created);
    await editor.until('a text without complaint', () =>
      editor.diagnostics(sideboard)?.every((each) => (each.severity ?? 1) > grave),
    );
  });

  test('a shop file outside every open folder is read as soon as it is named', async () => {
    editor = await SmallEditor.start(bundle, {
      [sideboard]: workshop[sideboard].replace('shop.fettle', 'ours.fettle'),
    });
    await editor.open(sideboard);
    expect((await complaints(sideboard)).map(({ code }) => code)).toContain('file-not-found');
    const elsewhere = await SmallEditor.start(bundle, workshop);
    try {
      await editor.edit(sideboard, 'ours.fettle', join('..', basename(elsewhere.folder), 'shop.fettle'));
      expect(await complaints(sideboard)).toEqual([]);
    } finally {
      await elsewhere.stop();
    }
  });

  test('what was closed without saving is forgotten', async () => {
    await openSideboard();
    await editor.edit(sideboard, rest, `"blankets" ${tooHigh}`);
    expect(await complaints(sideboard)).toHaveLength(1);
    await editor.close(sideboard);
    await editor.until('a text without complaint', () =>
      editor.diagnostics(sideboard)?.every((each) => (each.severity ?? 1) > grave),
    );
  });

  test('a text that was never saved is checked, drawn, and gone when it is closed', async () => {
    editor = await SmallEditor.start(bundle, workshop);
    const unsaved = 'untitled:Untitled-1';
    await editor.open(unsaved, 'piece "Box" { siez 30 wide, 30 high, 12 deep }');
    await editor.watch(unsaved);
    expect((await complaints(unsaved)).map(({ code }) => code)).toEqual(['unknown-word']);
    await editor.pictureNow(unsaved);
    await editor.close(unsaved);
    await editor.until('an empty list', () => editor.diagnostics(unsaved)?.length === 0);
    await editor.open(sideboard);
    expect(await complaints(sideboard)).toEqual([]);
  });

  test('a name full of markup stays a name', async () => {
    await openSideboard();
    await editor.edit(sideboard, 'piece "Games sideboard"', 'piece "</svg><script>alert(1)</script>"');
    const picture = await editor.pictureNow(sideboard);
    expect(picture.pieces).toHaveLength(1);
    for (const sheet of picture.pieces[0]?.sheets ?? []) {
      if (sheet.kind === 'drawing') expect(sheet.svg).not.toContain('<script');
    }
  });

  test('a file that cannot be read leaves the others in peace', async () => {
    editor = await SmallEditor.start(bundle, { ...workshop, 'huge.fettle': '' }, ['huge.fettle']);
    await editor.open(sideboard);
    expect(await complaints(sideboard)).toEqual([]);
  });
});
