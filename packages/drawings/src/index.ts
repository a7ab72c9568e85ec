/** Drawings and tables from an evaluation: drawing primitives, then SVG and CSV. Knows nothing of text, editors or files. */
export { cutListCsv, cutListTable, type Table, type TableRow } from './cut-list-table.ts';
export { describeElevation } from './describe.ts';
export { elevation } from './elevation.ts';
export { insideElevation } from './elevations/inside-elevation.ts';
export { sideElevation } from './elevations/side-elevation.ts';
export { explodedView } from './exploded/exploded-view.ts';
export { materialWords } from './material-words.ts';
export { partDrawings, partSheets } from './part-drawing/part-drawings.ts';
export * from './plans/index.ts';
export * from './primitives.ts';
export * from './schedules/index.ts';
export { type OpeningToCut, openingsToCut, openingToCutFirst } from './sections/openings.ts';
export { planSection } from './sections/plan-section.ts';
export { verticalSection } from './sections/vertical-section.ts';
export { setupsTable } from './setups-table.ts';
export { shown, unitWords } from './shown-lengths.ts';
export { type SvgOptions, toSvg } from './svg.ts';
