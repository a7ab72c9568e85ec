/** Sizes and moves the drawing in its scrolling sheet. Zoom is a multiple of the size at which all of it is seen. */

/** Pixels for a unit of the drawing when all of it is seen; 0 when it has no size. */
function fittingScale(sheet: HTMLElement, svg: SVGSVGElement): number {
  const { width, height } = svg.viewBox.baseVal;
  return width > 0 && height > 0 ? Math.min(sheet.clientWidth / width, sheet.clientHeight / height) : 0;
}

/**
 * Applies `zoom`, keeping the point in the middle of the sheet where it is. Only attributes are set: a strict content
 * policy allows no inline style.
 */
export function applyZoom(sheet: HTMLElement, svg: SVGSVGElement, zoom: number | 'fit'): void {
  if (zoom === 'fit') {
    svg.setAttribute('width', '100%');
    svg.setAttribute('height', '100%');
    return;
  }
  const { width, height } = svg.viewBox.baseVal;
  const pixelsPerUnit = fittingScale(sheet, svg) * zoom;
  if (pixelsPerUnit <= 0) return;
  svg.setAttribute('width', String(Math.max(sheet.clientWidth, width * pixelsPerUnit)));
  svg.setAttribute('height', String(Math.max(sheet.clientHeight, height * pixelsPerUnit)));
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
  const now = (svg.getScreenCTM()?.a ?? 1) / Math.max(1e-9, fittingScale(sheet, svg));
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
