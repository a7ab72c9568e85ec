/**
 * The main job in VS Code for the web: no server, no process, no disk. The sideboard and its shop file lie in a folder
 * that is nowhere but in the browser; the language server is a worker.
 */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { WebEditorServer } from './web-editor-server.ts';

let editor: WebEditorServer;

beforeAll(async () => {
  editor = await WebEditorServer.start();
});

afterAll(async () => {
  await editor?.stop();
});

describe('in VS Code for the web', () => {
  test('the sideboard is read, drawn, checked, mended, and pointed at', async () => {
    await editor.inWindow('web-sideboard', 'sideboard.fettle', async (window) => {
      await window.waitForVerdict(/fits/);
      await window.showProblems();
      const picture = await window.showPicture();
      await picture.waitForDrawing();
      await picture.waitForVerdict(/fits/);

      await window.typeOver('drawer "blankets" rest', 'drawer "blankets" front 11 high');
      expect(await window.waitForSquiggle('too much')).toBe('front 11 high');
      await window.waitForVerdict('1 finding: 27/32" too much');
      await window.screenshot('web-too-high');
      await window.placeCaret('front 11 high');
      await window.applyQuickFix('blankets');
      await window.waitForNoSquiggle('too much');
      await window.waitForVerdict(/fits/);
      await picture.clickPart('drawer front "maps"');
      expect(await window.selectedText()).toMatch(/^drawer "maps"\s+front 7 high$/);
      await window.screenshot('web-maps-chosen');
    });
  });

  test('a misspelt stock of the shop file beside it is found: files are read through the editor', async () => {
    await editor.inWindow('web-shop', 'sideboard.fettle', async (window) => {
      await window.waitForVerdict(/fits/);
      await window.showProblems();
      await window.typeOver('of "poplar" thick 3/4, under top', 'of "popler" thick 3/4, under top');
      expect(await window.waitForSquiggle('popler')).toBe('"popler"');
      await window.placeCaret('"popler"');
      await window.applyQuickFix('poplar');
      await window.waitForNoSquiggle('popler');
    });
  });
});
