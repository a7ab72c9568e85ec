import type { KeepOffcutsAnswer } from '@fettle/protocol';
import { beforeEach, describe, expect, test, vi } from 'vitest';

/** The command that writes what is left over into the shop files: into all of them, or into none. */

interface Replaced {
  readonly uri: FakeUri;
  readonly range: { readonly start: number; readonly end: number };
  readonly text: string;
}

class FakeUri {
  readonly path: string;
  constructor(path: string) {
    this.path = path;
  }
  static parse(path: string) {
    return new FakeUri(path);
  }
  toString() {
    return this.path;
  }
}

/** As much of the editor as the command touches: texts, one edit of several of them at a time, and what is told. */
const editor = vi.hoisted(() => ({
  texts: new Map<string, string>(),
  told: [] as string[],
  edits: 0,
  isReadOnly: false,
  isCancelled: false,
}));

vi.mock('vscode', () => ({
  Uri: FakeUri,
  ProgressLocation: { Notification: 15 },
  Range: class {
    readonly start: number;
    readonly end: number;
    constructor(start: number, end: number) {
      this.start = start;
      this.end = end;
    }
  },
  WorkspaceEdit: class {
    readonly replaced: Replaced[] = [];
    replace(uri: FakeUri, range: Replaced['range'], text: string) {
      this.replaced.push({ uri, range, text });
    }
  },
  window: {
    activeTextEditor: {
      document: { uri: new FakeUri('box'), languageId: 'fettle', offsetAt: (at: number) => at },
      selection: { active: 0 },
    },
    visibleTextEditors: [],
    showInformationMessage: (words: string) => editor.told.push(words),
    showErrorMessage: (words: string) => editor.told.push(words),
    withProgress: (_: unknown, task: (progress: unknown, token: { isCancellationRequested: boolean }) => unknown) =>
      task(undefined, { isCancellationRequested: editor.isCancelled }),
  },
  workspace: {
    openTextDocument: async (uri: FakeUri) => {
      const text = editor.texts.get(uri.path);
      if (text === undefined) throw new Error(`${uri} is not there`);
      return { uri, getText: () => text, positionAt: (offset: number) => offset };
    },
    applyEdit: async ({ replaced }: { replaced: readonly Replaced[] }) => {
      editor.edits += 1;
      if (editor.isReadOnly) return false;
      for (const { uri, range, text } of [...replaced].sort((a, b) => b.range.start - a.range.start)) {
        const before = editor.texts.get(uri.path) ?? '';
        editor.texts.set(uri.path, before.slice(0, range.start) + text + before.slice(range.end));
      }
      return true;
    },
  },
}));

const { keepOffcuts } = await import('../../packages/extension/src/commands/keep-offcuts.ts');

const sheets = 'sheet "ply" actual 3/4\nmachine "saw" kerf 1/8\n';
const boards = 'board "ash" any thickness\nboard "maple" any thickness\n';

const answer: KeepOffcutsAnswer = {
  kind: 'edits',
  sentence: '2 offcuts written to the shop',
  files: [
    {
      uri: 'sheets',
      text: sheets,
      edits: [{ span: { start: 0, end: 22 }, text: 'sheet "ply" actual 3/4 {\n  offcut 20 long, 10 wide\n}' }],
    },
    {
      uri: 'boards',
      text: boards,
      edits: [
        { span: { start: 0, end: 25 }, text: 'board "ash" any thickness {\n  offcut 40 long, 3 wide\n}' },
        { span: { start: 26, end: 53 }, text: 'board "maple" any thickness {\n  offcut 30 long, 4 wide\n}' },
      ],
    },
  ],
};

async function keep(from: KeepOffcutsAnswer | Error): Promise<string | undefined> {
  const panels = { current: () => undefined };
  const host = {
    askOffcuts: async () => {
      if (from instanceof Error) throw from;
      return from;
    },
    pieceAt: async () => 'box',
    log: { error: () => undefined },
  };
  await keepOffcuts(panels as never, host as never);
  return editor.told.at(-1);
}

beforeEach(() => {
  editor.texts = new Map([
    ['sheets', sheets],
    ['boards', boards],
  ]);
  editor.told = [];
  editor.edits = 0;
  editor.isReadOnly = false;
  editor.isCancelled = false;
});

const unchanged = () => [...editor.texts.values()].join() === [sheets, boards].join();

describe('what is left over', () => {
  test('is written into every shop file in one step, and what else stands there stays', async () => {
    expect(await keep(answer)).toBe('Fettle: 2 offcuts written to the shop');
    expect(editor.edits).toBe(1);
    expect(editor.texts.get('sheets')).toBe(
      'sheet "ply" actual 3/4 {\n  offcut 20 long, 10 wide\n}\nmachine "saw" kerf 1/8\n',
    );
    expect(editor.texts.get('boards')).toBe(
      'board "ash" any thickness {\n  offcut 40 long, 3 wide\n}\nboard "maple" any thickness {\n  offcut 30 long, 4 wide\n}\n',
    );
  });

  test('is written nowhere where the last of the files has moved on', async () => {
    // A line more, and as many characters as before but other ones.
    for (const text of [`${boards}board "oak" any thickness\n`, boards.replace('maple', 'beech')]) {
      editor.texts.set('boards', text);
      expect(await keep(answer)).toContain('has changed meanwhile');
      expect(editor.edits).toBe(0);
      expect(editor.texts.get('sheets')).toBe(sheets);
    }
  });

  test('is written nowhere where one of them is gone, or may not be changed', async () => {
    editor.texts.delete('boards');
    expect(await keep(answer)).toContain('wrote nothing');
    expect([editor.edits, editor.texts.get('sheets')]).toEqual([0, sheets]);
    editor.texts.set('boards', boards);
    editor.isReadOnly = true;
    expect(await keep(answer)).toContain('cannot be changed');
    expect(unchanged()).toBe(true);
  });

  test('is not written when one has cancelled, or when there is nothing to keep', async () => {
    editor.isCancelled = true;
    expect(await keep(answer)).toContain('Nothing was written');
    editor.isCancelled = false;
    expect(await keep({ kind: 'refused', sentence: 'Nothing is large enough' })).toContain('Nothing is large enough');
    expect(await keep(new Error('the search failed'))).toContain('the search failed');
    expect([editor.edits, unchanged()]).toEqual([0, true]);
  });
});
