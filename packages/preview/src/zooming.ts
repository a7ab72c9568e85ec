import type { Fit } from './fitting.ts';

/**
 * Sizes and moves the drawing in its scrolling sheet. Zoom is a multiple of the size at which the whole sheet is seen;
 * `fit` shows what the drawing says one looks at, without the sheet's furniture.
 */

/** Pixels for a unit of the drawing when all of it is seen; 0 when it has no size. */
function fittingScale(sheet: HTMLElement, svg: SVGSVGElement): number {
  const { width, height } = svg.viewBox.baseVal;
  return width > 0 && height > 0 ? Math.min(sheet.clientWidth / width, sheet.clientHeight / height) : 0;
}

/** The zoom at which the drawing is shown now. */
export function zoomNow(sheet: HTMLElement, svg: SVGSVGElement): number {
  return (svg.getScreenCTM()?.a ?? 1) / Math.max(1e-9, fittingScale(sheet, svg));
}

/**
 * Applies `zoom`; with `fit` what that comes to, where there is anything to fit. Only attributes are set: a strict
 * content policy allows no inline style.
 */
export function applyZoom(sheet: HTMLElement, svg: SVGSVGElement, zoom: number | 'fit', fit?: Fit): void {
  if (zoom === 'fit' && fit === undefined) {
    svg.setAttribute('width', '100%');
    svg.setAttribute('height', '100%');
    return;
  }
  const { width, height } = svg.viewBox.baseVal;
  const pixelsPerUnit = zoom === 'fit' ? (fit?.pixelsPerUnit ?? 0) : fittingScale(sheet, svg) * zoom;
  if (!(pixelsPerUnit > 0)) return;
  svg.setAttribute('width', String(Math.max(sheet.clientWidth, width * pixelsPerUnit)));
  svg.setAttribute('height', String(Math.max(sheet.clientHeight, height * pixelsPerUnit)));
}

/** Scrolls to what is fitted: its middle to the middle of the sheet, or its beginning to the upper left corner. */
export function scrollToFit(sheet: HTMLElement, svg: SVGSVGElement, { shown, isRead, pixelsPerUnit }: Fit): void {
  const toScreen = svg.getScreenCTM();
  if (toScreen === null) return;
  const wide = isRead ? Math.max(shown.width, sheet.clientWidth / pixelsPerUnit) : shown.width;
  const left = isRead && wide > shown.width ? shown.x - (wide - shown.width) / 2 : shown.x;
  const start = new DOMPoint(left, shown.y).matrixTransform(toScreen);
  if (!isRead) {
    const end = new DOMPoint(shown.x + shown.width, shown.y + shown.height).matrixTransform(toScreen);
    centre(sheet, new DOMRect(start.x, start.y, end.x - start.x, end.y - start.y));
    return;
  }
  const corner = sheet.getBoundingClientRect();
  sheet.scrollLeft += start.x - corner.left - sheet.clientLeft;
  sheet.scrollTop += start.y - corner.top - sheet.clientTop;
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
