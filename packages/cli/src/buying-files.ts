import { cutListCsv, cuttingTable, planDrawing, planPages, shoppingTable, type Table, toSvg } from '@fettle/drawings';
import { buyingRequest, type Evaluation, planBuyingAtOnce } from '@fettle/engine';
import { jsonText } from './length-json.ts';
import { shoppingJson } from './shopping-json.ts';
import type { FileToWrite } from './write-whole.ts';

/** What to buy for a piece and how to cut it, as files; none for a piece without parts. */
export function buyingFiles(
  evaluation: Evaluation,
  name: string,
  warned: (table: Table) => Table,
): readonly FileToWrite[] {
  const { parts, machines, design } = evaluation;
  if (parts.length === 0) return [];
  const plan = planBuyingAtOnce(buyingRequest(parts, machines ?? [], design.units));
  return [
    { name: `${name}-shopping-list.csv`, content: cutListCsv(warned(shoppingTable(evaluation, plan))) },
    { name: `${name}-shopping-list.json`, content: jsonText(shoppingJson(evaluation, plan)) },
    { name: `${name}-cuts.csv`, content: cutListCsv(warned(cuttingTable(evaluation, plan))) },
    ...planPages(plan).map((_, at) => ({
      name: `${name}-cutting-${at + 1}.svg`,
      content: toSvg(planDrawing(evaluation, plan, at + 1), { standalone: true }),
    })),
  ];
}
