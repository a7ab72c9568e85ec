import { readFileSync } from 'node:fs';
import { type BuyingPlan, buyingRequest, type Evaluation, planBuyingAtOnce } from '@fettle/engine';
import { createFettleServices, evaluateDocument } from '@fettle/language';
import { EmptyFileSystem, URI } from 'langium';
import { NodeFileSystem } from 'langium/node';

/** The pieces of an example, or of a text, as the engine makes them of their words. */
export async function piecesOfExample(name: string): Promise<readonly Evaluation[]> {
  const path = new URL(`../../../../examples/${name}.fettle`, import.meta.url);
  const { shared, Fettle } = createFettleServices(NodeFileSystem);
  const document = shared.workspace.LangiumDocumentFactory.fromString(readFileSync(path, 'utf8'), URI.parse(path.href));
  shared.workspace.LangiumDocuments.addDocument(document);
  await shared.workspace.DocumentBuilder.build([document], { validation: false });
  return evaluateDocument(Fettle, document).pieces.map(({ evaluation }) => evaluation);
}

export async function pieceOfText(text: string): Promise<Evaluation> {
  const { shared, Fettle } = createFettleServices(EmptyFileSystem);
  const uri = URI.parse('file:///piece.fettle');
  const document = shared.workspace.LangiumDocumentFactory.fromString(text, uri);
  shared.workspace.LangiumDocuments.addDocument(document);
  await shared.workspace.DocumentBuilder.build([document], { validation: false });
  const [piece] = evaluateDocument(Fettle, document).pieces;
  if (piece === undefined) throw new Error('the text holds no piece');
  return piece.evaluation;
}

export function planned({ parts, machines, design }: Evaluation): BuyingPlan {
  return planBuyingAtOnce(buyingRequest(parts, machines ?? [], design.units));
}
