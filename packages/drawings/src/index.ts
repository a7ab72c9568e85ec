/** Drawings and tables from an evaluation: drawing primitives, then SVG and CSV. Knows nothing of text, editors or files. */
export { cutListCsv, cutListTable, type Table, type TableRow } from './cut-list-table.ts';
export { describeElevation } from './describe.ts';
export { elevation } from './elevation.ts';
export * from './primitives.ts';
export { shown, unitWords } from './shown-lengths.ts';
export { type SvgOptions, toSvg } from './svg.ts';
