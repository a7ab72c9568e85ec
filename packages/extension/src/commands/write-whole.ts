import * as vscode from 'vscode';

/** Files are written whole or not at all: what stood there before stays until the new one is complete. */
export async function writeWhole(target: vscode.Uri, bytes: Uint8Array): Promise<void> {
  const { fs } = vscode.workspace;
  const name = target.path.split('/').at(-1) ?? '';
  const mark = Array.from(globalThis.crypto.getRandomValues(new Uint8Array(6)), (byte) => byte.toString(16)).join('');
  const beside = vscode.Uri.joinPath(target, '..', `.${name}.${mark}.partial`);
  try {
    await fs.writeFile(beside, bytes);
    await fs.rename(beside, target, { overwrite: true });
  } catch (error) {
    await fs.delete(beside).then(undefined, () => undefined);
    throw error;
  }
}
