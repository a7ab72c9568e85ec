import type { Page } from 'playwright-core';

export type Severity = 'error' | 'warning' | 'info' | 'hint';

/**
 * The words that are underlined on the screen. VS Code paints underlines in a layer of their own, so the words are those
 * characters whose middle lies above an underline.
 */
export async function squiggledWords(page: Page, severity: Severity): Promise<readonly string[]> {
  return await page.evaluate((kind) => {
    const found: string[] = [];
    const marks = document.querySelectorAll(`.monaco-editor .view-overlays .squiggly-${kind}`);
    for (const mark of marks) {
      const under = mark.getBoundingClientRect();
      const lines = mark.closest('.lines-content')?.querySelectorAll('.view-line') ?? [];
      let words = '';
      for (const line of lines) {
        const box = line.getBoundingClientRect();
        if (under.top + under.height / 2 < box.top || box.bottom < under.top + under.height / 2) continue;
        const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
        for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
          const range = document.createRange();
          const text = node.textContent ?? '';
          for (let at = 0; at < text.length; at++) {
            range.setStart(node, at);
            range.setEnd(node, at + 1);
            const letter = range.getBoundingClientRect();
            const middle = letter.left + letter.width / 2;
            if (under.left <= middle && middle <= under.right) words += text[at];
          }
        }
      }
      found.push(words.replaceAll('\u00a0', ' '));
    }
    return found;
  }, severity);
}
