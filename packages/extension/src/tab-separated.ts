import type { SheetView } from '@fettle/protocol';

/**
 * A table as text that spreadsheets take from the clipboard: cells apart by tabs, a line a row. What would end a cell
 * becomes a space, and what a spreadsheet would take for a formula gets an apostrophe before it.
 */
export function tabSeparated(table: Extract<SheetView, { kind: 'table' }>): string {
  const cell = (words: string) => {
    const plain = words.replace(/[\t\r\n\v\f\u0085\u2028\u2029]+/g, ' ');
    return /^[=+\-@]/.test(plain.trimStart()) ? `'${plain}` : plain;
  };
  const lines = [table.columns, ...table.rows.map(({ cells }) => cells)];
  return `${lines.map((cells) => cells.map(cell).join('\t')).join('\n')}\n`;
}
