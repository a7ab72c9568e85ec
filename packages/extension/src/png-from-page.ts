import type { FromPage, ToPage } from '@fettle/protocol';
import type { CancellationToken } from 'vscode';

/** Drawings that are being rendered in a page: asked for, waited for, given up. */

/** A drawing takes a second at most; a page that says nothing for so long is gone, in milliseconds. */
const patience = 30_000;

export class PngFromPage {
  readonly #send: (message: ToPage) => void;
  readonly #waiting = new Map<number, { resolve(bytes: Uint8Array): void; reject(error: Error): void }>();
  #requests = 0;

  constructor(send: (message: ToPage) => void) {
    this.#send = send;
  }

  /** Rejects when the page cannot render it, is closed, or the reader cancels. */
  async draw(svg: string, width: number, token: CancellationToken): Promise<Uint8Array> {
    const request = ++this.#requests;
    let listening: { dispose(): void } | undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    try {
      return await new Promise<Uint8Array>((resolve, reject) => {
        this.#waiting.set(request, { resolve, reject });
        timer = setTimeout(() => reject(new Error('the page did not answer')), patience);
        listening = token.onCancellationRequested(() => {
          this.#send({ kind: 'cancel-png', request });
          reject(new Error('cancelled'));
        });
        this.#send({ kind: 'draw-png', request, svg, width });
      });
    } finally {
      clearTimeout(timer);
      listening?.dispose();
      this.#waiting.delete(request);
    }
  }

  receive(message: Extract<FromPage, { kind: 'png' | 'png-failed' }>): void {
    const waiting = this.#waiting.get(message.request);
    if (message.kind === 'png-failed') waiting?.reject(new Error(message.sentence));
    else if (isPng(message.bytes)) waiting?.resolve(message.bytes);
    else waiting?.reject(new Error('the page sent something else than a picture'));
  }

  giveUp(): void {
    for (const { reject } of this.#waiting.values()) reject(new Error('the picture was closed'));
  }
}

const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

function isPng(bytes: Uint8Array): boolean {
  return signature.every((byte, at) => bytes[at] === byte);
}
