/**
 * The command line: check and make, without an editor. Glue only; whatever is worth a unit test lives further in. The
 * bundle starts at main.ts.
 */
export { runCommandLine } from './command-line.ts';
export type { EvaluationJson } from './evaluation-json.ts';
export type { CheckJson, FindingJson } from './finding-json.ts';
export type { LengthJson } from './length-json.ts';
export type { SchedulesJson } from './schedules-json.ts';
export type { ShoppingJson } from './shopping-json.ts';
export type { Terminal } from './terminal.ts';
