/**
 * Every feature in the four themes, as pictures in out/screenshots/look: to be looked at after a change of what the
 * editor shows. The tests beside this folder say what must happen; here one sees how it reads.
 */
import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, test } from 'vitest';
import type { EditorWindow } from '../editor-window.ts';
import type { PreviewPage } from '../preview-page.ts';
import { Questions } from '../questions.ts';
import { RealEditorServer } from '../real-editor-server.ts';

let editor: RealEditorServer;

beforeAll(async () => {
  editor = await RealEditorServer.start();
});

afterAll(async () => {
  await editor?.stop();
});

const file = 'sideboard.fettle';
const asked = process.env['FETTLE_LOOK_THEMES']?.split(',');
const themes = (['light', 'dark', 'high contrast', 'high contrast light'] as const).filter(
  (theme) => asked === undefined || asked.includes(theme),
);

async function openPicture(window: EditorWindow): Promise<PreviewPage> {
  await window.openFile(file);
  const picture = await window.showPicture();
  await picture.waitForDrawing();
  await picture.waitForVerdict(/fits/);
  return picture;
}

describe.each(themes)('%s', (theme) => {
  const look = (title: string, story: (window: EditorWindow, page: Page, shoot: Shoot) => Promise<void>) =>
    test(title, async () => {
      await editor.inWindow(`look ${theme} ${title}`, async (window, page) => {
        const name = `look/${theme} ${title}`.replaceAll(' ', '-');
        const shoot: Shoot = async (part) => {
          mkdirSync('out/screenshots/look', { recursive: true });
          // Widgets of the editor come up and settle in their own time.
          await page.waitForTimeout(700);
          await window.screenshot(`${name}-${part}`);
        };
        await window.openFile(file);
        await window.setTheme(theme);
        await story(window, page, shoot);
      });
    });

  look('writing', async (window, page, shoot) => {
    await window.waitForVerdict(/fits/);
    await shoot('text');
    await window.placeCaret('"blankets" rest');
    await page.keyboard.press('Control+Space');
    await shoot('completion-names');
    await page.keyboard.press('Escape');
    await window.select('"side mount 14"');
    await page.keyboard.press('Delete');
    await page.keyboard.press('Control+Space');
    await shoot('completion-slides');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+Z');
    await window.select('drawer "cards"');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Control+K');
    await page.keyboard.press('Control+I');
    await shoot('hover-name');
    await page.keyboard.press('Escape');
    await window.placeCaret('inset, gap');
    await page.keyboard.press('Control+K');
    await page.keyboard.press('Control+I');
    await shoot('hover-word');
    await page.keyboard.press('Escape');
    await window.placeCaret('"blankets" rest');
    await page.keyboard.press('Control+Shift+Space');
    await shoot('help-in-a-statement');
    await page.keyboard.press('Escape');
  });

  look('mending', async (window, page, shoot) => {
    await window.waitForVerdict(/fits/);
    await window.showProblems();
    await window.typeOver('drawer "blankets" rest', 'drawer "blankets" front 11 high');
    await window.waitForSquiggle('too much');
    await window.placeCaret('front 11 high');
    await page.keyboard.press('Control+.');
    await shoot('fixes');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+K');
    await page.keyboard.press('Control+I');
    await shoot('hover-finding');
    await page.keyboard.press('Escape');
    await window.placeCaret('drawer "maps"');
    await page.keyboard.press('Control+Shift+R');
    await shoot('refactorings');
  });

  look('picture', async (window, page, shoot) => {
    const picture = await openPicture(window);
    await shoot('elevation');
    await picture.clickPart('drawer front "maps"');
    await shoot('chosen');
    await picture.search('ash');
    await shoot('search');
    await picture.search('');
    await page.keyboard.press('Escape');
    await picture.part(`drawer front "blankets"`).hover();
    await picture.tip.waitFor();
    await shoot('tip');
    await picture.moveLineByKeys('line between "cards" and "dice"', 'Shift+ArrowDown');
    await shoot('line-moved');
    const sheets = await picture.sheetTitles();
    for (const sheet of sheets) {
      await picture.showSheet(sheet);
      await shoot(`sheet-${sheet.replaceAll(/[^A-Za-z0-9]+/g, '-')}`);
    }
  });

  look('files', async (window, _page, shoot) => {
    const picture = await openPicture(window);
    await picture.press('Save PNG: Elevation');
    await shoot('save-as');
    await window.saveAs('sideboard.png');
    await picture.readout('Saved as sideboard.png').waitFor();
    await shoot('saved');
  });

  look('newcomer', async (_window, page, shoot) => {
    const questions = new Questions(page);
    await questions.ask('Welcome: Open Walkthrough');
    await page.locator('.quick-input-list .monaco-list-row').filter({ hasText: 'Your First Piece in Fettle' }).click();
    const walkthrough = page.locator('.gettingStartedContainer');
    for (const title of [
      'Read a piece aloud',
      'See what does not fit',
      'Watch the picture answer',
      'Take it to the bench',
      'Write your own piece',
    ]) {
      await walkthrough.getByRole('button', { name: title }).first().click();
      await shoot(`walkthrough-${title.replaceAll(' ', '-').toLowerCase()}`);
    }
    await walkthrough.getByRole('button', { name: 'New Piece' }).first().click();
    await questions.at(1, 8);
    await shoot('new-piece-name');
    await questions.answerWords('Toy cupboard');
    await questions.at(2, 8);
    await shoot('new-piece-units');
  });
});

type Shoot = (part: string) => Promise<void>;
