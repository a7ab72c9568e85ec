// @ts-check
/** `node .scripts/draw-icon.mjs`: draws icon.png from icon.svg, after the SVG was changed. Shops of extensions want PNG. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { browserArguments, ensureChromium } from '../tests/editor/set-up/browser.mjs';
import { repository } from './running.mjs';

const media = join(repository, 'packages/extension/media');
const sizePx = 256;

const browser = await chromium.launch({ executablePath: ensureChromium(console.log), args: [...browserArguments] });
try {
  const page = await browser.newPage({ viewport: { width: sizePx, height: sizePx } });
  await page.setContent(
    `<style>body { margin: 0 } svg { display: block }</style>${readFileSync(join(media, 'icon.svg'), 'utf8')}`,
  );
  await page.screenshot({ path: join(media, 'icon.png'), omitBackground: true });
} finally {
  await browser.close();
}
