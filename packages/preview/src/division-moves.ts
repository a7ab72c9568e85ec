/**
 * Moving a line of the drawing, by pointer or by keys, in whole marks of the ruler. Tells where it would go while it
 * moves and where it was let go; what that does to the text is others' business.
 */
export interface DivisionMoveHost {
  /** It is here now, but may go on. */
  moving(division: string, steps: number): void;
  /** It was let go here. */
  dropped(division: string, steps: number): void;
  cancelled(): void;
}

/** After the last key the line is let go by itself, in milliseconds. */
const pause = 900;
/** With Shift. */
const stride = 8;

interface Hold {
  readonly division: string;
  readonly element: SVGElement;
  steps: number;
  /** Where the pointer took hold, and how many pixels a mark is; absent for keys. */
  readonly pointer?: { readonly id: number; readonly start: number; readonly pixelsPerStep: number };
}

export class DivisionMoves {
  readonly #host: DivisionMoveHost;
  #hold: Hold | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(sheet: HTMLElement, host: DivisionMoveHost) {
    this.#host = host;
    sheet.addEventListener('pointerdown', (event) => this.#onDown(event, sheet));
    sheet.addEventListener('pointermove', (event) => this.#onMove(event));
    sheet.addEventListener('pointerup', (event) => this.#onUp(event));
    sheet.addEventListener('pointercancel', () => this.cancel());
  }

  get holds(): boolean {
    return this.#hold !== undefined;
  }

  /** Whether something was held. */
  cancel(): boolean {
    clearTimeout(this.#timer);
    if (this.#hold === undefined) return false;
    this.#hold = undefined;
    this.#host.cancelled();
    return true;
  }

  /** Answers whether the key was one for a line. */
  key(element: SVGElement, event: KeyboardEvent): boolean {
    const division = element.getAttribute('data-division');
    if (division === null) return false;
    if (event.key === 'Escape') return this.cancel();
    if (event.key === 'Enter' || event.key === ' ') {
      this.#drop();
      return true;
    }
    const forwards = element.getAttribute('data-moves') === 'x' ? 'ArrowRight' : 'ArrowDown';
    const backwards = element.getAttribute('data-moves') === 'x' ? 'ArrowLeft' : 'ArrowUp';
    if (event.key !== forwards && event.key !== backwards) return false;
    if (this.#hold?.division !== division) {
      this.#drop();
      this.#hold = { division, element, steps: 0 };
    }
    this.#hold.steps += (event.key === forwards ? 1 : -1) * (event.shiftKey ? stride : 1);
    this.#host.moving(division, this.#hold.steps);
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#drop(), pause);
    return true;
  }

  #drop(): void {
    clearTimeout(this.#timer);
    const hold = this.#hold;
    this.#hold = undefined;
    if (hold === undefined) return;
    if (hold.steps === 0) this.#host.cancelled();
    else this.#host.dropped(hold.division, hold.steps);
  }

  #onDown(event: PointerEvent, sheet: HTMLElement): void {
    const element = event.target instanceof Element ? event.target.closest<SVGElement>('[data-division]') : null;
    const division = element?.getAttribute('data-division');
    const scale = element?.ownerSVGElement?.getScreenCTM()?.a ?? 0;
    const pixelsPerStep = Number(element?.getAttribute('data-step')) * scale;
    if (element === null || !division || event.button !== 0 || !(pixelsPerStep > 0)) return;
    this.#drop();
    event.preventDefault();
    element.focus({ preventScroll: true });
    sheet.setPointerCapture(event.pointerId);
    this.#hold = {
      division,
      element,
      steps: 0,
      pointer: { id: event.pointerId, start: along(element, event), pixelsPerStep },
    };
  }

  #onMove(event: PointerEvent): void {
    const hold = this.#hold;
    if (hold?.pointer === undefined || hold.pointer.id !== event.pointerId) return;
    const steps = Math.round((along(hold.element, event) - hold.pointer.start) / hold.pointer.pixelsPerStep);
    if (steps === hold.steps) return;
    hold.steps = steps;
    this.#host.moving(hold.division, steps);
  }

  #onUp(event: PointerEvent): void {
    if (this.#hold?.pointer?.id === event.pointerId) this.#drop();
  }
}

function along(element: SVGElement, event: PointerEvent): number {
  return element.getAttribute('data-moves') === 'x' ? event.clientX : event.clientY;
}
