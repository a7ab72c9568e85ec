/** Puts the words about a line that is being moved beside it, so that the eye need not leave it. */

/** From the line to its words, in pixels. */
const distance = 12;

export function placeReadout(view: HTMLElement): void {
  const readout = view.querySelector<HTMLElement>('.readout.near');
  const line = view.querySelector('.division.moving .ghost') ?? view.querySelector('.division.moving .line');
  const sheet = view.querySelector('#sheet')?.getBoundingClientRect();
  if (readout === null || line === null || sheet === undefined) return;
  const { left, right, top, bottom, width, height } = line.getBoundingClientRect();
  const { offsetWidth, offsetHeight } = readout;
  const isLying = width >= height;
  // At the end of a line that lies, above one that stands; where there is no room, at its other end.
  const beyond = isLying ? right + distance : top - distance - offsetHeight;
  const before = isLying ? left - distance - offsetWidth : bottom + distance;
  const across = isLying ? (top + bottom - offsetHeight) / 2 : (left + right - offsetWidth) / 2;
  const fits = isLying ? beyond + offsetWidth <= sheet.right : beyond >= sheet.top;
  const along = fits ? beyond : before;
  const kept = (place: number, size: number, low: number, high: number) => Math.max(low, Math.min(place, high - size));
  readout.style.left = `${kept(isLying ? along : across, offsetWidth, sheet.left, sheet.right)}px`;
  readout.style.top = `${kept(isLying ? across : along, offsetHeight, sheet.top, sheet.bottom)}px`;
}
