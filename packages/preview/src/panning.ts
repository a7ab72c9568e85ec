/** Moves the sheet under the hand: press anywhere on the drawing and drag. Touch scrolls by itself. */

/** A press that moves less than so many pixels is a click. */
const clickSlack = 4;

/** `mayPan` says of a press whether it is for the sheet to take. */
export function panByPointer(sheet: HTMLElement, mayPan: (event: PointerEvent) => boolean): void {
  let from: { readonly x: number; readonly y: number; readonly left: number; readonly top: number } | undefined;
  let panned = false;
  sheet.addEventListener('pointerdown', (event) => {
    panned = false;
    if (event.pointerType === 'touch' || event.button > 1 || !mayPan(event)) return;
    from = { x: event.clientX, y: event.clientY, left: sheet.scrollLeft, top: sheet.scrollTop };
  });
  sheet.addEventListener('pointermove', (event) => {
    if (from === undefined || event.buttons === 0) return;
    const [across, down] = [event.clientX - from.x, event.clientY - from.y];
    if (!panned && Math.hypot(across, down) < clickSlack) return;
    if (!panned) sheet.setPointerCapture(event.pointerId);
    panned = true;
    sheet.scrollLeft = from.left - across;
    sheet.scrollTop = from.top - down;
  });
  const end = () => {
    from = undefined;
  };
  sheet.addEventListener('pointerup', end);
  sheet.addEventListener('pointercancel', end);
  // What ends a drag is no click on the part below.
  sheet.addEventListener(
    'click',
    (event) => {
      if (panned) event.stopPropagation();
      panned = false;
    },
    { capture: true },
  );
}
