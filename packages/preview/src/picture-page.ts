import type { FromPage, PageMemory, ToPage } from '@fettle/protocol';
import { Announcer } from './announcer.ts';
import { build } from './build.ts';
import { DivisionMoves } from './division-moves.ts';
import { canFit, type Fit, fitFor, setAside } from './fitting.ts';
import { LastGood } from './last-good.ts';
import { LineTalk } from './line-talk.ts';
import type { PageState } from './page-state.ts';
import {
  foundParts,
  graveFindings,
  mostZoom,
  partView,
  shownPiece,
  shownPlace,
  shownSheet,
  stateFromMemory,
  whyStale,
  withCaret,
  withPicture,
  zoomed,
} from './page-state.ts';
import { buildPage } from './page-view.ts';
import { panByPointer } from './panning.ts';
import { PartTip, type TipWords } from './part-tip.ts';
import { patch } from './patch.ts';
import { PngRenderer } from './png.ts';
import { type PageActions, ReaderInput } from './reader-input.ts';
import { placeReadout } from './readout-place.ts';
import { bringBack, type RowInView, rowInView } from './row-in-view.ts';
import { buildOverlay, severityWords } from './signs.ts';
import { TabRow } from './tab-row.ts';
import { outlineExplained } from './tip-outline.ts';
import { applyZoom, centre, keepPoint, type ScreenPoint, scrollToFit, zoomFor, zoomNow } from './zooming.ts';

/** The living page: state, what the reader does, what the extension sends. Knows the extension only through `PageHost`. */
export interface PageHost {
  send(message: FromPage): void;
  remember(memory: PageMemory): void;
}

interface Fitted {
  readonly sheet: string;
  readonly fit: Fit;
  readonly room: string;
  readonly left: number;
  readonly top: number;
}

/** A sheet that is being drawn may take so long before that is said, in milliseconds. */
const patience = 400;
/** How long something that was done stands there to be read, in milliseconds. */
const toldFor = 6000;
/** On a page narrower than this long words stand below their row of a table, in pixels. */
const narrow = 1000;

export class PicturePage implements PageActions {
  readonly #host: PageHost;
  readonly #view: HTMLElement;
  readonly #announcer: Announcer;
  readonly #tip: PartTip;
  readonly #tabs: TabRow;
  readonly #png: PngRenderer;
  readonly #lines: LineTalk;
  readonly #memory: LastGood;
  #state: PageState;
  /** Restored once, with the first picture; afterwards the sheet keeps its own place. */
  #scroll: PageMemory['scroll'] | undefined;
  #looked = '';
  /** What `fit` shows, of which sheet, in how much room, and where the sheet was scrolled to for it. */
  #fitted: Fitted | undefined;
  /** The row of a table that the reader scrolled to. */
  #row: RowInView | undefined;
  /** Another sheet was asked for: it begins at its beginning, or where it fits, as soon as it is there. */
  #isTurned = false;
  /** The latest version of the text that the page has heard of, and when it will have waited long enough for it. */
  #checkTimer: ReturnType<typeof setTimeout> | undefined;
  #waitTimer: ReturnType<typeof setTimeout> | undefined;
  #toldTimer: ReturnType<typeof setTimeout> | undefined;

  constructor(root: HTMLElement, memory: PageMemory, host: PageHost) {
    this.#host = host;
    this.#state = stateFromMemory(memory);
    this.#png = new PngRenderer((message) => host.send(message));
    this.#lines = new LineTalk({
      state: () => this.#state,
      show: (state) => this.#show(state),
      send: (message) => host.send(message),
      tell: (sentence) => this.#tell(sentence),
    });
    this.#memory = new LastGood(
      memory.last,
      () => this.#state,
      () => this.#remember(),
    );
    // A page that was never there before has no place to go back to.
    this.#scroll = memory.uri === '' ? undefined : memory.scroll;
    this.#view = buildPage(this.#state);
    this.#tabs = new TabRow(this.#view);
    this.#tip = new PartTip(
      (part) => this.#tipWords(part),
      () => this.#outlineExplained(),
    );
    const region = build('div', { class: 'announcer', role: 'status', 'aria-live': 'polite' });
    this.#announcer = new Announcer(region);
    root.replaceChildren(this.#view, this.#tip.element, region);
    this.#listen();
    if (this.#state.picture !== undefined) this.#show(this.#state);
    host.send({ kind: 'ready' });
  }

  receive(message: ToPage): void {
    switch (message.kind) {
      case 'picture':
        this.#receivePicture(message);
        return;
      case 'caret': {
        const next = withCaret(this.#state, message);
        if (next === this.#state) return;
        // The caret moved on: what was chosen here before no longer is what the reader looks at.
        this.#show({ ...next, chosen: '' });
        this.#reveal(message.parts[0]);
        return;
      }
      case 'edited':
        this.#waitFor(message.uri, message.version);
        return;
      case 'piece':
        this.choosePiece(message.piece);
        return;
      case 'server':
        this.#show({ ...this.#state, served: message.running });
        if (!message.running) this.#announcer.chosen(whyStale(this.#state) ?? '');
        return;
      case 'division':
        this.#lines.hear(message);
        return;
      case 'told':
        this.#tell(message.sentence);
        return;
      case 'draw-png':
        void this.#png.render(message);
        return;
      case 'cancel-png':
        this.#png.cancel(message.request);
        return;
      default:
        message satisfies never;
    }
  }

  /**
   * A picture that is older than the text says so, unless the new one comes at once, as it mostly does. Where a line was
   * let go it says so without waiting: whoever has just moved it reads the figures now.
   */
  #waitFor(uri: string, version: number): void {
    clearTimeout(this.#checkTimer);
    const say = (): void => {
      const { picture, served } = this.#state;
      if (served && picture?.uri === uri && picture.version < version) this.#show({ ...this.#state, checking: true });
    };
    if (this.#state.move === undefined) this.#checkTimer = setTimeout(say, patience);
    else say();
  }

  #receivePicture({ frame, anew, only }: Extract<ToPage, { kind: 'picture' }>): void {
    const next = withPicture(this.#state, frame, anew, only);
    if (next === undefined) {
      this.#host.send({ kind: 'ready' });
      return;
    }
    const isNews = next.picture !== this.#state.picture;
    if (!isNews) {
      this.#state = next;
      return;
    }
    this.#show(next);
    if (next.picture !== undefined) this.#announcer.picture(next.picture);
    this.#restoreScroll();
  }

  #show(wished: PageState): void {
    const isComing = shownSheet(wished)?.kind === 'later';
    const state = { ...wished, waited: isComing && wished.waited, narrow: this.#isNarrow() };
    this.#state = state;
    if (!isComing) this.#endWait();
    else if (!state.waited)
      this.#waitTimer ??= setTimeout(() => this.#show({ ...this.#state, waited: true }), patience);
    const wanted = buildPage(state);
    this.#keepSize(wanted);
    patch(this.#view, wanted);
    // What the reader has chosen in a list stays chosen there, whatever its attributes come to say.
    for (const list of this.#view.querySelectorAll('select')) {
      list.selectedIndex = [...list.options].findIndex((option) => option.hasAttribute('selected'));
    }
    this.#tabs.layOut();
    if (!isComing && this.#isTurned) {
      this.#isTurned = false;
      this.#fitted = undefined;
      this.sheet?.scrollTo(0, 0);
    }
    this.#layOut();
    placeReadout(this.#view);
    this.#tip.refresh(this.#view);
    this.#look();
    this.#remember();
  }

  /** Long words of tables go below their rows, or back beside the figures. */
  #turnColumns(sheet: HTMLElement): void {
    const row = this.#row;
    this.#show(this.#state);
    if (row !== undefined) bringBack(sheet, row);
  }

  #isNarrow(): boolean {
    return this.#view.clientWidth < narrow;
  }

  #endWait(): void {
    clearTimeout(this.#waitTimer);
    this.#waitTimer = undefined;
  }

  get sheet(): HTMLElement | null {
    return this.#view.querySelector<HTMLElement>('#sheet');
  }

  get drawing(): SVGSVGElement | null {
    return this.#view.querySelector<SVGSVGElement>('#sheet > svg');
  }

  /** The new drawing comes in at the old one's size: were it smaller for a moment, the sheet would lose its scroll. */
  #keepSize(wanted: HTMLElement): void {
    const drawing = wanted.querySelector('#sheet > svg');
    const before = this.drawing;
    if (drawing === null || before === null) return;
    for (const name of ['width', 'height']) drawing.setAttribute(name, before.getAttribute(name) ?? '100%');
  }

  /** Sizes the drawing, then lays signs and frames over it, which needs its measure on the screen. */
  #layOut(): void {
    const sheet = this.sheet;
    const drawing = this.drawing;
    if (sheet !== null && drawing !== null) {
      this.#applyZoom(sheet, drawing);
      drawing.querySelector('.overlay')?.remove();
      const { lit, chosen } = this.#state;
      const found = foundParts(this.#state).map(({ id }) => id);
      drawing.append(buildOverlay(drawing, { findings: graveFindings(this.#state), lit, chosen, found }));
    }
    this.#outlineExplained();
  }

  #outlineExplained(): void {
    if (this.sheet !== null) outlineExplained(this.sheet, this.#tip.part);
  }

  /** Scrolls only where `fit` has come to show something else, or in another room: what the reader pans stays. */
  #applyZoom(sheet: HTMLElement, drawing: SVGSVGElement): void {
    const { zoom } = this.#state;
    // What stands there meanwhile is another sheet.
    if (shownSheet(this.#state)?.kind === 'later') return;
    const shown = `${shownPiece(this.#state)?.key} ${shownSheet(this.#state)?.id}`;
    const before = this.#fitted?.sheet === shown ? this.#fitted : undefined;
    if (zoom !== 'fit') {
      applyZoom(sheet, drawing, zoom);
      this.#fitted = undefined;
      return;
    }
    const room = `${sheet.clientWidth} ${sheet.clientHeight}`;
    const kept = before?.room === room ? before : undefined;
    const fit = fitFor(sheet, drawing, kept?.fit);
    applyZoom(sheet, drawing, zoom, fit);
    if (fit === undefined) {
      this.#fitted = undefined;
      return;
    }
    if (kept?.fit !== fit) {
      scrollToFit(sheet, drawing, fit);
      this.#fitted = { sheet: shown, fit, room, left: sheet.scrollLeft, top: sheet.scrollTop };
    }
    setAside(sheet, drawing, this.#isPanned());
  }

  /** The reader has scrolled away from what `fit` showed. */
  #isPanned(): boolean {
    const { sheet } = this;
    if (this.#fitted === undefined || sheet === null) return false;
    const { left, top } = this.#fitted;
    return Math.hypot(sheet.scrollLeft - left, sheet.scrollTop - top) > 2;
  }

  #restoreScroll(): void {
    const sheet = this.sheet;
    if (this.#scroll === undefined || sheet === null) return;
    sheet.scrollTo(this.#scroll);
    this.#scroll = undefined;
  }

  /** Says which sheet of which piece is looked at, so that no other is drawn. */
  #look(): void {
    const { picture } = this.#state;
    const piece = shownPiece(this.#state)?.key;
    if (picture === undefined || piece === undefined || this.#state.received === undefined) return;
    const sheet = shownSheet(this.#state)?.id ?? '';
    const looked = JSON.stringify([picture.uri, piece, sheet]);
    if (looked === this.#looked) return;
    this.#looked = looked;
    this.#host.send({ kind: 'look', uri: picture.uri, piece, sheet });
  }

  #remember(): void {
    const uri = this.#state.picture?.uri;
    const sheet = this.sheet;
    if (uri === undefined || sheet === null) return;
    const last = this.#memory.of(shownPiece(this.#state)?.key);
    this.#host.remember({
      uri,
      piece: shownPiece(this.#state)?.key ?? this.#state.piece,
      sheet: shownSheet(this.#state)?.id ?? this.#state.sheet,
      zoom: this.#state.zoom,
      scroll: this.#scroll ?? { left: Math.round(sheet.scrollLeft), top: Math.round(sheet.scrollTop) },
      chosen: this.#state.chosen,
      only: this.#state.only,
      tall: this.#state.tall,
      ...(last === undefined ? {} : { last }),
    });
    this.#memory.keepSoon();
  }

  /** Scrolls only when the part is out of sight. */
  #reveal(part: string | undefined): void {
    const element = this.partElement(part);
    const still = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
    element?.scrollIntoView({ block: 'nearest', inline: 'nearest', behavior: still ? 'auto' : 'smooth' });
  }

  /** The one element of a part that can be reached by keys, or its row in a table. */
  partElement(part: string | undefined): Element | undefined {
    const candidates = this.#view.querySelectorAll('#sheet svg [data-part][tabindex], #sheet tr[data-part]');
    return [...candidates].find((candidate) => candidate.getAttribute('data-part') === part);
  }

  choosePart(part: string): void {
    const { picture } = this.#state;
    const view = partView(this.#state, part);
    if (picture === undefined || view === undefined) return;
    this.#show({ ...this.#state, chosen: part, lit: [] });
    const piece = shownPlace(this.#state);
    this.#host.send({ kind: 'choose', uri: picture.uri, version: picture.version, piece, part });
    this.#announcer.chosen(`${view.label}: its words are selected in the text`);
  }

  chooseFinding(place: number): void {
    const { picture } = this.#state;
    const finding = picture?.findings[place];
    if (picture === undefined || finding === undefined) return;
    this.#show({ ...this.#state, chosen: '', lit: finding.parts });
    this.#reveal(finding.parts[0]);
    this.#host.send({ kind: 'choose-finding', uri: picture.uri, version: picture.version, finding: place });
    this.#announcer.chosen('The words of the finding are selected in the text');
  }

  choosePiece(key: string): void {
    this.#show({ ...this.#state, piece: key, chosen: '', lit: [] });
  }

  showSheet(id: string): void {
    if (id === shownSheet(this.#state)?.id) return;
    this.#tip.hide();
    this.#isTurned = true;
    // What was told is of the sheet that one leaves.
    this.#show({ ...this.#state, sheet: id, told: '' });
  }

  taller(): void {
    this.#show({ ...this.#state, tall: !this.#state.tall });
  }

  zoom(how: 'in' | 'out' | 'fit' | 'sheet', point?: ScreenPoint): void {
    const { sheet, drawing } = this;
    if (sheet === null || drawing === null) return;
    const hasFrame = canFit(drawing);
    if (how === 'fit' || (how === 'sheet' && !hasFrame)) {
      // Asked for anew: what was panned comes back.
      this.#fitted = undefined;
      this.#show({ ...this.#state, zoom: 'fit' });
      return;
    }
    const now = this.#state.zoom === 'fit' ? (hasFrame ? zoomNow(sheet, drawing) : 1) : this.#state.zoom;
    const wished = how === 'sheet' ? 1 : zoomed(now, how);
    const to = wished === 1 && !hasFrame ? 'fit' : wished;
    keepPoint(sheet, () => this.#show({ ...this.#state, zoom: to }), point);
  }

  /** Until the part, the chosen one unless another is named, fills most of the sheet. */
  zoomToPart(part: string = this.#state.chosen || (this.#state.lit[0] ?? '')): void {
    const sheet = this.sheet;
    const drawing = this.drawing;
    const area = () => {
      const element = this.partElement(part);
      return (element?.querySelector(':scope > rect') ?? element)?.getBoundingClientRect();
    };
    const before = area();
    if (sheet === null || drawing === null || before === undefined) return;
    const zoom = zoomFor(sheet, drawing, before, mostZoom);
    this.#show({ ...this.#state, zoom: zoom < 1.01 ? 'fit' : zoom });
    const after = area();
    if (after !== undefined) centre(sheet, after);
  }

  search(query: string): void {
    this.#show({ ...this.#state, query, chosen: query === '' ? this.#state.chosen : '' });
  }

  /** The next of what was found, or the one before; the text's own caret stays where it is. */
  searchOn(direction: 1 | -1): void {
    const found = foundParts(this.#state);
    if (found.length === 0) {
      if (this.#state.query !== '') this.#announcer.chosen('No part is called so');
      return;
    }
    const here = found.findIndex(({ id }) => id === this.#state.chosen);
    const at = here < 0 ? (direction === 1 ? 0 : found.length - 1) : (here + direction + found.length) % found.length;
    const part = found[at];
    if (part === undefined) return;
    this.#show({ ...this.#state, chosen: part.id, lit: [] });
    this.#reveal(part.id);
    const unseen = this.partElement(part.id) === undefined ? '; it is not on this sheet' : '';
    this.#announcer.chosen(`${at + 1} of ${found.length}: ${part.label}${unseen}`);
  }

  copyTable(): void {
    const { picture } = this.#state;
    const sheet = shownSheet(this.#state);
    if (picture === undefined || sheet?.kind !== 'table') return;
    const { uri, version } = picture;
    this.#host.send({ kind: 'copy-table', uri, version, piece: shownPlace(this.#state), sheet: sheet.id });
  }

  stopPlanning(): void {
    const { picture } = this.#state;
    if (picture === undefined) return;
    const { uri, version } = picture;
    this.#host.send({ kind: 'stop-planning', uri, version, piece: shownPlace(this.#state) });
    this.#announcer.chosen('Planning stops; the best plans so far stay');
  }

  export(format: 'svg' | 'png' | 'csv'): void {
    const { picture } = this.#state;
    const sheet = shownSheet(this.#state);
    if (picture === undefined || sheet === undefined) return;
    const { uri, version } = picture;
    this.#host.send({ kind: 'export', uri, version, piece: shownPlace(this.#state), sheet: sheet.id, format });
  }

  #tell(sentence: string): void {
    this.#announcer.chosen(sentence);
    this.#show({ ...this.#state, told: sentence });
    clearTimeout(this.#toldTimer);
    this.#toldTimer = setTimeout(() => this.#show({ ...this.#state, told: '' }), toldFor);
  }

  #tipWords(part: string): TipWords | undefined {
    const view = partView(this.#state, part);
    if (view === undefined) return undefined;
    const wrong = graveFindings(this.#state).filter(({ finding }) => finding.parts.includes(part));
    // What the sizes are made of; what that is made of in its turn stands below once the part is chosen.
    const sizes = view.derivation.split('\n').filter((line) => !/^\s/.test(line));
    const lines = [
      ...wrong.map(({ finding, number }) => `${severityWords[finding.severity]} ${number}: ${finding.sentence}`),
      ...sizes,
    ];
    return { title: view.label, lines: lines.filter(Boolean).join('\n') };
  }

  #listen(): void {
    const sheet = this.sheet;
    if (sheet === null) return;
    const moves = new DivisionMoves(sheet, {
      moving: (division, steps) => {
        this.#tip.hide();
        this.#lines.moving(division, steps);
      },
      dropped: (division, steps) => this.#lines.dropped(division, steps),
      cancelled: () => this.#lines.ended(),
    });
    new ReaderInput(this.#view, sheet, this, moves, this.#tip).listen();
    this.#tabs.listen();
    panByPointer(sheet, (event) => {
      const target = event.target instanceof Element ? event.target : undefined;
      return this.drawing !== null && target?.closest('[data-division]') === null;
    });
    let timer: ReturnType<typeof setTimeout> | undefined;
    sheet.addEventListener('scroll', () => {
      this.#tip.hide();
      this.#row = rowInView(sheet);
      if (this.#fitted !== undefined && this.drawing !== null) setAside(sheet, this.drawing, this.#isPanned());
      clearTimeout(timer);
      timer = setTimeout(() => this.#remember(), 200);
    });
    new ResizeObserver(() => {
      if (this.#state.narrow !== this.#isNarrow()) this.#turnColumns(sheet);
      this.#tabs.layOut();
      this.#layOut();
    }).observe(sheet);
  }
}
