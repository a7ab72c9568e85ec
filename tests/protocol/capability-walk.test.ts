import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import type {
  CodeAction,
  CodeLens,
  CompletionItem,
  CompletionList,
  DocumentHighlight,
  DocumentLink,
  DocumentSymbol,
  FoldingRange,
  Hover,
  InlayHint,
  LinkedEditingRanges,
  Location,
  LocationLink,
  Position,
  Range,
  SelectionRange,
  SemanticTokens,
  ServerCapabilities,
  SignatureHelp,
  TextEdit,
  WorkspaceEdit,
  WorkspaceSymbol,
} from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { bundles } from './server-bundles.ts';
import { SmallEditor } from './small-editor.ts';

/**
 * Whatever the server announces is asked of it, on the sideboard, and the answer is held against what is true of that
 * text. A capability that is announced and has no case here fails.
 */

const sideboard = 'sideboard.fettle';
const example = (name: string) => readFileSync(join(import.meta.dirname, '../../examples', name), 'utf8');
const workshop = { [sideboard]: example(sideboard), 'shop.fettle': example('shop.fettle') };

class Walker {
  readonly editor: SmallEditor;
  constructor(editor: SmallEditor) {
    this.editor = editor;
  }

  get #document(): TextDocument {
    return TextDocument.create('', '', 0, this.editor.text(sideboard));
  }
  /** The middle of `words`, in the one place where `around` stands. */
  at(words: string, around = words): Position {
    const text = this.editor.text(sideboard);
    const start = text.indexOf(around);
    if (start < 0 || text.indexOf(around, start + 1) >= 0) throw new Error(`${around} must stand once`);
    return this.#document.positionAt(start + around.indexOf(words) + Math.floor(words.length / 2));
  }
  words(range: Range): string {
    return this.#document.getText(range);
  }
  offset(offset: number): Position {
    return this.#document.positionAt(offset);
  }
  get announced(): ServerCapabilities {
    return this.editor.initialized?.capabilities ?? {};
  }
  get whole(): Range {
    return { start: { line: 0, character: 0 }, end: this.#document.positionAt(this.editor.text(sideboard).length) };
  }
  ask<T>(method: string, params: object = {}): Promise<T> {
    const textDocument = { uri: this.editor.uri(sideboard) };
    return this.editor.request<T>(`textDocument/${method}`, { textDocument, ...params });
  }
  after(edits: readonly TextEdit[]): string {
    return TextDocument.applyEdits(this.#document, [...edits]);
  }
  changes(edit: WorkspaceEdit | null | undefined): readonly TextEdit[] {
    return edit?.changes?.[this.editor.uri(sideboard)] ?? [];
  }
}

type Case = (walker: Walker) => Promise<void>;

/** By the name under which a server announces it. */
const cases: Readonly<Record<string, Case>> = {
  textDocumentSync: async ({ editor }) => {
    await editor.edit(sideboard, '"blankets" rest', '"blankets" front 11 high');
    expect((await editor.verdictNow(sideboard)).errors).toBe(1);
    await editor.edit(sideboard, '"blankets" front 11 high', '"blankets" rest');
    expect((await editor.verdictNow(sideboard)).errors).toBe(0);
  },
  workspace: async ({ editor }) => {
    expect(editor.initialized?.capabilities.workspace).toEqual({ workspaceFolders: { supported: true } });
    await editor.notify('workspace/didChangeWorkspaceFolders', { event: { added: [], removed: [] } });
    expect(await editor.hover(sideboard, 'drawer "dice"')).not.toBeNull();
  },
  completionProvider: async (walker) => {
    // Behind the blank after `slides` the slides of the shop; the case is 17" deep.
    const position = walker.at('side mount 14', 'slides "side mount 14"');
    const { items } = await walker.ask<CompletionList>('completion', { position });
    const offered = items.find(({ label }) => label === '"side mount 12"');
    if (offered === undefined) throw new Error('the shorter slide is not offered');
    // What it means is told when somebody looks at it.
    expect(offered.documentation).toBeUndefined();
    const looked = await walker.editor.request<CompletionItem>('completionItem/resolve', offered);
    expect(JSON.stringify(looked.documentation)).toContain('side mount 12');
    // Each mark that is announced to open a list opens one of names, and taking one leaves the text whole.
    for (const mark of walker.announced.completionProvider?.triggerCharacters ?? []) {
      await walker.editor.edit(sideboard, 'slides "side mount 14"', `slides ${mark}`);
      const typed = walker.after([]).indexOf(`slides ${mark}`) + `slides ${mark}`.length;
      const list = await walker.ask<CompletionList>('completion', {
        position: walker.offset(typed),
        context: { triggerKind: 2, triggerCharacter: mark },
      });
      const other = list.items.find(({ label }) => label === '"side mount 12"');
      expect(walker.after(other?.textEdit === undefined ? [] : [other.textEdit as TextEdit]), mark).toContain(
        'slides "side mount 12"',
      );
      await walker.editor.edit(sideboard, `slides ${mark}`, 'slides "side mount 14"');
    }
    // Of a list that has been left nothing is told, and nothing is wrong.
    await walker.ask<CompletionList>('completion', { position });
    expect(await walker.editor.request<CompletionItem>('completionItem/resolve', offered)).toEqual(offered);
  },
  hoverProvider: async (walker) => {
    const hover = await walker.ask<Hover>('hover', { position: walker.at('rest', '"blankets" rest') });
    expect(JSON.stringify(hover.contents)).toMatch(/10\\\\-5\/32/);
  },
  signatureHelpProvider: async (walker) => {
    const position = { ...walker.at('in groove', 'in groove 1/4 deep') };
    const help = await walker.ask<SignatureHelp>('signatureHelp', { position });
    expect(help.signatures.map(({ label }) => label)).toContain('in groove ⟨depth⟩ deep');
    // Of the marks that are announced a blank asks within a phrase, and a comma goes on asking behind one.
    const { triggerCharacters, retriggerCharacters } = walker.announced.signatureHelpProvider ?? {};
    expect([triggerCharacters, retriggerCharacters]).toEqual([[' '], [',']]);
    const typed = async (said: string, triggerCharacter: string) => {
      const start = walker.editor.text(sideboard).indexOf('plinth 3 high, set back');
      const more = await walker.ask<SignatureHelp | null>('signatureHelp', {
        position: walker.offset(start + said.length),
        context: { triggerKind: 2, triggerCharacter, isRetrigger: triggerCharacter === ',' },
      });
      return more?.signatures.map(({ label }) => label) ?? [];
    };
    expect(await typed('plinth 3 high, set ', ' ')).toContain('set back ⟨length⟩');
    expect(await typed('plinth 3 high,', ',')).toContain('set back ⟨length⟩');
  },
  definitionProvider: async (walker) => {
    const [found] = await walker.ask<LocationLink[]>('definition', {
      position: walker.at('poplar', 'of "poplar" thick 3/4, under top'),
    });
    const shop = TextDocument.create('', '', 0, workshop['shop.fettle']);
    expect(found?.targetUri).toBe(walker.editor.uri('shop.fettle'));
    expect(shop.getText(found?.targetSelectionRange)).toBe('"poplar"');
  },
  referencesProvider: async (walker) => {
    const found = await walker.ask<Location[]>('references', {
      position: walker.at('left', 'doors "left"'),
      context: { includeDeclaration: true },
    });
    // Where it is declared, where the right doors follow it, and in the sequence of fronts.
    expect(found.map(({ range }) => walker.words(range))).toEqual(['"left"', '"left"', '"left"']);
  },
  documentHighlightProvider: async (walker) => {
    const found = await walker.ask<DocumentHighlight[]>('documentHighlight', {
      position: walker.at('left', 'doors "left"'),
    });
    expect(found.map(({ range }) => walker.words(range))).toEqual(['"left"', '"left"', '"left"']);
  },
  linkedEditingRangeProvider: async (walker) => {
    const position = walker.at('left', 'doors "left"');
    const { ranges } = await walker.ask<LinkedEditingRanges>('linkedEditingRange', { position });
    expect(ranges.map((range) => walker.words(range))).toEqual(['left', 'left', 'left']);
    expect(await walker.ask('linkedEditingRange', { position: walker.at('stack') })).toBeNull();
  },
  documentSymbolProvider: async (walker) => {
    const all = (list: readonly DocumentSymbol[]): string[] =>
      list.flatMap(({ name, children }) => [name, ...all(children ?? [])]);
    const names = all(await walker.ask<DocumentSymbol[]>('documentSymbol')).join('\n');
    for (const name of ['Games sideboard', 'left', 'cards', 'blankets', 'right']) expect(names).toContain(name);
  },
  workspaceSymbolProvider: async ({ editor }) => {
    const found = await editor.request<WorkspaceSymbol[]>('workspace/symbol', { query: 'birch' });
    expect(found.map(({ name }) => name).sort()).toEqual(['birch ply 1/2', 'birch ply 1/4', 'birch ply 3/4']);
  },
  foldingRangeProvider: async (walker) => {
    const lines = walker.editor.text(sideboard).split('\n');
    const folded = (await walker.ask<FoldingRange[]>('foldingRange')).map(({ startLine }) => lines[startLine]?.trim());
    expect(folded).toContain('piece "Games sideboard" {');
    expect(folded).toContain('stack opening 18 wide {');
  },
  selectionRangeProvider: async (walker) => {
    const [first] = await walker.ask<SelectionRange[]>('selectionRange', {
      positions: [walker.at('5', '"cards"    front 5 high')],
    });
    expect(walker.words(first?.range as Range)).toBe('5');
    expect(walker.words(first?.parent?.range as Range)).toBe('front 5 high');
    expect(walker.words(first?.parent?.parent?.range as Range)).toBe('drawer "cards"    front 5 high');
  },
  semanticTokensProvider: async (walker) => {
    const legend = walker.editor.initialized?.capabilities.semanticTokensProvider?.legend;
    const { data } = await walker.ask<SemanticTokens>('semanticTokens/full');
    // The first word of the text that is no comment is `use`, a word of a statement.
    expect(data.slice(0, 3)).toEqual([1, 0, 3]);
    expect(legend?.tokenTypes[data[3] ?? -1]).toBe('keyword');
    const ranged = await walker.ask<SemanticTokens>('semanticTokens/range', {
      range: { start: { line: 1, character: 0 }, end: { line: 2, character: 0 } },
    });
    expect(ranged.data).toHaveLength(10);
  },
  inlayHintProvider: async (walker) => {
    const hints = await walker.ask<InlayHint[]>('inlayHint', { range: walker.whole });
    expect(hints.map(({ label }) => label)).toContain('= 10-5/32"');
  },
  codeLensProvider: async (walker) => {
    const [lens, ...others] = await walker.ask<CodeLens[]>('codeLens');
    expect(others).toEqual([]);
    // Notes keep nothing from fitting, and are counted.
    expect(lens?.command?.title).toMatch(/^\d+ parts · fits, \d+ notes$/);
    expect(lens?.command?.command).toBe('fettle.showPicture');
  },
  documentLinkProvider: async (walker) => {
    const [link] = await walker.ask<DocumentLink[]>('documentLink');
    expect(link?.target).toBe(walker.editor.uri('shop.fettle'));
    expect(walker.words(link?.range as Range)).toContain('shop.fettle');
  },
  renameProvider: async (walker) => {
    const position = walker.at('dice', '"dice"');
    const place = await walker.ask<Range | { readonly range: Range }>('prepareRename', { position });
    expect(walker.words('range' in place ? place.range : place)).toContain('dice');
    const edit = await walker.ask<WorkspaceEdit>('rename', { position, newName: 'cubes' });
    expect(walker.after(walker.changes(edit))).toBe(walker.editor.text(sideboard).replace('"dice"', '"cubes"'));
  },
  documentFormattingProvider: async (walker) => {
    const options = { tabSize: 2, insertSpaces: true };
    expect(await walker.ask('formatting', { options })).toEqual([]);
    const neat = walker.editor.text(sideboard);
    await walker.editor.edit(sideboard, '  size 60 wide, 34', '      size   60 wide , 34');
    const edits = await walker.ask<TextEdit[]>('formatting', { options });
    expect(walker.after(edits)).toBe(neat);
    await walker.editor.apply(sideboard, edits);
  },
  documentRangeFormattingProvider: async (walker) => {
    const options = { tabSize: 2, insertSpaces: true };
    const neat = walker.editor.text(sideboard);
    await walker.editor.edit(sideboard, '  size 60 wide, 34', '      size   60 wide , 34');
    const start = { ...walker.at('size   60'), character: 0 };
    const edits = await walker.ask<TextEdit[]>('rangeFormatting', {
      options,
      range: { start, end: walker.at('17 deep') },
    });
    expect(walker.after(edits)).toBe(neat);
    await walker.editor.apply(sideboard, edits);
    const elsewhere = { start: walker.at('sequence'), end: walker.at('flitch') };
    expect(await walker.ask('rangeFormatting', { options, range: elsewhere })).toEqual([]);
  },
  documentOnTypeFormattingProvider: async (walker) => {
    await walker.editor.edit(sideboard, '  site {\n', '  site {\n\n');
    const position = { line: walker.at('site {').line + 1, character: 0 };
    const edits = await walker.ask<TextEdit[]>('onTypeFormatting', {
      position,
      ch: '\n',
      options: { tabSize: 2, insertSpaces: true },
    });
    expect(edits.map(({ newText }) => newText)).toEqual(['    ']);
    await walker.editor.edit(sideboard, '  site {\n\n', '  site {\n');
    const { firstTriggerCharacter, moreTriggerCharacter } = walker.announced.documentOnTypeFormattingProvider ?? {};
    expect([firstTriggerCharacter, ...(moreTriggerCharacter ?? [])].sort()).toEqual(['\n', '}']);
    // A brace that closes goes back to where its statement begins.
    await walker.editor.edit(sideboard, '  }\n\n  case {', '      }\n\n  case {');
    const closing = walker.at('      }', '      }\n\n  case {');
    const back = await walker.ask<TextEdit[]>('onTypeFormatting', {
      position: { ...closing, character: 7 },
      ch: '}',
      options: { tabSize: 2, insertSpaces: true },
    });
    await walker.editor.apply(sideboard, back);
  },
  codeActionProvider: async (walker) => {
    const { capabilities } = walker.editor.initialized as { capabilities: ServerCapabilities };
    const kinds = (capabilities.codeActionProvider as { codeActionKinds: string[] }).codeActionKinds;
    const actions = (only: string, range: Range) =>
      walker.ask<CodeAction[]>('codeAction', { range, context: { diagnostics: [], only: [only] } });
    await walker.editor.edit(sideboard, 'plinth 3 high', 'plinht 3 high');
    await walker.editor.verdictNow(sideboard);
    const places: Readonly<Record<string, Range>> = {
      quickfix: { start: walker.at('plinht'), end: walker.at('plinht') },
      'refactor.extract': { start: walker.at('piece', 'piece "Games'), end: walker.at('piece', 'piece "Games') },
      'refactor.rewrite': { start: walker.at('row {'), end: walker.at('row {') },
      'source.fixAll.fettle': walker.whole,
    };
    for (const kind of kinds) {
      const place = places[kind];
      if (place === undefined) throw new Error(`code actions of kind ${kind} are announced and have no case`);
      const found = await actions(kind, place);
      expect(found.length, kind).toBeGreaterThan(0);
      for (const each of found) expect(each.kind, each.title).toBe(kind);
      expect(walker.after(walker.changes(found[0]?.edit)), kind).not.toBe(walker.editor.text(sideboard));
    }
    const [all] = await actions('source.fixAll', walker.whole);
    await walker.editor.apply(sideboard, walker.changes(all?.edit));
    expect(walker.editor.text(sideboard)).toBe(workshop[sideboard]);
  },
};

describe.each(bundles)('what the server announces, as a %s', (bundle) => {
  let editor: SmallEditor;

  afterEach(async () => {
    await editor.stop();
  });

  test('has a case, and answers what is true', async () => {
    editor = await SmallEditor.start(bundle, workshop);
    await editor.open(sideboard);
    await editor.verdictNow(sideboard);
    const announced = Object.entries(editor.initialized?.capabilities ?? {})
      .filter(([, value]) => value !== undefined && value !== null && value !== false)
      .map(([name]) => name);
    expect(announced.filter((name) => cases[name] === undefined)).toEqual([]);
    // What has a case and is announced no more was taken away: then its case goes too.
    expect(Object.keys(cases).filter((name) => !announced.includes(name))).toEqual([]);
    const walker = new Walker(editor);
    const failed: string[] = [];
    for (const name of announced) {
      await cases[name]?.(walker).catch((error: unknown) => failed.push(`${name}: ${String(error)}`));
      // Each case leaves the text as it found it.
      if (editor.text(sideboard) !== workshop[sideboard]) failed.push(`${name} left the text changed`);
    }
    expect(failed).toEqual([]);
    expect(editor.log.filter((line) => line.includes('failed for'))).toEqual([]);
  });
});
