import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { evaluatePiece } from '@fettle/engine';
import { createFettleServices, DocumentEvaluator, evaluateDocument, type FettleServices } from '@fettle/language';
import { type LangiumDocument, URI } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { type Quantiles, quantiles, timesOf } from './quantiles.ts';

/** The engine alone: layout, parts and checks of the sideboard from a design that has been read. */
export interface Evaluating {
  readonly whole: Quantiles;
  readonly parts: number;
}

export async function measureEvaluating(repository: string): Promise<Evaluating> {
  const { services, document } = await openExample(repository, 'sideboard.fettle');
  const [piece] = evaluateDocument(services, document).pieces;
  if (piece === undefined) throw new Error('the sideboard holds no piece');
  const { design } = piece.evaluation;
  const parts = evaluatePiece(design).parts.length;
  return { whole: quantiles(timesOf(() => void evaluatePiece(design), 200, 500)), parts };
}

/** A wall of forty cases from patterns, from its tree to findings and parts, with nothing kept from before. */
export async function measureWall(repository: string): Promise<Quantiles> {
  const { services, document } = await openExample(repository, 'wall.fettle');
  const pieces = evaluateDocument(services, document).pieces.length;
  if (pieces !== 40) throw new Error(`the wall has ${pieces} cases, not 40`);
  return quantiles(timesOf(() => void new DocumentEvaluator(services.shared).evaluate(document), 10, 40));
}

async function openExample(
  repository: string,
  name: string,
): Promise<{ readonly services: FettleServices; readonly document: LangiumDocument }> {
  const { shared, Fettle } = createFettleServices(NodeFileSystem);
  const uri = URI.parse(pathToFileURL(join(repository, 'examples', name)).href);
  const text = readFileSync(uri.fsPath, 'utf8');
  const document = shared.workspace.LangiumDocumentFactory.fromString(text, uri);
  shared.workspace.LangiumDocuments.addDocument(document);
  await shared.workspace.DocumentBuilder.build([document], { validation: false });
  return { services: Fettle, document };
}
