/**
 * Sizes and moves the drawing in its scrolling sheet. Zoom is a multiple of the size at which the whole sheet is seen;
 * `fit` shows what the drawing says one looks at, without the sheet's furniture.
 */

/** Pixels for a unit of the drawing when all of it is seen; 0 when it has no size. */
function fittingScale(sheet: HTMLElement, svg: SVGSVGElement): number {
  const { width, height } = svg.viewBox.baseVal;
  return width > 0 && height > 0 ? Math.min(sheet.clientWidth / width, sheet.clientHeight / height) : 0;
}

/** In the drawing's own units. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Room around what is looked at, as a share of it. */
const margin = 0.03;
/** What is looked at may shrink to this share of its frame before the frame follows. */
const slack = 0.8;

/** What one looks at, with a little room around it; undefined for a drawing that is looked at whole. */
function focusOf(svg: SVGSVGElement): Frame | undefined {
  const [x, y, width, height] = (svg.getAttribute('data-focus') ?? '').split(' ').map(Number);
  if (x === undefined || y === undefined || width === undefined || height === undefined) return undefined;
  if (![x, y].every(Number.isFinite) || !(width > 0 && height > 0)) return undefined;
  const room = margin * Math.max(width, height);
  return { x: x - room, y: y - room, width: width + 2 * room, height: height + 2 * room };
}

/** The frame to fit: the one before as long as it still serves, so that nothing jumps while figures grow and shrink. */
export function frameFor(svg: SVGSVGElement, before: Frame | undefined): Frame | undefined {
  const focus = focusOf(svg);
  if (focus === undefined || before === undefined) return focus;
  const room = (margin * Math.max(focus.width, focus.height)) / 2;
  const holds =
    before.x <= focus.x + room &&
    before.y <= focus.y + room &&
    focus.x + focus.width - room <= before.x + before.width &&
    focus.y + focus.height - room <= before.y + before.height;
  const serves = focus.width >= before.width * slack || focus.height >= before.height * slack;
  return holds && serves ? before : focus;
}

/** The zoom at which the drawing is shown now. */
export function zoomNow(sheet: HTMLElement, svg: SVGSVGElement): number {
  return (svg.getScreenCTM()?.a ?? 1) / Math.max(1e-9, fittingScale(sheet, svg));
}

/**
 * Applies `zoom`; with `fit` to `frame`, where there is one. Only attributes are set: a strict content policy allows no
 * inline style.
 */
export function applyZoom(sheet: HTMLElement, svg: SVGSVGElement, zoom: number | 'fit', frame?: Frame): void {
  if (zoom === 'fit' && frame === undefined) {
    svg.setAttribute('width', '100%');
    svg.setAttribute('height', '100%');
    return;
  }
  const { width, height } = svg.viewBox.baseVal;
  const pixelsPerUnit =
    zoom === 'fit' && frame !== undefined
      ? Math.min(sheet.clientWidth / frame.width, sheet.clientHeight / frame.height)
      : fittingScale(sheet, svg) * Number(zoom);
  if (!(pixelsPerUnit > 0)) return;
  svg.setAttribute('width', String(Math.max(sheet.clientWidth, width * pixelsPerUnit)));
  svg.setAttribute('height', String(Math.max(sheet.clientHeight, height * pixelsPerUnit)));
}

/** Scrolls so that the middle of `frame` lies in the middle of the sheet. */
export function centreFrame(sheet: HTMLElement, svg: SVGSVGElement, { x, y, width, height }: Frame): void {
  const toScreen = svg.getScreenCTM();
  if (toScreen === null) return;
  const one = new DOMPoint(x, y).matrixTransform(toScreen);
  const other = new DOMPoint(x + width, y + height).matrixTransform(toScreen);
  centre(sheet, new DOMRect(one.x, one.y, other.x - one.x, other.y - one.y));
}

export interface ScreenPoint {
  readonly clientX: number;
  readonly clientY: number;
}

/** Runs `change`, then scrolls so that the drawing lies under `point` as it did; without a point, under the middle. */
export function keepPoint(sheet: HTMLElement, change: () => void, point?: ScreenPoint): void {
  const box = sheet.getBoundingClientRect();
  const x = point === undefined ? sheet.clientWidth / 2 : point.clientX - box.left - sheet.clientLeft;
  const y = point === undefined ? sheet.clientHeight / 2 : point.clientY - box.top - sheet.clientTop;
  const across = (sheet.scrollLeft + x) / Math.max(1, sheet.scrollWidth);
  const down = (sheet.scrollTop + y) / Math.max(1, sheet.scrollHeight);
  change();
  sheet.scrollLeft = across * sheet.scrollWidth - x;
  sheet.scrollTop = down * sheet.scrollHeight - y;
}

/** How much of the sheet a part takes up that one has zoomed to. */
const partOfSheet = 0.6;

/** The zoom at which something that is now `width` by `height` pixels large fills most of the sheet; at least 1. */
export function zoomFor(
  sheet: HTMLElement,
  svg: SVGSVGElement,
  { width, height }: { readonly width: number; readonly height: number },
  most: number,
): number {
  const now = zoomNow(sheet, svg);
  const factor = Math.min(
    (sheet.clientWidth * partOfSheet) / Math.max(1, width),
    (sheet.clientHeight * partOfSheet) / Math.max(1, height),
  );
  return Math.min(most, Math.max(1, now * factor));
}

/** Scrolls so that the middle of `box`, as it lies on the screen, comes to the middle of the sheet. */
export function centre(sheet: HTMLElement, box: DOMRect): void {
  const frame = sheet.getBoundingClientRect();
  sheet.scrollLeft += (box.left + box.right) / 2 - (frame.left + frame.right) / 2;
  sheet.scrollTop += (box.top + box.bottom) / 2 - (frame.top + frame.bottom) / 2;
}
