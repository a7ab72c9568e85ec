/** Sizes the drawing in its scrolling sheet. Zoom is a multiple of the size at which all of it is seen. */

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
  const { clientWidth, clientHeight } = sheet;
  const { width, height } = svg.viewBox.baseVal;
  if (width <= 0 || height <= 0) return;
  const pixelsPerUnit = Math.min(clientWidth / width, clientHeight / height) * zoom;
  svg.setAttribute('width', String(Math.max(clientWidth, width * pixelsPerUnit)));
  svg.setAttribute('height', String(Math.max(clientHeight, height * pixelsPerUnit)));
}

/** Runs `change`, then scrolls so that the middle of the sheet shows what it showed before. */
export function keepMiddle(sheet: HTMLElement, change: () => void): void {
  const across = (sheet.scrollLeft + sheet.clientWidth / 2) / Math.max(1, sheet.scrollWidth);
  const down = (sheet.scrollTop + sheet.clientHeight / 2) / Math.max(1, sheet.scrollHeight);
  change();
  sheet.scrollLeft = across * sheet.scrollWidth - sheet.clientWidth / 2;
  sheet.scrollTop = down * sheet.scrollHeight - sheet.clientHeight / 2;
}
