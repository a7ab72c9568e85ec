/**
 * The main job in a real editor: the sideboard is opened, checked, drawn, spoilt, mended, and pointed at from both sides.
 * Each test has a window and a folder of its own.
 */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { PreviewPage } from './preview-page.ts';
import { RealEditorServer } from './real-editor-server.ts';

let editor: RealEditorServer;

beforeAll(async () => {
  editor = await RealEditorServer.start();
});

afterAll(async () => {
  await editor?.stop();
});

const file = 'sideboard.fettle';
const blankets = 'drawer "blankets" rest';
const tooHigh = 'front 11 high';

/** As drawn; a ratio, because the picture as a whole grows and shrinks with the room it is given. */
async function blanketsToCards(picture: PreviewPage): Promise<number> {
  return (await picture.heightOf('drawer front "blankets"')) / (await picture.heightOf('drawer front "cards"'));
}

describe('the sideboard', () => {
  test('opens without a complaint, and its picture stands beside the text', async () => {
    await editor.inWindow('opens', async (window) => {
      await window.openFile(file);
      const picture = await window.showPicture();
      await picture.waitForDrawing();
      await picture.waitForVerdict(/fits/);
      await window.waitForVerdict(/fits/);
      await picture.part('drawer front "cards"').waitFor();
      expect(await window.squiggles('error')).toEqual([]);
      await window.screenshot('sideboard');
    });
  });

  test('a front that is too high is underlined, the picture follows, and the quick fix mends it', async () => {
    await editor.inWindow('too-high', async (window) => {
      await window.openFile(file);
      await window.showProblems();
      const picture = await window.showPicture();
      await picture.waitForDrawing();
      const before = await blanketsToCards(picture);
      expect(before).toBeCloseTo((10 + 5 / 32) / 5, 1);

      await window.typeOver(blankets, `drawer "blankets" ${tooHigh}`);
      expect(await window.waitForSquiggle('too much')).toBe(tooHigh);
      await expect.poll(() => blanketsToCards(picture)).toBeGreaterThan(before + 0.05);
      await window.screenshot('blankets-too-high');

      await window.placeCaret(tooHigh);
      await window.applyQuickFix('blankets');
      await window.waitForNoSquiggle('too much');
      await window.waitForVerdict(/fits/);
      await picture.waitForVerdict(/fits/);
      expect(await window.savedText(file)).not.toContain(tooHigh);
      await expect.poll(() => blanketsToCards(picture)).toBeCloseTo(before, 1);
      await window.screenshot('blankets-mended');
    });
  });

  test('a click on a drawer in the picture selects its words in the text', async () => {
    await editor.inWindow('click', async (window) => {
      await window.openFile(file);
      const picture = await window.showPicture();
      await picture.waitForDrawing();
      await picture.clickPart('drawer front "maps"');
      expect(await window.selectedText()).toMatch(/^drawer "maps"\s+front 7 high$/);
      await window.screenshot('maps-chosen');
    });
  });

  test('the caret in the words of a drawer lights it up in the picture', async () => {
    await editor.inWindow('caret', async (window) => {
      await window.openFile(file);
      const picture = await window.showPicture();
      await picture.waitForDrawing();
      await window.placeCaret('"dice"');
      await picture.waitForLit('drawer front "dice"');
      expect(await picture.litParts()).not.toContain('drawer front "cards"');
      await window.screenshot('dice-lit');
      await window.placeCaret('"cards"');
      await picture.waitForLit('drawer front "cards"');
      expect(await picture.litParts()).not.toContain('drawer front "dice"');
    });
  });

  test('a number tells where it comes from, and the trail above the text is the piece itself', async () => {
    await editor.inWindow('reading', async (window) => {
      await window.openFile(file);
      await (await window.showPicture()).waitForDrawing();
      expect(await window.hoverOn('rest')).toContain('10-5/32"');
      const trail = await window.trailAt('"dice"', 'dice');
      expect(trail[0]).toBe(file);
      expect(trail[1]).toContain('Games sideboard');
    });
  });

  test('everything works in a folder whose authors are not trusted', async () => {
    await editor.inWindow(
      'restricted',
      async (window) => {
        await window.openFile(file);
        const picture = await window.showPicture();
        await picture.waitForVerdict(/fits/);
        await window.showProblems();
        await window.typeOver(blankets, `drawer "blankets" ${tooHigh}`);
        expect(await window.waitForSquiggle('too much')).toBe(tooHigh);
        await window.placeCaret(tooHigh);
        await window.applyQuickFix('blankets');
        await window.waitForNoSquiggle('too much');
      },
      'restricted',
    );
  });

  test('broken text keeps the last good picture, marked as such, until it can be read again', async () => {
    await editor.inWindow('broken', async (window) => {
      await window.openFile(file);
      const picture = await window.showPicture();
      await picture.waitForDrawing();
      await picture.waitForStale(false);
      await window.typeOver('gap 3/32 {', 'gap 3/32');
      await picture.waitForStale(true);
      await picture.part('drawer front "blankets"').waitFor();
      await window.screenshot('broken-text');
      await window.placeCaret('face inset');
      await window.applyQuickFix("Open it with '{'");
      await picture.waitForStale(false);
      await picture.waitForVerdict(/fits/);
    });
  });

  test.each(['dark', 'high contrast', 'high contrast light'] as const)('is shown in the %s theme', async (theme) => {
    await editor.inWindow(theme, async (window) => {
      await window.openFile(file);
      await window.setTheme(theme);
      const picture = await window.showPicture();
      await picture.waitForDrawing();
      await window.showProblems();
      await window.typeOver(blankets, `drawer "blankets" ${tooHigh}`);
      expect(await window.waitForSquiggle('too much')).toBe(tooHigh);
      await window.screenshot(`sideboard ${theme}`.replaceAll(' ', '-'));
    });
  });

  test('the picture comes back when the window is loaded again', async () => {
    await editor.inWindow('reload', async (window) => {
      await window.openFile(file);
      await (await window.showPicture()).waitForDrawing();
      await window.reload();
      const picture = await window.previewPage();
      await picture.waitForDrawing();
      await picture.clickPart('drawer front "cards"');
      expect(await window.selectedText()).toMatch(/^drawer "cards"\s+front 5 high$/);
    });
  });
});
