import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { evaluatePiece } from '@fettle/engine';
import { createFettleServices, evaluateDocument } from '@fettle/language';
import { URI } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { type Quantiles, quantiles, timesOf } from './quantiles.ts';

/** The engine alone: layout, parts and checks of the sideboard from a design that has been read. */
export interface Evaluating {
  readonly whole: Quantiles;
  readonly parts: number;
}

export async function measureEvaluating(repository: string): Promise<Evaluating> {
  const { shared, Fettle } = createFettleServices(NodeFileSystem);
  const uri = URI.parse(pathToFileURL(join(repository, 'examples/sideboard.fettle')).href);
  const text = readFileSync(uri.fsPath, 'utf8');
  const document = shared.workspace.LangiumDocumentFactory.fromString(text, uri);
  shared.workspace.LangiumDocuments.addDocument(document);
  await shared.workspace.DocumentBuilder.build([document], { validation: false });
  const [piece] = evaluateDocument(Fettle, document).pieces;
  if (piece === undefined) throw new Error('the sideboard holds no piece');
  const { design } = piece.evaluation;
  const parts = evaluatePiece(design).parts.length;
  return { whole: quantiles(timesOf(() => void evaluatePiece(design), 200, 500)), parts };
}
