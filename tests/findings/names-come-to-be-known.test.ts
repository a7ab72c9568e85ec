import { evaluateDocument } from '@fettle/language';
import { expect, test } from 'vitest';
import { openFixture, services } from '../language/harness/workbench.ts';

/** A name that nothing declared is known as soon as another file declares it, though the piece itself stays as it was. */
test('a stock that the shop file gains is found by a piece that was worked out without it', async () => {
  const shop = 'sheet "ash" nominal 3/4, actual 3/4, 96 long, 48 wide\n';
  const piece =
    'use "shop.fettle"\npiece "a" { size 20 wide, 30 high, 12 deep   case { sides "oak"   bottom "ash" } }\n';
  const workbench = await openFixture({
    files: [
      { name: 'piece.fettle', text: piece },
      { name: 'shop.fettle', text: shop },
    ],
  });
  const codes = () =>
    evaluateDocument(workbench.services, workbench.document('piece.fettle')).findings.map((each) => each.code);
  expect(codes()).toEqual(['unknown-name']);

  const { LangiumDocuments, LangiumDocumentFactory, DocumentBuilder } = services.shared.workspace;
  const { uri } = workbench.document('shop.fettle');
  LangiumDocuments.deleteDocument(uri);
  const gained = LangiumDocumentFactory.fromString(
    `${shop}sheet "oak" nominal 3/4, actual 3/4, 96 long, 48 wide\n`,
    uri,
  );
  LangiumDocuments.addDocument(gained);
  await DocumentBuilder.build([gained]);
  expect(codes()).toEqual([]);
});
