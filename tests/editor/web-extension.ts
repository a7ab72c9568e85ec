/**
 * Offers an unpacked extension to a browser as a web server would. The editor's own page may only load from where it came
 * from, so the files appear under its address; they never pass through its server.
 */
import { existsSync, statSync } from 'node:fs';
import { join, normalize, sep } from 'node:path';
import type { BrowserContext } from 'playwright-core';

const path = '/fettle-extension';

/** Answers the address to install the extension from. */
export async function serveExtension(context: BrowserContext, origin: string, folder: string): Promise<string> {
  const address = `${origin}${path}`;
  await context.route(`${address}/**`, async (route) => {
    const wanted = decodeURIComponent(new URL(route.request().url()).pathname.slice(path.length));
    const file = normalize(join(folder, wanted));
    const isThere = file.startsWith(folder + sep) && existsSync(file) && statSync(file).isFile();
    await route.fulfill(isThere ? { path: file } : { status: 404 });
  });
  return address;
}
