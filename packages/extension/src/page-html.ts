/**
 * The panel's page before anything is shown in it. Strict: our script by nonce, our styles by origin, nothing else but
 * pictures that the page makes itself, which is how a drawing becomes a PNG.
 */

function makeNonce(): string {
  const bytes = globalThis.crypto.getRandomValues(new Uint8Array(24));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** `script` and `styles` are addresses the page may load, already safe inside an attribute. */
export function pageHtml(page: {
  readonly cspSource: string;
  readonly script: string;
  readonly styles: string;
}): string {
  const nonce = makeNonce();
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'nonce-${nonce}'; style-src ${page.cspSource}; img-src blob:;">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="${page.styles}">
<title>Picture</title>
</head>
<body>
<div id="fettle-page"></div>
<script nonce="${nonce}" src="${page.script}"></script>
</body>
</html>`;
}
