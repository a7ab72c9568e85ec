import type { FromPage, PageMemory, ToPage } from '@fettle/protocol';
import { Announcer } from './announcer.ts';
import { build } from './build.ts';
import type { PageState } from './page-state.ts';
import {
  graveFindings,
  partView,
  shownPlace,
  shownSheet,
  stateFromMemory,
  withCaret,
  withPicture,
  zoomed,
} from './page-state.ts';
import { buildPage } from './page-view.ts';
import { isArrow, stepTo } from './part-steps.ts';
import { patch } from './patch.ts';
import { buildOverlay } from './signs.ts';
import { applyZoom, keepMiddle } from './zooming.ts';

/** The living page: state, what the reader does, what the extension sends. Knows the extension only through `PageHost`. */
export interface PageHost {
  send(message: FromPage): void;
  remember(memory: PageMemory): void;
}

export class PicturePage {
  readonly #host: PageHost;
  readonly #view: HTMLElement;
  readonly #announcer: Announcer;
  #state: PageState;
  /** Restored once, with the first picture; afterwards the sheet keeps its own place. */
  #scroll: PageMemory['scroll'] | undefined;
  #scrollTimer: ReturnType<typeof setTimeout> | undefined;

  constructor(root: HTMLElement, memory: PageMemory, host: PageHost) {
    this.#host = host;
    this.#state = stateFromMemory(memory);
    this.#scroll = memory.scroll;
    this.#view = buildPage(this.#state);
    const region = build('div', { class: 'announcer', role: 'status', 'aria-live': 'polite' });
    this.#announcer = new Announcer(region);
    root.replaceChildren(this.#view, region);
    this.#listen();
    host.send({ kind: 'ready' });
  }

  receive(message: ToPage): void {
    switch (message.kind) {
      case 'picture': {
        const next = withPicture(this.#state, message.picture, message.anew);
        if (next === this.#state) return;
        this.#announcer.picture(message.picture);
        this.#show(next);
        this.#restoreScroll();
        return;
      }
      case 'caret': {
        const next = withCaret(this.#state, message);
        if (next === this.#state) return;
        // The caret moved on: what was chosen here before no longer is what the reader looks at.
        this.#show({ ...next, chosen: '' });
        this.#reveal(message.parts[0]);
        return;
      }
      default:
        message satisfies never;
    }
  }

  #show(state: PageState): void {
    this.#state = state;
    const wanted = buildPage(state);
    this.#keepSize(wanted);
    patch(this.#view, wanted);
    const choice = this.#view.querySelector<HTMLSelectElement>('#piece');
    if (choice !== null) choice.selectedIndex = shownPlace(state);
    this.#layOut();
    this.#remember();
  }

  get #sheet(): HTMLElement | null {
    return this.#view.querySelector<HTMLElement>('#sheet');
  }

  get #drawing(): SVGSVGElement | null {
    return this.#view.querySelector<SVGSVGElement>('#sheet > svg');
  }

  /** The new drawing comes in at the old one's size: were it smaller for a moment, the sheet would lose its scroll. */
  #keepSize(wanted: HTMLElement): void {
    const drawing = wanted.querySelector('#sheet > svg');
    const before = this.#drawing;
    if (drawing === null || before === null) return;
    for (const name of ['width', 'height']) drawing.setAttribute(name, before.getAttribute(name) ?? '100%');
  }

  /** Sizes the drawing, then lays signs and frames over it, which needs its measure on the screen. */
  #layOut(): void {
    const sheet = this.#sheet;
    const drawing = this.#drawing;
    if (sheet === null || drawing === null) return;
    applyZoom(sheet, drawing, this.#state.zoom);
    drawing.querySelector('.overlay')?.remove();
    const { lit, chosen, picture } = this.#state;
    drawing.append(buildOverlay(drawing, { findings: graveFindings(picture), lit, chosen }));
  }

  #restoreScroll(): void {
    const sheet = this.#sheet;
    if (this.#scroll === undefined || sheet === null) return;
    sheet.scrollTo(this.#scroll);
    this.#scroll = undefined;
  }

  #remember(): void {
    const uri = this.#state.picture?.uri;
    const sheet = this.#sheet;
    if (uri === undefined || sheet === null) return;
    this.#host.remember({
      uri,
      piece: this.#state.piece,
      sheet: shownSheet(this.#state)?.id ?? this.#state.sheet,
      zoom: this.#state.zoom,
      scroll: this.#scroll ?? { left: Math.round(sheet.scrollLeft), top: Math.round(sheet.scrollTop) },
      chosen: this.#state.chosen,
    });
  }

  /** Scrolls only when the part is out of sight. */
  #reveal(part: string | undefined): void {
    const element = this.#partElements().find((candidate) => candidate.getAttribute('data-part') === part);
    const still = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
    element?.scrollIntoView({ block: 'nearest', inline: 'nearest', behavior: still ? 'auto' : 'smooth' });
  }

  /** One element a part: those that can be reached by keys. */
  #partElements(): readonly Element[] {
    return [...this.#view.querySelectorAll('#sheet svg [data-part][tabindex], #sheet tr[data-part]')];
  }

  #choosePart(part: string): void {
    const { picture } = this.#state;
    const view = partView(this.#state, part);
    if (picture === undefined || view === undefined) return;
    this.#show({ ...this.#state, chosen: part, lit: [] });
    const piece = shownPlace(this.#state);
    this.#host.send({ kind: 'choose', uri: picture.uri, version: picture.version, piece, part });
    this.#announcer.chosen(`${view.label}: its words are selected in the text`);
  }

  #chooseFinding(place: number): void {
    const { picture } = this.#state;
    const finding = picture?.findings[place];
    if (picture === undefined || finding === undefined) return;
    this.#show({ ...this.#state, chosen: '', lit: finding.parts });
    this.#reveal(finding.parts[0]);
    this.#host.send({ kind: 'choose-finding', uri: picture.uri, version: picture.version, finding: place });
    this.#announcer.chosen('The words of the finding are selected in the text');
  }

  #zoom(to: number | 'fit'): void {
    const sheet = this.#sheet;
    if (sheet !== null && this.#drawing !== null) keepMiddle(sheet, () => this.#show({ ...this.#state, zoom: to }));
  }

  #act(action: string | undefined): void {
    if (action === 'zoom-in') this.#zoom(zoomed(this.#state.zoom, 'in'));
    if (action === 'zoom-out') this.#zoom(zoomed(this.#state.zoom, 'out'));
    if (action === 'zoom-fit') this.#zoom('fit');
  }

  #listen(): void {
    this.#view.addEventListener('click', (event) => this.#onClick(event));
    this.#view.addEventListener('keydown', (event) => this.#onKey(event));
    this.#view.addEventListener('change', (event) => {
      if (event.target instanceof HTMLSelectElement && event.target.id === 'piece') {
        this.#show({ ...this.#state, piece: event.target.value, chosen: '', lit: [] });
      }
    });
    this.#view.addEventListener(
      'wheel',
      (event) => {
        if (!event.ctrlKey) return;
        event.preventDefault();
        this.#act(event.deltaY < 0 ? 'zoom-in' : 'zoom-out');
      },
      { passive: false },
    );
    const sheet = this.#sheet;
    if (sheet === null) return;
    sheet.addEventListener('scroll', () => {
      clearTimeout(this.#scrollTimer);
      this.#scrollTimer = setTimeout(() => this.#remember(), 200);
    });
    new ResizeObserver(() => this.#layOut()).observe(sheet);
  }

  #onClick(event: Event): void {
    if (!(event.target instanceof Element)) return;
    const button = event.target.closest<HTMLElement>('button');
    if (button?.dataset['sheet'] !== undefined) this.#showSheet(button.dataset['sheet']);
    else if (button?.dataset['finding'] !== undefined) this.#chooseFinding(Number(button.dataset['finding']));
    else if (button?.dataset['action'] !== undefined) this.#act(button.dataset['action']);
    else {
      const part = event.target.closest('[data-part]')?.getAttribute('data-part');
      if (part) this.#choosePart(part);
    }
  }

  #showSheet(id: string): void {
    if (id === shownSheet(this.#state)?.id) return;
    this.#show({ ...this.#state, sheet: id });
    this.#sheet?.scrollTo(0, 0);
  }

  #onKey(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey || !(event.target instanceof Element)) return;
    const handled =
      event.target.getAttribute('role') === 'tab'
        ? this.#onTabKey(event.key, event.target)
        : event.target instanceof SVGElement && this.#onPartKey(event.key, event.target);
    if (handled || this.#onZoomKey(event)) event.preventDefault();
  }

  #onZoomKey(event: KeyboardEvent): boolean {
    if (event.target instanceof HTMLSelectElement) return false;
    const action = { '+': 'zoom-in', '=': 'zoom-in', '-': 'zoom-out', '0': 'zoom-fit' }[event.key];
    this.#act(action);
    return action !== undefined;
  }

  /** Tabs follow the arrows at once, as sheets are ready to be shown. */
  #onTabKey(key: string, tab: Element): boolean {
    const tabs = [...this.#view.querySelectorAll<HTMLElement>('[role=tab]')];
    const here = tabs.indexOf(tab as HTMLElement);
    const there = { ArrowRight: here + 1, ArrowLeft: here - 1, Home: 0, End: tabs.length - 1 }[key];
    const next = there === undefined ? undefined : tabs[(there + tabs.length) % tabs.length];
    if (next?.dataset['sheet'] === undefined) return false;
    this.#showSheet(next.dataset['sheet']);
    next.focus();
    return true;
  }

  #onPartKey(key: string, element: SVGElement): boolean {
    const part = element.getAttribute('data-part');
    if (part === null) return false;
    if (key === 'Enter' || key === ' ') {
      this.#choosePart(part);
      return true;
    }
    const parts = [...this.#view.querySelectorAll<SVGElement>('#sheet svg [data-part][tabindex]')];
    const standing = parts.map((what) => {
      const box = what.getBoundingClientRect();
      return { what, x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
    });
    const here = standing.find(({ what }) => what === element);
    let next: SVGElement | undefined;
    if (isArrow(key) && here !== undefined) next = stepTo(here, key, standing);
    else if (key === 'Home') next = parts[0];
    else if (key === 'End') next = parts.at(-1);
    else return false;
    if (next !== undefined) {
      for (const other of parts) other.setAttribute('tabindex', other === next ? '0' : '-1');
      next.focus();
    }
    return true;
  }
}
