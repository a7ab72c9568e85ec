import type { DivisionMoves } from './division-moves.ts';
import { isArrow, stepTo } from './part-steps.ts';
import type { PartTip } from './part-tip.ts';
import type { ScreenPoint } from './zooming.ts';

/** What the reader can do in the page, whatever with. */
export interface PageActions {
  choosePart(part: string): void;
  chooseFinding(place: number): void;
  choosePiece(key: string): void;
  showSheet(id: string): void;
  zoom(how: 'in' | 'out' | 'fit' | 'sheet', point?: ScreenPoint): void;
  zoomToPart(part?: string): void;
  search(query: string): void;
  searchOn(direction: 1 | -1): void;
  copyTable(): void;
  /** More room for what stands below the sheet, or less. */
  taller(): void;
  export(format: 'svg' | 'png' | 'csv'): void;
  /** The plans that were found are good enough. */
  stopPlanning(): void;
  partElement(part: string | undefined): Element | undefined;
}

/** Pointer and keys turned into what the reader means by them. Knows the page's elements and nothing of its state. */
export class ReaderInput {
  readonly #view: HTMLElement;
  readonly #sheet: HTMLElement;
  readonly #actions: PageActions;
  readonly #moves: DivisionMoves;
  readonly #tip: PartTip;

  constructor(view: HTMLElement, sheet: HTMLElement, actions: PageActions, moves: DivisionMoves, tip: PartTip) {
    this.#view = view;
    this.#sheet = sheet;
    this.#actions = actions;
    this.#moves = moves;
    this.#tip = tip;
  }

  listen(): void {
    const view = this.#view;
    view.addEventListener('click', (event) => this.#onClick(event));
    view.addEventListener('dblclick', (event) => {
      const part = partAt(event);
      if (part !== undefined && event.target instanceof SVGElement) this.#actions.zoomToPart(part);
    });
    view.addEventListener('keydown', (event) => this.#onKey(event));
    view.addEventListener('change', (event) => {
      if (event.target instanceof HTMLSelectElement && event.target.id === 'piece') {
        this.#actions.choosePiece(event.target.value);
      } else if (event.target instanceof HTMLSelectElement && /^sheet-(choice|list)$/.test(event.target.id)) {
        this.#actions.showSheet(event.target.value);
      }
    });
    view.addEventListener('input', (event) => {
      if (event.target instanceof HTMLInputElement && event.target.id === 'search') {
        this.#actions.search(event.target.value);
      }
    });
    view.addEventListener(
      'wheel',
      (event) => {
        if (!event.ctrlKey || !(event.target instanceof Node) || !this.#sheet.contains(event.target)) return;
        event.preventDefault();
        this.#actions.zoom(event.deltaY < 0 ? 'in' : 'out', event);
      },
      { passive: false },
    );
    this.#listenForTip();
  }

  #listenForTip(): void {
    this.#sheet.addEventListener('pointerover', (event) => {
      const anchor = event.target instanceof Element ? event.target.closest('[data-part]') : null;
      if (anchor !== null && !this.#moves.holds && event.buttons === 0) this.#tip.pointAt(anchor);
      else this.#tip.pointAway();
    });
    this.#sheet.addEventListener('pointerleave', () => this.#tip.pointAway());
    this.#sheet.addEventListener('pointerdown', () => this.#tip.hide());
    this.#sheet.addEventListener('focusin', (event) => {
      const target = event.target instanceof Element ? event.target : undefined;
      // A click shows the same beside the list; only keys need the words here.
      if (target?.closest('[data-part]') && target.matches(':focus-visible')) this.#tip.show(target);
    });
    this.#sheet.addEventListener('focusout', () => this.#tip.hide());
  }

  #onClick(event: Event): void {
    if (!(event.target instanceof Element)) return;
    const button = event.target.closest<HTMLElement>('button');
    const { sheet, finding, action, piece } = button?.dataset ?? {};
    if (sheet !== undefined) this.#actions.showSheet(sheet);
    else if (finding !== undefined) this.#actions.chooseFinding(Number(finding));
    else if (piece !== undefined) this.#actions.choosePiece(piece);
    else if (action !== undefined) this.#act(action);
    else {
      const part = partAt(event);
      if (part !== undefined) this.#actions.choosePart(part);
    }
  }

  #act(action: string): void {
    switch (action) {
      case 'zoom-in':
        this.#actions.zoom('in');
        return;
      case 'zoom-out':
        this.#actions.zoom('out');
        return;
      case 'zoom-fit':
        this.#actions.zoom('fit');
        return;
      case 'zoom-sheet':
        this.#actions.zoom('sheet');
        return;
      case 'taller':
        this.#actions.taller();
        return;
      case 'zoom-part':
        this.#actions.zoomToPart();
        return;
      case 'stop-planning':
        this.#actions.stopPlanning();
        return;
      case 'copy-table':
        this.#actions.copyTable();
        return;
      case 'export-svg':
        this.#actions.export('svg');
        return;
      case 'export-png':
        this.#actions.export('png');
        return;
      case 'export-csv':
        this.#actions.export('csv');
        return;
      default:
    }
  }

  #onKey(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey || !(event.target instanceof Element)) return;
    const { target } = event;
    // Its Escape ends a move or takes the words away, and nothing else then.
    const handled =
      (event.key === 'Escape' && (this.#moves.cancel() || this.#tip.hide())) ||
      (target instanceof HTMLInputElement
        ? this.#onSearchKey(event, target)
        : this.#onTabKey(event.key, target) ||
          (target instanceof SVGElement && this.#onSvgKey(event, target)) ||
          this.#onSheetKey(event, target));
    if (handled) event.preventDefault();
  }

  #onSvgKey(event: KeyboardEvent, target: SVGElement): boolean {
    if (target.hasAttribute('data-division')) {
      return this.#moves.key(target, event) || this.#onDivisionStep(event.key, target);
    }
    return this.#onPartKey(event.key, target);
  }

  #onSheetKey(event: KeyboardEvent, target: Element): boolean {
    if (target instanceof HTMLSelectElement) return false;
    switch (event.key) {
      case '+':
      case '=':
        this.#actions.zoom('in');
        return true;
      case '-':
        this.#actions.zoom('out');
        return true;
      case '0':
        this.#actions.zoom('fit');
        return true;
      case '1':
        this.#actions.zoom('sheet');
        return true;
      case '/':
        this.#view.querySelector<HTMLInputElement>('#search')?.focus();
        return true;
      case 'z':
      case 'Z':
        this.#actions.zoomToPart(target.closest('[data-part]')?.getAttribute('data-part') ?? undefined);
        return true;
      case 'c':
      case 'C':
        this.#actions.copyTable();
        return true;
      default:
        return false;
    }
  }

  #onSearchKey(event: KeyboardEvent, input: HTMLInputElement): boolean {
    switch (event.key) {
      case 'Enter':
        this.#actions.searchOn(event.shiftKey ? -1 : 1);
        return true;
      case 'ArrowDown': {
        const found = this.#view.querySelector<SVGElement>('#sheet svg [data-part][tabindex="0"]');
        (found ?? this.#sheet).focus();
        return true;
      }
      case 'Escape':
        input.value = '';
        this.#actions.search('');
        this.#sheet.focus();
        return true;
      default:
        return false;
    }
  }

  /** Tabs follow the arrows at once. */
  #onTabKey(key: string, tab: Element): boolean {
    if (tab.getAttribute('role') !== 'tab') return false;
    const tabs = [...this.#view.querySelectorAll<HTMLElement>('[role=tab]')];
    const here = tabs.indexOf(tab as HTMLElement);
    const there = { ArrowRight: here + 1, ArrowLeft: here - 1, Home: 0, End: tabs.length - 1 }[key];
    const next = there === undefined ? undefined : tabs[(there + tabs.length) % tabs.length];
    if (next?.dataset['sheet'] === undefined) return false;
    this.#actions.showSheet(next.dataset['sheet']);
    next.focus();
    return true;
  }

  #onPartKey(key: string, element: SVGElement): boolean {
    const part = element.getAttribute('data-part');
    if (part === null) return false;
    if (key === 'Enter' || key === ' ') {
      this.#actions.choosePart(part);
      return true;
    }
    const parts = [...this.#view.querySelectorAll<SVGElement>('#sheet svg [data-part][tabindex]')];
    const standing = parts.map((what) => {
      const box = (what.querySelector(':scope > rect') ?? what).getBoundingClientRect();
      return { what, x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
    });
    const here = standing.find(({ what }) => what === element);
    let next: SVGElement | undefined;
    if (isArrow(key) && here !== undefined) next = stepTo(here, key, standing);
    else if (key === 'Home') next = parts[0];
    else if (key === 'End') next = parts.at(-1);
    else return false;
    if (next !== undefined) goTo(next, parts);
    return true;
  }

  #onDivisionStep(key: string, element: SVGElement): boolean {
    const lines = [...this.#view.querySelectorAll<SVGElement>('#sheet svg [data-division]')];
    const here = lines.indexOf(element);
    const there = { PageDown: here + 1, PageUp: here - 1, Home: 0, End: lines.length - 1 }[key];
    if (there === undefined) return false;
    const next = lines[(there + lines.length) % lines.length];
    if (next !== undefined) goTo(next, lines);
    return true;
  }
}

function partAt(event: Event): string | undefined {
  if (!(event.target instanceof Element)) return undefined;
  return event.target.closest('[data-part]')?.getAttribute('data-part') || undefined;
}

/** One of several that share a tab stop. */
function goTo(next: SVGElement, all: readonly SVGElement[]): void {
  for (const other of all) other.setAttribute('tabindex', other === next ? '0' : '-1');
  next.focus();
}
