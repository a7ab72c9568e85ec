// @ts-check
/** How the Chromium that shows the editor is started. */
export { ensureChromium } from './debian-packages.mjs';

/**
 * Quiet, and unable to reach anything but this machine: a name that is not the loopback resolves to nothing, so a product
 * that phoned home would be seen to fail.
 */
export const browserArguments = /** @type {const} */ ([
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
]);
