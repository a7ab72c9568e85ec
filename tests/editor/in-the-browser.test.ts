/**
 * The same extension in its browser form: its entry for the web runs in the browser's extension host, the language server
 * in a worker, and files are read through the editor. There is no other copy of the extension on the machine.
 */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { RealEditorServer } from './real-editor-server.ts';

let editor: RealEditorServer;

beforeAll(async () => {
  editor = await RealEditorServer.start('browser');
});

afterAll(async () => {
  await editor?.stop();
});

describe('in the browser', () => {
  test('the sideboard is read with its shop file, drawn, checked and mended', async () => {
    await editor.inWindow('in-the-browser', async (window) => {
      await window.openFile('sideboard.fettle');
      await window.showProblems();
      const picture = await window.showPicture();
      await picture.waitForDrawing();
      await picture.waitForVerdict(/fits/);

      await window.typeOver('drawer "blankets" rest', 'drawer "blankets" front 11 high');
      expect(await window.waitForSquiggle('too much')).toBe('front 11 high');
      await window.placeCaret('front 11 high');
      await window.applyQuickFix('blankets');
      await window.waitForNoSquiggle('too much');
      await picture.clickPart('drawer front "maps"');
      expect(await window.selectedText()).toMatch(/^drawer "maps"/);
      await window.screenshot('in-the-browser');
    });
  });

  test('a line is moved and the picture exported, all without a machine behind the extension', async () => {
    await editor.inWindow('tools-in-the-browser', async (window) => {
      await window.openFile('sideboard.fettle');
      const picture = await window.showPicture();
      await picture.waitForDrawing();
      await picture.moveLineByKeys('line between "cards" and "dice"', 'Shift+ArrowDown');
      await picture.waitForSizes('line between "cards" and "dice"', '"cards" 5-1/4", "dice" 5-3/4"');
      await picture.press('Save PNG: Elevation');
      const png = await window.saveAs('from the browser.png');
      await picture.readout('Saved as from the browser.png').waitFor();
      expect(readFileSync(png).subarray(1, 4).toString()).toBe('PNG');
    });
  });
});
