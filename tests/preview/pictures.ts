import {
  type DivisionLine,
  frameOf,
  type Picture,
  type PictureFinding,
  type PictureFrame,
  type PieceView,
  type ToPage,
} from '@fettle/protocol';

/** Small pictures for the page's tests: a case with four drawers, drawn by hand so that a test can say what moves. */

export const uri = 'file:///workshop/chest.fettle';

const names = ['cards', 'dice', 'maps', 'blankets'];

/** `heights` of the drawers from the top, in units of the drawing. */
export function chest(heights: readonly number[] = [20, 20, 20, 30]): PieceView {
  let top = 10;
  const fronts = heights.map((height, at) => {
    const name = names[at] ?? `drawer ${at}`;
    const front = `<g data-part="front/${name}" tabindex="0" role="button">
      <rect class="edge" x="10" y="${top}" width="80" height="${height}" fill="none" pointer-events="all" stroke="var(--fettle-ink)"/>
      <text x="50" y="${top + height / 2}" font-size="5" text-anchor="middle" fill="var(--fettle-ink)">${name}</text></g>`;
    top += height + 1;
    return front;
  });
  const used = names.slice(0, heights.length);
  return {
    key: 'Chest',
    name: 'Chest',
    span: { start: 0, end: 400 },
    parts: used.map((name, at) => ({
      id: `front/${name}`,
      label: `drawer front "${name}", mark D${at + 1}`,
      mark: `D${at + 1}`,
      sizes: ['80"', `${heights[at]}"`, '3/4"'],
      material: name === 'maps' ? 'walnut' : 'ash',
      span: { start: 100 + at * 20, end: 115 + at * 20 },
      derivation: `Length 80": written here\nWidth ${heights[at]}": written here`,
    })),
    sheets: [
      {
        kind: 'drawing',
        id: 'elevation',
        title: 'Elevation',
        description: 'A chest seen from the front.',
        divisions: divisionsOf(heights),
        svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 120">${fronts.join('')}</svg>`,
      },
      {
        kind: 'table',
        id: 'cut-list',
        title: 'Cut list',
        columns: ['Mark', 'Part', 'Length'],
        rows: used.map((name, at) => ({
          parts: [`front/${name}`],
          cells: [`D${at + 1}`, `drawer front "${name}"`, '80"'],
        })),
      },
    ],
  };
}

/** The piece with its drawings changed. */
export function redrawn(piece: PieceView, change: (svg: string) => string): PieceView {
  return {
    ...piece,
    sheets: piece.sheets.map((sheet) => (sheet.kind === 'drawing' ? { ...sheet, svg: change(sheet.svg) } : sheet)),
  };
}

/** The lines between the drawers, in the middle of their gaps; a mark of the ruler is half a unit. */
function divisionsOf(heights: readonly number[]): readonly DivisionLine[] {
  let top = 10;
  return heights.slice(0, -1).map((height, at) => {
    top += height + 1;
    const label = `line between "${names[at]}" and "${names[at + 1]}"`;
    const sizes = `"${names[at]}" ${height}", "${names[at + 1]}" ${heights[at + 1]}"`;
    return {
      id: `${names[at]}|${names[at + 1]}`,
      label,
      moves: 'y',
      at: top - 0.5,
      from: 10,
      to: 90,
      step: 0.5,
      sizes,
    };
  });
}

/** The whole picture in one frame. */
export function frame(whole: Picture): PictureFrame {
  return frameOf(whole, undefined);
}

/** What the extension sends the page first. */
export function message(whole: Picture, anew = false, only = ''): ToPage {
  return { kind: 'picture', frame: frame(whole), anew, only };
}

export function picture(version: number, change: Partial<Picture> = {}): Picture {
  return { uri, version, readable: true, pieces: [chest()], findings: [], verdict: 'fits', ...change };
}

export const tooHigh: PictureFinding = {
  code: 'fronts-do-not-add-up',
  severity: 'error',
  sentence: 'fronts and gaps need 90", there is 80" of height: 10" too much',
  span: { start: 160, end: 175 },
  piece: 0,
  parts: ['front/blankets'],
};
