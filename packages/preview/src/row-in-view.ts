/** Which row of a long table one looks at, so that it is still there when rows take another height. */

export interface RowInView {
  readonly row: Element;
  /** From the lower edge of the headings, in pixels. */
  readonly down: number;
}

/** The first row below the headings; undefined where there is no table, or one that stands at its beginning. */
export function rowInView(sheet: HTMLElement): RowInView | undefined {
  const heads = sheet.scrollTop === 0 ? undefined : sheet.querySelector('thead th')?.getBoundingClientRect();
  if (heads === undefined) return undefined;
  const under = document.elementFromPoint(sheet.getBoundingClientRect().left + 20, heads.bottom + 2);
  const at = under?.closest('#sheet tbody tr');
  const row = at?.matches('.told') ? at.previousElementSibling : at;
  return row ? { row, down: row.getBoundingClientRect().top - heads.bottom } : undefined;
}

export function bringBack(sheet: HTMLElement, { row, down }: RowInView): void {
  const heads = sheet.querySelector('thead th')?.getBoundingClientRect();
  if (heads === undefined || !row.isConnected) return;
  sheet.scrollTop += row.getBoundingClientRect().top - heads.bottom - down;
}
