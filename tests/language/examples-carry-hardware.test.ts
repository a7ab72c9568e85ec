import { readdirSync, readFileSync } from 'node:fs';
import { doorSchedule, drawerSchedule, type Evaluation } from '@fettle/engine';
import { createFettleServices, evaluateDocument } from '@fettle/language';
import { URI } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { expect, test } from 'vitest';

/** Nothing that opens in an example is left without what it runs, swings or is pulled by. */

const examples = new URL('../../examples/', import.meta.url);
const withPieces = readdirSync(examples).filter((name) => !name.endsWith('shop.fettle'));

async function evaluated(name: string) {
  const { shared, Fettle } = createFettleServices(NodeFileSystem);
  const path = new URL(name, examples);
  const document = shared.workspace.LangiumDocumentFactory.fromString(readFileSync(path, 'utf8'), URI.parse(path.href));
  shared.workspace.LangiumDocuments.addDocument(document);
  await shared.workspace.DocumentBuilder.build([document], { validation: false });
  return evaluateDocument(Fettle, document);
}

/** A drawer without slides runs on what lies under its opening; whether that carries it is asked by its own finding. */
function lacking(evaluation: Evaluation): readonly string[] {
  const has = (cell: string, kinds: readonly string[]) =>
    evaluation.hardware.some((each) => each.cell === cell && kinds.includes(each.kind));
  const isOnSlides = new Set(
    evaluation.hardware.flatMap(({ kind, cell }) => (kind === 'slide' || kind === 'runner' ? [cell] : [])),
  );
  const isOnFrames = evaluation.parts.some(({ role }) => role === 'divider-rail');
  return [
    ...drawerSchedule(evaluation).flatMap(({ cell }) => [
      ...(isOnSlides.has(cell) || isOnFrames ? [] : [`${cell}: nothing to run on`]),
      ...(has(cell, ['pull']) ? [] : [`${cell}: no pull`]),
    ]),
    ...doorSchedule(evaluation).flatMap(({ cell }) => [
      ...(has(cell, ['hinge']) ? [] : [`${cell}: no hinges`]),
      ...(has(cell, ['pull']) ? [] : [`${cell}: no pull`]),
    ]),
  ].map((what) => `${evaluation.design.name} ${what}`);
}

test.each(withPieces)('%s', async (name) => {
  const { pieces, findings } = await evaluated(name);
  expect(pieces.flatMap(({ evaluation }) => lacking(evaluation))).toEqual([]);
  expect(findings.filter(({ code }) => code === 'drawers-without-slides')).toEqual([]);
  const openings = pieces.flatMap(({ evaluation }) => [
    ...drawerSchedule(evaluation),
    ...doorSchedule(evaluation),
    ...evaluation.hardware.filter(({ kind }) => kind === 'lid-support'),
  ]);
  expect(openings).not.toHaveLength(0);
});
