import { evaluateDocument, type PlacedFinding } from '@fettle/language';
import type { LangiumDocument } from 'langium';
import { expect } from 'vitest';
import { readFixture } from './fixture.ts';
import { type Mark, readMarks, writeMark } from './marks.ts';
import { fileName, openFixture, type Workbench } from './workbench.ts';

/**
 * Every finding of every file has its mark, and every mark its finding. Related places are compared as soon as one of
 * them is marked anywhere in the fixture.
 */
export async function check(source: string): Promise<Workbench> {
  const fixture = readFixture(source);
  const workbench = await openFixture(fixture);
  const problems = compare(workbench);
  if (problems.length > 0) expect.fail(problems.join('\n\n'));
  // What the squiggles are made of is what was compared.
  for (const document of workbench.documents) {
    const own = evaluateDocument(workbench.services, document).findings.filter((each) => isIn(document, each));
    expect(document.diagnostics?.map((each) => each.message)).toEqual(own.map((each) => each.sentence));
  }
  return workbench;
}

interface Found extends Omit<Mark, 'endsLater'> {
  readonly file: string;
}

function compare(workbench: Workbench): string[] {
  const texts = new Map(
    workbench.documents.map((each) => [fileName(each.uri.toString()), each.textDocument.getText()]),
  );
  const read = new Map([...texts].map(([name, text]) => [name, readMarks(text)]));
  const relatedShown = [...read.values()].some(({ marks }) => marks.some((mark) => mark.kind === 'related'));
  const left = workbench.documents.flatMap((document) =>
    evaluateDocument(workbench.services, document).findings.flatMap((placed) => foundPlaces(placed, relatedShown)),
  );
  const problems: string[] = [];
  for (const [file, { marks }] of read) {
    for (const mark of marks) {
      const at = left.findIndex((found) => found.file === file && answers(mark, found, texts.get(file) ?? ''));
      if (at >= 0) left.splice(at, 1);
      else problems.push(`marked in ${file}, and not found:\n${writeMark(texts.get(file) ?? '', mark, signOf(mark))}`);
    }
  }
  for (const found of left) {
    if (found.severity === 'note' && read.get(found.file)?.notesShown === false) continue;
    problems.push(
      `found in ${found.file}, and not marked:\n${writeMark(texts.get(found.file) ?? '', found, signOf(found))}`,
    );
  }
  return problems;
}

function foundPlaces(placed: PlacedFinding, relatedShown: boolean): Found[] {
  const { code, severity, sentence: words, start, end, uri } = placed;
  const own: Found = { kind: 'finding', file: fileName(uri), severity, code, words, start, end };
  if (!relatedShown) return [own];
  const related = placed.related.map(
    (each): Found => ({
      kind: 'related',
      file: fileName(each.uri),
      severity: 'also',
      code,
      words: each.sentence,
      start: each.start,
      end: each.end,
    }),
  );
  return [own, ...related];
}

function answers(mark: Mark, found: Found, text: string): boolean {
  const samePlace = mark.endsLater
    ? mark.start === found.start && text.slice(mark.end, found.end).includes('\n')
    : mark.start === found.start && mark.end === found.end;
  return (
    samePlace &&
    mark.kind === found.kind &&
    mark.severity === found.severity &&
    mark.code === found.code &&
    found.words.includes(mark.words)
  );
}

function signOf({ kind }: Pick<Mark, 'kind'>): string {
  return kind === 'related' ? '-' : '^';
}

function isIn(document: LangiumDocument, placed: PlacedFinding): boolean {
  return placed.uri === document.uri.toString();
}
