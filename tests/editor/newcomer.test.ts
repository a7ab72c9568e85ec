/**
 * Somebody who has never seen Fettle, in a real editor: from an empty folder by the walkthrough to a piece of their own,
 * seen, changed, mended and saved as files. What they did and how long it took is printed.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { patienceMs } from './editor-window.ts';
import { Questions } from './questions.ts';
import { RealEditorServer } from './real-editor-server.ts';

let editor: RealEditorServer;

beforeAll(async () => {
  editor = await RealEditorServer.start();
});

afterAll(async () => {
  await editor?.stop();
});

describe('a newcomer', () => {
  test('comes from an empty folder to a piece of their own, with its picture and its files', async () => {
    const steps: string[] = [];
    const begun = performance.now();
    let last = begun;
    const done = (what: string) => {
      const now = performance.now();
      steps.push(`${String(steps.length + 1).padStart(2)}. ${what} (${((now - last) / 1000).toFixed(1)} s)`);
      last = now;
    };

    await editor.inWindow(
      'newcomer',
      async (window, page, folder) => {
        expect(readdirSync(folder)).toEqual([]);
        last = performance.now();

        const questions = new Questions(page);
        await questions.ask('Welcome: Open Walkthrough');
        await page
          .locator('.quick-input-list .monaco-list-row')
          .filter({ hasText: 'Your First Piece in Fettle' })
          .click();
        const walkthrough = page.locator('.gettingStartedContainer');
        await walkthrough.getByText('Read a piece aloud').first().waitFor();
        done('opened the walkthrough');
        for (const title of [
          'Read a piece aloud',
          'See what does not fit',
          'Watch the picture answer',
          'Take it to the bench',
        ]) {
          await walkthrough.getByRole('button', { name: title }).first().click();
          await walkthrough.locator('.step-media-container, .getting-started-media').first().waitFor();
        }
        await window.screenshot('walkthrough-bench');
        await walkthrough.getByRole('button', { name: 'Write your own piece' }).first().click();
        await window.screenshot('walkthrough-own');
        done('read its steps');
        await walkthrough.getByRole('button', { name: 'New Piece' }).first().click();

        await questions.at(1, 8);
        done('pressed New Piece in the last step');
        expect(await questions.refused('')).toMatch(/name/);
        await questions.answerWords('Toy cupboard');
        await questions.at(2, 8);
        await questions.choose('Inches, to 1/32"');
        await questions.at(3, 8);
        await window.screenshot('new-piece-holds');
        await questions.chooseSeveral(['Papers and small things', 'Boxes, jars, dishes']);
        await questions.at(4, 8);
        await questions.answerWords('52-1/2');
        await questions.at(5, 8);
        // A second thought: the place is narrower. The earlier answer still stands in the box.
        await questions.goBack();
        await questions.at(4, 8);
        expect(await questions.words()).toBe('52-1/2');
        await questions.answerWords('50-1/2');
        await questions.at(5, 8);
        expect(await questions.refused('low')).toMatch(/no length/);
        await window.screenshot('new-piece-refused');
        await questions.answerWords('96');
        await questions.at(6, 8);
        await questions.answerWords('20');
        await questions.at(7, 8);
        await questions.choose('Small children');
        await questions.at(8, 8);
        await window.screenshot('new-piece-height');
        await questions.choose('Table height');
        done('answered eight questions, one of them twice');

        const picture = await window.previewPage();
        await picture.waitForDrawing();
        await picture.waitForVerdict(/^fits/);
        await window.waitForVerdict(/fits/);
        expect(await window.squiggles('error')).toEqual([]);
        expect(readdirSync(folder).sort()).toEqual(['shop.fettle', 'toy-cupboard.fettle']);
        await page.locator('.notification-toast').filter({ hasText: 'Fasten it to the wall' }).waitFor();
        await window.screenshot('new-piece-made');
        done('saw the piece and its picture');

        await window.showProblems();
        await window.typeOver('drawer "right drawer 5" rest', 'drawer "right drawer 5" front 9 high');
        expect(await window.waitForSquiggle('too much')).toBe('front 9 high');
        await window.screenshot('newcomer-wrong');
        await window.placeCaret('front 9 high');
        await window.applyQuickFix('Let "right drawer 5" take the rest');
        await window.waitForVerdict(/fits/);
        await picture.waitForVerdict(/^fits/);
        done('made a drawer too high, and took the way out that was offered');

        await questions.ask('Fettle: Save the Drawing as SVG');
        const drawing = await window.saveAs('toy-cupboard.svg');
        await expect
          .poll(() => existsSync(drawing) && readFileSync(drawing, 'utf8'), { timeout: patienceMs })
          .toContain('Toy cupboard');
        await questions.ask('Fettle: Save the Cut List as CSV');
        const list = await window.saveAs('toy-cupboard.csv');
        await expect
          .poll(() => existsSync(list) && readFileSync(list, 'utf8'), { timeout: patienceMs })
          .toContain('side');
        await window.screenshot('newcomer-saved');
        done('saved the drawing and the cut list');

        const text = await window.savedText('toy-cupboard.fettle');
        expect(text).toContain('size 49-1/2 wide, 34 high, 18 deep');
        expect(text).toContain('small children live with it');
        done('saved the text');
        expect(existsSync(join(folder, 'shop.fettle'))).toBe(true);
      },
      'trusted',
      'nothing',
    );
    const total = ((last - begun) / 1000).toFixed(1);
    console.log(`A newcomer, ${steps.length} steps, ${total} s with the opening of the window:\n${steps.join('\n')}`);
  });

  test('who runs the task sees what it finds, also where the language server does not look, and nothing twice', async () => {
    await editor.inWindow('task', async (window, page, folder) => {
      const wrong = readFileSync(join(folder, 'sideboard.fettle'), 'utf8').replace(
        'drawer "blankets" rest',
        'drawer "blankets" front 11 high',
      );
      mkdirSync(join(folder, 'out'));
      writeFileSync(join(folder, 'out/built.fettle'), wrong.replace('"shop.fettle"', '"../shop.fettle"'));
      writeFileSync(join(folder, 'over.fettle'), wrong);
      await window.openFile('vanity.fettle');
      const rows = page.locator('.markers-panel .monaco-list-row');
      const questions = new Questions(page);
      await questions.ask('Tasks: Run Task');
      await questions.choose('fettle');
      await questions.choose('fettle: check');
      // Errors were found, so the task brings its terminal forward when it ends.
      await page
        .locator('.part.panel .action-item.checked')
        .filter({ hasText: /terminal/i })
        .waitFor();
      await page.locator('.part.panel').getByText('check - Task').first().waitFor();
      await window.showProblems();
      await rows.filter({ hasText: 'built.fettle' }).first().waitFor();
      // Headings of files aside, one row for each of the two.
      const found = rows.filter({ hasText: '27/32" too much' });
      await expect.poll(() => found.count(), { timeout: patienceMs }).toBe(2);
      // The language server says the same of a text once it is open, and it is still one row.
      await window.openFile('over.fettle');
      await window.waitForVerdict('1 finding: 27/32" too much');
      await expect.poll(() => found.count(), { timeout: patienceMs }).toBe(2);
      await window.screenshot('task-problems');
    });
  });
});
