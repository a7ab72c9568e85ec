import type { FromPage, ToPage } from '@fettle/protocol';

/** A drawing as a PNG, rendered by the page itself: nothing leaves it, and nothing is loaded but the drawing. */
export class PngRenderer {
  readonly #send: (message: FromPage) => void;
  readonly #running = new Map<number, AbortController>();

  constructor(send: (message: FromPage) => void) {
    this.#send = send;
  }

  async render({ request, svg, width }: Extract<ToPage, { kind: 'draw-png' }>): Promise<void> {
    const stop = new AbortController();
    this.#running.set(request, stop);
    try {
      const bytes = await drawPng(svg, width, stop.signal);
      this.#send({ kind: 'png', request, bytes });
    } catch (error) {
      const sentence = error instanceof Error ? error.message : String(error);
      if (!stop.signal.aborted) this.#send({ kind: 'png-failed', request, sentence });
    } finally {
      this.#running.delete(request);
    }
  }

  cancel(request: number): void {
    this.#running.get(request)?.abort();
  }
}

/** Throws with a sentence for the reader; `signal` stops it between its steps. */
async function drawPng(svg: string, width: number, signal: AbortSignal): Promise<Uint8Array> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode().catch(() => {
      throw new Error('the drawing cannot be rendered here');
    });
    signal.throwIfAborted();
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = Math.max(1, Math.round((width * image.naturalHeight) / Math.max(1, image.naturalWidth)));
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('this editor gives the page nothing to draw on');
    context.fillStyle = '#ffffff';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
    signal.throwIfAborted();
    if (blob === null) throw new Error('the picture is too large to be rendered here');
    return new Uint8Array(await blob.arrayBuffer());
  } finally {
    URL.revokeObjectURL(address);
  }
}
