/**
 * The row of tabs as it lies on the screen: whether all of it has room, and that the tab of what is shown is in view.
 * Knows nothing of sheets.
 */

/** How much of a tab's neighbour is shown along, in pixels: one sees that there is more. */
const peek = 28;

export class TabRow {
  readonly #view: HTMLElement;
  #revealed = '';
  /** Nobody has scrolled away from the tab of what is shown. */
  #stays = true;

  constructor(view: HTMLElement) {
    this.#view = view;
  }

  listen(): void {
    // Neither event of a row can be had before there is a row.
    this.#view.addEventListener('scroll', (event) => event.target === this.#row && this.#scrolled(), { capture: true });
    this.#view.addEventListener(
      'wheel',
      (event) => {
        const row = this.#row;
        if (row === null || event.ctrlKey || !(event.target instanceof Node) || !row.contains(event.target)) return;
        if (row.scrollWidth <= row.clientWidth || event.deltaX !== 0) return;
        event.preventDefault();
        row.scrollLeft += event.deltaY;
      },
      { passive: false },
    );
  }

  get #row(): HTMLElement | null {
    return this.#view.querySelector<HTMLElement>('[role=tablist]');
  }

  /** After every change of the tabs or of the room they have. */
  layOut(): void {
    const row = this.#row;
    const holder = row?.parentElement;
    if (row === null || !holder) return;
    // Measured against all the room there is, so that the list which comes and goes by it changes nothing of it.
    holder.toggleAttribute('data-overflows', row.scrollWidth > holder.clientWidth);
    this.#reveal(row);
    this.#mark();
  }

  /** Only when another is shown, or the room is another: whoever scrolls the row may look around in it. */
  #reveal(row: HTMLElement): void {
    const tab = row.querySelector<HTMLElement>('[role=tab][aria-selected=true]');
    const now = `${tab?.id} ${row.clientWidth} ${row.scrollWidth}`;
    if (tab === null || (now === this.#revealed && !this.#stays)) return;
    this.#revealed = now;
    this.#stays = true;
    const left = tab.offsetLeft - row.offsetLeft;
    const most = left - peek;
    const least = left + tab.offsetWidth + peek - row.clientWidth;
    row.scrollLeft = Math.min(Math.max(row.scrollLeft, least), most);
  }

  #scrolled(): void {
    const row = this.#row;
    const tab = row?.querySelector<HTMLElement>('[role=tab][aria-selected=true]');
    if (row !== null && tab) {
      const left = tab.offsetLeft - row.offsetLeft - row.scrollLeft;
      this.#stays = left > -1 && left + tab.offsetWidth < row.clientWidth + 1;
    }
    this.#mark();
  }

  /** There are more tabs before, or after. */
  #mark(): void {
    const row = this.#row;
    if (row === null) return;
    row.toggleAttribute('data-before', row.scrollLeft > 1);
    row.toggleAttribute('data-after', row.scrollLeft + row.clientWidth < row.scrollWidth - 1);
  }
}
