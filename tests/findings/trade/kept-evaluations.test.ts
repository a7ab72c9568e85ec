import { evaluateDocument } from '@fettle/language';
import { expect, test } from 'vitest';
import { openFixture, services, type Workbench } from '../../language/harness/workbench.ts';

/** An evaluation is kept for as long as what was read of the shop stays the same, and no longer. */

const piece = `use "shop.fettle"
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    back thick 1/4 in groove 1/4 deep, 1/2 in from back edge
  }
}
`;

/** The shop file as it is after an edit. */
async function change(workbench: Workbench, text: string): Promise<void> {
  const { workspace } = services.shared;
  const { uri } = workbench.document('shop.fettle');
  workspace.LangiumDocuments.deleteDocument(uri);
  const edited = workspace.LangiumDocumentFactory.fromString(text, uri);
  workspace.LangiumDocuments.addDocument(edited);
  await workspace.DocumentBuilder.build([edited], { validation: true });
}

const evaluator = services.evaluation.DocumentEvaluator;

async function opened(shop: string): Promise<Workbench> {
  return openFixture({
    files: [
      { name: 'piece.fettle', text: piece },
      { name: 'shop.fettle', text: shop },
    ],
  });
}

async function costOf(workbench: Workbench, shop: string) {
  const before = evaluator.evaluations;
  await change(workbench, shop);
  const { findings } = evaluateDocument(services, workbench.document('piece.fettle'));
  return { evaluations: evaluator.evaluations - before, codes: findings.map(({ code }) => code) };
}

test('another cutter is another evaluation', async () => {
  const workbench = await opened('cutter "bit" cuts 1/4 wide\n');
  const changed = await costOf(workbench, 'cutter "bit" cuts 1/2 wide\n');
  expect(changed).toEqual({ evaluations: 1, codes: ['no-cutter-for-groove'] });
  const mended = await costOf(workbench, 'cutter "bit" cuts 1/4 wide\n');
  expect(mended).toEqual({ evaluations: 1, codes: [] });
});

test('so are the same words that mean something else', async () => {
  const named = (width: string) => `let "narrow" be ${width}\ncutter "bit" cuts "narrow" wide\n`;
  const workbench = await opened(named('1/4'));
  expect(await costOf(workbench, named('1/2'))).toEqual({ evaluations: 1, codes: ['no-cutter-for-groove'] });
});

test('a line above them is none, and neither is hardware that nothing asked for', async () => {
  const workbench = await opened('cutter "bit" cuts 1/4 wide\nhinge "h" doors at most 20 wide\n');
  const moved = await costOf(workbench, '\n\ncutter "bit" cuts 1/4 wide\nhinge "h" doors at most 20 wide\n');
  expect(moved).toEqual({ evaluations: 0, codes: [] });
  const other = await costOf(workbench, '\n\ncutter "bit" cuts 1/4 wide\nhinge "h" doors at most 18 wide\n');
  expect(other).toEqual({ evaluations: 0, codes: [] });
});
