import {
  cutListCsv,
  cutListTable,
  type Drawing,
  elevation,
  explodedView,
  insideElevation,
  partDrawings,
  partSheets,
  planSection,
  setupsTable,
  sideElevation,
  type Table,
  toSvg,
  verticalSection,
} from '@fettle/drawings';
import { type Evaluation, piecesTogether } from '@fettle/engine';
import { notCheckedYet } from '@fettle/findings';
import type { EvaluatedPiece } from '@fettle/language';
import { buyingFiles } from './buying-files.ts';
import { type EvaluatedText, evaluateTexts, type NamedText } from './evaluated-texts.ts';
import { evaluationOfPiece } from './evaluation-of-piece.ts';
import { fileNames } from './file-names.ts';
import type { FindingJson } from './finding-json.ts';
import { counted, findingLines, onTerminal, summaryWords } from './findings-as-text.ts';
import { jsonText } from './length-json.ts';
import { FindingReporter } from './report-findings.ts';
import { scheduleFiles } from './schedule-files.ts';
import { type ExitCode, exit, type Terminal } from './terminal.ts';
import { type FileToWrite, writeWhole } from './write-whole.ts';

/**
 * `fettle make`: the drawings, the cut list and the evaluation of each piece of a text, as files.
 *
 * While an error stands against any of the pieces nothing is written: a cut list on paper does not say later that it was
 * made of a text that did not add up, and wood is cut once. Whoever wants to see where it overflows asks for the files
 * all the same; then drawing and list say on themselves that nothing is to be built from them.
 */
export interface MakeOptions {
  readonly out: string;
  readonly evenWithErrors: boolean;
}

export async function make(named: NamedText, options: MakeOptions, terminal: Terminal): Promise<ExitCode> {
  const { texts, refusals, documents } = await evaluateTexts([named]);
  for (const { name, why } of refusals) terminal.err(onTerminal(`${name} ${why}`));
  const [text] = texts;
  if (text === undefined || refusals.length > 0) return exit.unable;

  const reporter = new FindingReporter(documents, texts);
  const findings = reporter.all(texts);
  const errors = findings.filter((finding) => finding.severity === 'error').length;
  const { pieces } = text.evaluated;
  const tellFindings = () => {
    // A note tells what was taken for granted or wants care; that something is not checked yet changes no part.
    for (const finding of findings) {
      if (finding.code !== notCheckedYet.code) terminal.err(findingLines(finding).trimEnd());
    }
    terminal.err(summaryWords(findings, 1));
  };
  if (pieces.length === 0) {
    tellFindings();
    terminal.err(onTerminal(`${fileOf(text)} holds no piece, so there is nothing to make`));
    return errors > 0 ? exit.errors : exit.unable;
  }
  if (errors > 0 && !options.evenWithErrors) {
    tellFindings();
    const stand = errors === 1 ? 'an error stands' : `${errors} errors stand`;
    terminal.err(`nothing was written: ${stand} against it; --even-with-errors writes it all the same`);
    return exit.errors;
  }

  const names = fileNames([...pieces.map((piece) => piece.name), ALL_PIECES]);
  const files = [
    ...pieces.flatMap((piece, at) => filesOfPiece(piece, names[at] ?? '', text, reporter)),
    ...filesOfAll(
      pieces.map(({ evaluation }) => evaluation),
      names.at(-1) ?? '',
      findings,
    ),
  ];
  const written = writeWhole(options.out, files);
  switch (written.kind) {
    case 'refused':
      terminal.err(onTerminal(`${written.name} ${written.why}; nothing was changed`));
      return exit.unable;
    case 'written':
      tellFindings();
      terminal.out(written.paths.map((path) => `${onTerminal(path)}\n`).join(''));
      return errors > 0 ? exit.errors : exit.clean;
    default: {
      const unknown: never = written;
      return unknown;
    }
  }
}

function filesOfPiece(
  piece: EvaluatedPiece,
  name: string,
  text: EvaluatedText,
  reporter: FindingReporter,
): readonly FileToWrite[] {
  const { evaluation } = piece;
  const findings = findingsOf(piece, text, reporter);
  const table = warned(cutListTable(evaluation), findings);
  return [
    ...drawingsOf(evaluation).map(([what, drawing]) => ({
      name: `${name}-${what}.svg`,
      content: toSvg(drawing, { standalone: true }),
    })),
    { name: `${name}-cut-list.csv`, content: cutListCsv(table) },
    { name: `${name}-setups.csv`, content: cutListCsv(warned(setupsTable(evaluation), findings)) },
    {
      name: `${name}-evaluation.json`,
      content: jsonText(evaluationOfPiece(evaluation, fileOf(text), findings)),
    },
    ...scheduleFiles(evaluation, name, (each) => warned(each, findings)),
    ...buyingFiles(evaluation, name, (each) => warned(each, findings)),
  ];
}

const ALL_PIECES = 'All pieces';

/** What several pieces take when they are bought and cut together; none for a text of one. */
function filesOfAll(
  evaluations: readonly Evaluation[],
  name: string,
  findings: readonly FindingJson[],
): readonly FileToWrite[] {
  const together = piecesTogether(ALL_PIECES, evaluations);
  return together === undefined ? [] : buyingFiles(together, name, (each) => warned(each, findings));
}

/** A piece without parts has its elevation alone, which says what is missing. */
function drawingsOf(evaluation: Evaluation): readonly (readonly [what: string, drawing: Drawing])[] {
  const front = ['elevation', elevation(evaluation)] as const;
  if (evaluation.parts.length === 0) return [front];
  return [
    front,
    ['inside', insideElevation(evaluation)],
    ['side', sideElevation(evaluation)],
    ['section', verticalSection(evaluation)],
    ['plan', planSection(evaluation)],
    ['exploded', explodedView(evaluation)],
    ...partSheets(evaluation).map((_, at) => [`parts-${at + 1}`, partDrawings(evaluation, at + 1)] as const),
  ];
}

/** Those that stand within the piece, and those that stand in no piece at all. */
function findingsOf(piece: EvaluatedPiece, text: EvaluatedText, reporter: FindingReporter): readonly FindingJson[] {
  const { pieces, findings } = text.evaluated;
  const home = text.document.uri.toString();
  const concerned = findings.filter(({ uri, start }) => {
    const holder = pieces.find(({ range }) => uri === home && range.start <= start && start < range.end);
    return holder === undefined || holder === piece;
  });
  return reporter.of(text.evaluated, concerned);
}

/** A list that is not to be cut from says so in its first row. */
function warned(table: Table, findings: readonly FindingJson[]): Table {
  const errors = findings.filter((finding) => finding.severity === 'error').length;
  if (errors === 0) return table;
  const words = `Do not cut from this list: ${counted(errors, 'error')} against the piece`;
  const at = Math.max(table.columns.indexOf('Notes'), 0);
  const cells = table.columns.map((_, column) => (column === at ? words : ''));
  return { ...table, rows: [{ parts: [], cells }, ...table.rows] };
}

function fileOf(text: EvaluatedText): string {
  return text.name === '-' ? text.path : text.name;
}
