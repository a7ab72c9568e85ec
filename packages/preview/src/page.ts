import { readPageMemory, readToPage } from '@fettle/protocol';
import { PicturePage } from './picture-page.ts';

/** Entry of the page's bundle: joins the page to the editor that shows it, and does nothing else. */

declare function acquireVsCodeApi(): {
  postMessage(message: unknown): void;
  getState(): unknown;
  setState(state: unknown): void;
};

const editor = acquireVsCodeApi();
const root = document.getElementById('fettle-page');
if (root !== null) {
  const page = new PicturePage(root, readPageMemory(editor.getState()), {
    send: (message) => editor.postMessage(message),
    remember: (memory) => editor.setState(memory),
  });
  window.addEventListener('message', (event) => {
    const message = readToPage(event.data);
    if (message !== undefined) page.receive(message);
  });
}
