/** What to buy and how to cut it, as tables and drawings. */
export { cuttingTable } from './cutting-table.ts';
export { planDrawing, planOfStock, planPages } from './plan-pages.ts';
export { shoppingTable } from './shopping-table.ts';
