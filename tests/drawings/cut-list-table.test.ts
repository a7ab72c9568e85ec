import { cutListCsv, cutListTable } from '@fettle/drawings';
import { evaluatePiece, type Figure, given, Length } from '@fettle/engine';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { drawer, place, rest, stock, written } from '../engine/design-builder.ts';
import { sideboard } from '../engine/sideboard-design.ts';
import { evaluatedSideboard, named, pieceDesign } from './pieces-to-draw.ts';

function tenths(count: number): Figure {
  return given(Length.millimetres(count, 10), place());
}

function readBack(csv: string): string[][] {
  return Papa.parse<string[]>(csv, { skipEmptyLines: true }).data;
}

describe('the cut list of the sideboard', () => {
  const evaluation = evaluatedSideboard();
  const table = cutListTable(evaluation);
  const cell = (row: (typeof table.rows)[number] | undefined, column: string): string | undefined =>
    row?.cells[table.columns.indexOf(column)];
  const rowWith = (part: string) => table.rows.find((row) => row.parts.includes(part));

  it('has every part in exactly one row, and as many marks as the quantity says', () => {
    const listed = table.rows.flatMap((row) => row.parts);
    expect([...listed].sort()).toEqual(evaluation.parts.map((part) => part.id).sort());
    for (const row of table.rows) {
      expect(row.cells).toHaveLength(table.columns.length);
      expect(cell(row, 'Quantity')).toBe(`${row.parts.length}`);
      expect(cell(row, 'Mark')?.split(', ')).toHaveLength(row.parts.length);
    }
  });

  it('puts the four door leaves in one row with the numbers worked out by hand', () => {
    const doors = rowWith('left/leaf-left');
    expect(doors?.parts).toHaveLength(4);
    expect(cell(doors, 'Length')).toBe('28-7/16"');
    expect(cell(doors, 'Width')).toBe('9-7/32" + 1/64"');
    expect(cell(doors, 'Thickness')).toBe('1/2"');
    expect(cell(doors, 'Material')).toBe('ash panel 1/2');
    expect(cell(doors, 'Grain')).toBe('length');
    expect(cell(doors, 'Notes')).toBe('');
    expect(cell(rowWith('blankets/front'), 'Width')).toBe('10-5/32"');
  });

  it('gives decimals to a metric maker, whatever the ruler', () => {
    const metric = cutListTable(
      evaluatePiece(
        pieceDesign({
          wide: tenths(8182),
          high: tenths(6000),
          inMillimetres: true,
          bare: true,
          root: drawer('a', rest),
        }),
      ),
    );
    const lengths = metric.rows.flatMap((row) => row.cells.slice(3, 6));
    expect(lengths.length).toBeGreaterThan(0);
    for (const length of lengths) expect(length).toMatch(/^(about )?\d+(\.\d{1,3})? mm$/);
    // 818.2 less two gaps of 3/32 inch, which are 4.7625 mm.
    expect(lengths).toContain('about 813.437 mm');
  });

  it('says where no material is chosen', () => {
    const bare = cutListTable(
      evaluatePiece(pieceDesign({ wide: written('20'), high: written('10'), bare: true, root: drawer('a', rest) })),
    );
    expect(bare.rows.length).toBeGreaterThan(0);
    for (const row of bare.rows) expect(row.cells[bare.columns.indexOf('Notes')]).toContain('material not chosen');
  });

  it('is read as one reads it aloud: how many, then thickness by width by length', () => {
    expect(table.columns.slice(0, 7)).toEqual(['Mark', 'Part', 'Quantity', 'Thickness', 'Width', 'Length', 'Material']);
  });

  it('comes out of the CSV as it went in', () => {
    const rows = readBack(cutListCsv(table));
    expect(rows[0]).toEqual([...table.columns]);
    expect(rows.slice(1)).toEqual(table.rows.map((row) => [...row.cells]));
    expect(cutListCsv(table).endsWith('\r\n')).toBe(true);
  });
});

describe('names that a spreadsheet would compute', () => {
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '=HYPERLINK("http://x")'])('%s gets an apostrophe', (name) => {
    const design = sideboard();
    const carcase = { ...design.carcase, top: undefined };
    const { top, ...rest } = carcase;
    expect(top).toBeUndefined();
    const sides = design.carcase.sides;
    if (sides === undefined) throw new Error('the sideboard has sides');
    const evaluation = evaluatePiece({
      ...design,
      carcase: { ...rest, sides: { ...sides, stock: stock(name, 'sheet') } },
    });
    const rows = readBack(cutListCsv(cutListTable(evaluation)));
    const materials = rows.map((row) => row[6]);
    expect(materials).toContain(`'${name}`);
    expect(rows.flat().filter((words) => /^[=+\-@\t\r]/.test(words))).toEqual([]);
  });

  it('quotes, commas, line ends and control characters stay inside one cell', () => {
    const csv = cutListCsv(cutListTable(named('a "b", c\r\n=d\u0000')));
    const rows = readBack(csv);
    for (const row of rows) expect(row).toHaveLength(11);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: this is what is looked for.
    expect(csv).not.toMatch(/[\u0000-\u0008]/);
  });
});
