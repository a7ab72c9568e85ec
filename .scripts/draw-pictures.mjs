// @ts-check
/**
 * `node .scripts/draw-pictures.mjs`: makes the PNG files the README and the extension's page show. The icon is drawn from
 * icon.svg, because galleries of extensions want PNG; the picture of the sideboard is what the real editor shows in its
 * first test. Run it after a change to either, look at both, and commit them.
 */
import { copyFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { browserArguments, ensureChromium } from '../tests/editor/set-up/browser.mjs';
import { giveUp, repository, runNode } from './running.mjs';

const media = join(repository, 'packages/extension/media');
const iconPx = 256;
const story = ['run', '--config', 'tests/editor/vitest.config.mts', '-t', 'its picture stands beside the text'];

await drawIcon();
if (runNode('.scripts/package.mjs') !== 0) giveUp('the sideboard was not drawn');
if (runNode('node_modules/vitest/vitest.mjs', story) !== 0) giveUp('the sideboard was not drawn');
copyFileSync(join(repository, 'out/screenshots/sideboard.png'), join(media, 'sideboard.png'));

async function drawIcon() {
  const browser = await chromium.launch({ executablePath: ensureChromium(console.log), args: [...browserArguments] });
  try {
    const page = await browser.newPage({ viewport: { width: iconPx, height: iconPx } });
    const svg = readFileSync(join(media, 'icon.svg'), 'utf8');
    await page.setContent(`<style>body { margin: 0 } svg { display: block }</style>${svg}`);
    await page.screenshot({ path: join(media, 'icon.png'), omitBackground: true });
  } finally {
    await browser.close();
  }
}
