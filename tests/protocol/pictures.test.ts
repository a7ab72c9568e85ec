import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  type DivisionAnswer,
  type ExportAnswer,
  exportSheetRequest,
  moveDivisionRequest,
  type Picture,
  pieceAtRequest,
  stopPlanningNotification,
} from '@fettle/protocol';
import { afterEach, describe, expect, test } from 'vitest';
import { bundles } from './server-bundles.ts';
import { SmallEditor } from './small-editor.ts';

/** Pictures over the real protocol: only what changed is sent, lines can be moved, sheets become files. */

const shop = readFileSync(join(import.meta.dirname, '../../examples/shop.fettle'), 'utf8');
const sideboard = readFileSync(join(import.meta.dirname, '../../examples/sideboard.fettle'), 'utf8');
const name = 'two.fettle';
const second = sideboard.slice(sideboard.indexOf('piece "')).replace('"Games sideboard"', '"Second"');
const files = { 'shop.fettle': shop, [name]: `${sideboard}\n${second}`, 'one.fettle': sideboard };

describe.each(bundles)('the server as a %s', (bundle) => {
  let editor: SmallEditor;

  afterEach(async () => {
    await editor.stop();
  });

  async function open(file: string, piece = 'Games sideboard'): Promise<Picture> {
    editor = await SmallEditor.start(bundle, files);
    await editor.open(file);
    await editor.look({ name: file, piece, sheet: 'elevation' });
    return await editor.pictureNow(file);
  }

  test('draws what is looked at and nothing else, and sends a piece again only when it changed', async () => {
    const picture = await open(name, 'Second');
    const kinds = (which: Picture) => which.pieces.map(({ sheets }) => sheets.map(({ kind }) => kind));
    const drawn = (which: Picture) =>
      which.pieces.map(({ sheets }) => sheets.filter(({ kind }) => kind !== 'later').map(({ id }) => id));
    expect(drawn(picture)).toEqual([[], ['elevation'], []]);
    // Both pieces have all their sheets in the list, drawn or not.
    const listed = picture.pieces.map(({ sheets }) => sheets.map(({ id }) => id));
    expect(listed[0]).toEqual(listed[1]);
    // Sheets of one kind stand together.
    const groups = picture.pieces[0]?.sheets.map(({ group }) => group) ?? [];
    expect(groups.filter((group, at) => group !== groups[at - 1])).toEqual([
      'Drawings',
      'Tables',
      'Buying and cutting',
    ]);
    expect(listed[0]).toEqual(
      expect.arrayContaining(['elevation', 'inside', 'side', 'exploded', 'parts:1', 'cut-list', 'setups', 'shopping']),
    );
    expect(editor.frames[0]?.since).toBeUndefined();
    // The first piece changes; the second one, which is looked at, moves.
    await editor.edit(
      name,
      'piece "Games sideboard" {\n  units inches to 1/32\n  size 60',
      'piece "Games sideboard" {\n  units inches to 1/32\n    size 61',
    );
    const after = await editor.pictureNow(name);
    const frame = editor.frames.at(-1);
    expect(frame?.since).toBe(editor.frames.at(-2)?.frame);
    expect(frame?.pieces[0]?.parts).toBeDefined();
    expect(frame?.pieces[1]).toEqual({ key: 'Second', name: 'Second', span: after.pieces[1]?.span });
    expect(after.pieces[1]?.span.start).toBe(editor.text(name).indexOf('piece "Second"'));
    expect(kinds(after)).toEqual(kinds(picture));
    expect(JSON.stringify(frame).length).toBeLessThan(JSON.stringify(editor.frames[0]).length / 2);
    // Sums name the lines they were written in: a further line above tells them anew, and draws nothing again.
    const firstLineNamed = (which: Picture) =>
      Number(
        /written in line (\d+)/.exec(which.pieces[1]?.parts.map(({ derivation }) => derivation).join() ?? '')?.[1],
      );
    await editor.edit(name, '    size 61', '\n    size 61');
    const lower = await editor.pictureNow(name);
    expect(firstLineNamed(after)).toBeGreaterThan(1);
    expect(firstLineNamed(lower)).toBe(firstLineNamed(after) + 1);
    expect(editor.frames.at(-1)?.pieces[1]?.parts).toBeDefined();
    expect(editor.frames.at(-1)?.pieces[1]?.sheets).toBeUndefined();
  });

  test('a look at another sheet brings just that sheet', async () => {
    await open(name, 'Second');
    await editor.look({ name, piece: 'Second', sheet: 'cut-list' });
    const picture = await editor.until('the table', () =>
      editor.pictures.find(({ pieces }) => pieces[1]?.sheets.some(({ kind }) => kind === 'table')),
    );
    const there = picture.pieces[1]?.sheets.filter(({ kind }) => kind !== 'later').map(({ id, kind }) => [id, kind]);
    expect(there).toEqual([
      ['elevation', 'drawing'],
      ['cut-list', 'table'],
    ]);
    // What was there is named and not sent again.
    expect(editor.frames.at(-1)?.pieces[1]?.sheets?.[0]).toBe('elevation');
    expect(editor.frames.at(-1)?.pieces[0]?.sheets).toBeUndefined();
  });

  test('a piece under a new name is still the one that is looked at', async () => {
    await open(name, 'Second');
    await editor.edit(name, 'piece "Second"', 'piece "Other"');
    const picture = await editor.pictureNow(name);
    expect(picture.pieces.map(({ key, sheets }) => [key, sheets[0]?.kind])).toEqual([
      ['Games sideboard', 'later'],
      ['Other', 'drawing'],
      ['All pieces', 'later'],
    ]);
  });

  test('behind several pieces there is one more: all of them, bought and cut together', async () => {
    const picture = await open(name, 'Second');
    const all = picture.pieces[2];
    expect([all?.name, all?.together, all?.parts]).toEqual(['All pieces', true, []]);
    expect(all?.sheets.map(({ id }) => id.replace(/:.*/, ''))).toEqual(
      expect.arrayContaining(['shopping', 'cutting', 'cuts']),
    );
    expect(all?.sheets.some(({ id }) => id === 'elevation')).toBe(false);
    await editor.look({ name, piece: 'All pieces', sheet: 'shopping' });
    const looked = await editor.until('the list of both', () =>
      editor.pictures.find(({ pieces }) =>
        pieces[2]?.sheets.some(({ id, kind }) => id === 'shopping' && kind === 'table'),
      ),
    );
    const list = looked.pieces[2]?.sheets.find(({ id }) => id === 'shopping');
    const cells = list?.kind === 'table' ? list.rows.map((row) => row.cells.join(' ')) : [];
    expect(cells.some((row) => row.includes('1 Games sideboard, 2 Second'))).toBe(true);
    // Each part leads to its own words, whichever piece it is of.
    const [one, two] = looked.pieces;
    const words = (piece: typeof one, id: string) => {
      const part = piece?.parts.find((each) => each.id === id);
      return part === undefined ? undefined : (piece?.span.start ?? 0) + part.span.start;
    };
    expect(words(looked.pieces[2], '1/case/top')).toBe(words(one, 'case/top'));
    expect(words(looked.pieces[2], '2/case/top')).toBe(words(two, 'case/top'));
    expect(words(two, 'case/top')).toBeGreaterThan(0);
    // What changes no piece leaves the list as it is: it is not sent, nor searched for, again.
    await editor.notify(stopPlanningNotification, { uri: editor.uri(name), piece: 'All pieces' });
    await editor.until('the end of the search', () => editor.pictures.at(-1)?.pieces[2]?.planning === undefined);
    await editor.edit(name, 'piece "Second"', '\npiece "Second"');
    const moved = await editor.pictureNow(name);
    expect(moved.pieces[2]?.sheets.find(({ id }) => id === 'shopping')?.kind).toBe('table');
    expect(editor.frames.at(-1)?.pieces[2]?.sheets).toBeUndefined();
    expect(words(moved.pieces[2], '2/case/top')).toBe(words(moved.pieces[1], 'case/top'));
  });

  function lines(picture: Picture) {
    const [sheet] = picture.pieces[0]?.sheets ?? [];
    if (sheet?.kind !== 'drawing') throw new Error('the first sheet is a drawing');
    return sheet.divisions;
  }

  function move(picture: Picture, division: string, steps: number): Promise<DivisionAnswer> {
    const { uri, version } = picture;
    return editor.request(moveDivisionRequest, { uri, version, piece: 'Games sideboard', division, steps });
  }

  /** Moves a line as the extension would, and answers where it lies then. */
  async function moved(picture: Picture, label: string, steps: number): Promise<readonly [number, number, string]> {
    const before = lines(picture).find((line) => line.label === label);
    if (before === undefined)
      throw new Error(
        `no ${label} among ${lines(picture)
          .map((line) => line.label)
          .join('; ')}`,
      );
    const answer = await move(picture, before.id, steps);
    if (answer.kind !== 'edits') throw new Error(`${label}: ${JSON.stringify(answer)}`);
    await editor.replace('one.fettle', answer.edits);
    const after = lines(await editor.pictureNow('one.fettle')).find(({ id }) => id === before.id);
    return [Math.round(((after?.at ?? 0) - before.at) / before.step), steps, answer.sentence];
  }

  test('a line between two written drawers takes both with it, and nothing else', async () => {
    const picture = await open('one.fettle');
    const label = 'line between "cards" and "dice"';
    // 5 + 6 stay 11: eight marks of 1/32 are 1/4.
    expect(await moved(picture, label, 8)).toEqual([8, 8, '"cards" 5-1/4", "dice" 5-3/4"']);
    expect(editor.text('one.fettle')).toContain('drawer "cards"    front 5-1/4 high');
    expect(editor.text('one.fettle')).toContain('drawer "dice"     front 5-3/4 high');
    const verdict = await editor.verdictNow('one.fettle');
    expect([verdict.errors, verdict.warnings]).toEqual([0, 0]);
    // The line below is where it was.
    const below = (which: Picture) =>
      lines(which).find(({ label: each }) => each === 'line between "dice" and "maps"')?.at;
    expect(below(await editor.pictureNow('one.fettle'))).toBeCloseTo(below(picture) ?? 0, 6);
  });

  test('a line beside a front that takes the rest changes the other one, and the rest stays the rest', async () => {
    const picture = await open('one.fettle');
    const [went, wanted] = await moved(picture, 'line between "maps" and "blankets"', -16);
    expect(went).toBe(wanted);
    expect(editor.text('one.fettle')).toContain('drawer "maps"     front 6-1/2 high');
    expect(editor.text('one.fettle')).toContain('drawer "blankets" rest');
  });

  test('a line whose far side follows it goes as far as it was taken', async () => {
    const picture = await open('one.fettle');
    const label = lines(picture).find(({ moves }) => moves === 'x')?.label ?? '';
    // The doors share what the drawers leave, half each: the opening of the drawers gives up twice as much.
    const [went, wanted] = await moved(picture, label, 16);
    expect(went).toBe(wanted);
    expect(editor.text('one.fettle')).toContain('stack opening 17 wide');
  });

  test('a line that nothing in the text holds, or that leaves no room, is refused in a sentence', async () => {
    const picture = await open('one.fettle');
    const maps = lines(picture).find(({ label }) => label === 'line between "maps" and "blankets"')?.id ?? '';
    const refused = await move(picture, maps, 100_000);
    expect(refused.kind === 'refused' && refused.sentence).toMatch(/no room left/);
    await editor.edit('one.fettle', '"maps"     front 7 high', '"maps"     rest');
    const answer = await move(await editor.pictureNow('one.fettle'), maps, 4);
    expect(answer.kind === 'refused' && answer.sentence).toBe(
      'Neither "maps" nor "blankets" has a size of its own: give one of them a size in the text first',
    );
    expect(await move(picture, maps, 4)).toEqual({ kind: 'stale' });
    const nowhere = await move({ ...picture, version: editor.version('one.fettle') }, 'no such line', 4);
    expect(nowhere.kind).toBe('refused');
  });

  test('sheets become files; what has no such form is refused in a sentence', async () => {
    const { uri } = await open('one.fettle');
    const ask = (sheet: string, format: string, piece = 'Games sideboard') =>
      editor.request<ExportAnswer>(exportSheetRequest, { uri, piece, sheet, format });
    const svg = await ask('', 'svg');
    expect(svg.kind === 'file' && [svg.name, svg.text.slice(0, 4)]).toEqual(['Games sideboard elevation', '<svg']);
    expect(svg.kind === 'file' && svg.text).toMatch(/width="[\d.]+mm"/);
    const csv = await ask('', 'csv');
    expect(csv.kind === 'file' && csv.text.split('\r\n')[0]).toBe(
      'Mark,Part,Quantity,Thickness,Width,Length,Material,Grain,Cut first to,Edges,Notes',
    );
    expect(await ask('elevation', 'csv')).toEqual({ kind: 'refused', sentence: 'This sheet has no form as CSV' });
    expect((await ask('', 'svg', 'Nobody')).kind).toBe('refused');
    await editor.edit('one.fettle', 'piece "Games sideboard"', 'piece "../a/b:c\\u202e*?"');
    const hostile = await ask('', 'svg', '');
    expect(hostile.kind === 'file' && hostile.name).toMatch(/^[^/\\:*?\u202e]+ elevation$/);
  });

  test('tells which piece stands where', async () => {
    const { uri } = await open(name);
    const at = (words: string) =>
      editor.request<string | null>(pieceAtRequest, { uri, offset: editor.text(name).indexOf(words) });
    expect(await at('use "shop')).toBe('Games sideboard');
    expect(await at('piece "Second"')).toBe('Second');
    expect(await editor.request(pieceAtRequest, { uri: `${uri}x`, offset: 0 })).toBeNull();
  });

  test('messages that make no sense end nothing', async () => {
    const { uri, version } = await open('one.fettle');
    for (const params of [{}, { uri: 5 }, { uri, version, piece: null, division: {}, steps: 'x' }]) {
      await editor.request(moveDivisionRequest, params).catch(() => undefined);
      await editor.request(exportSheetRequest, params).catch(() => undefined);
      await editor.request(pieceAtRequest, params).catch(() => undefined);
    }
    await editor.tell('fettle/watchPictures', { pictures: 'all' });
    await editor.tell('fettle/watchPictures', {});
    await editor.look({ name: 'one.fettle', piece: 'Games sideboard', sheet: 'elevation' });
    await editor.edit('one.fettle', 'size 60', 'size 61');
    expect((await editor.pictureNow('one.fettle')).pieces[0]?.sheets[0]?.kind).toBe('drawing');
  });
});
