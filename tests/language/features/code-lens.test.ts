import { expect, test } from 'vitest';
import { chest } from '../chest.ts';
import { readFixture } from '../harness/fixture.ts';
import { openFixture } from '../harness/workbench.ts';

async function lenses(source: string) {
  const workbench = await openFixture(readFixture(source));
  const [document] = workbench.documents;
  if (document === undefined) throw new Error('no file');
  const found = await workbench.services.lsp.CodeLensProvider?.provideCodeLens(document, {
    textDocument: { uri: document.uri.toString() },
  });
  return (found ?? []).map(({ range, command }) => ({ words: document.textDocument.getText(range), command }));
}

test('each piece tells its parts and whether it fits; choosing it shows its picture', async () => {
  // Two sides, a bottom and a drawer front; of its box nothing is said.
  const [lens, ...others] = await lenses(chest('drawer "only"'));
  expect(others).toEqual([]);
  expect(lens?.words).toBe('piece');
  expect(lens?.command?.title).toMatch(/^4 parts · fits, 1 note$/);
  expect(lens?.command?.command).toBe('fettle.showPicture');
  expect(lens?.command?.arguments?.[1]).toBe('chest');
});

test('what is wrong stands in the lens of its own piece', async () => {
  const wrong = chest('stack { drawer front 20 high   drawer front 20 high }').replace('"chest"', '"wrong"');
  const titles = (await lenses(`${chest('drawer "only"')}\n${wrong}`)).map(({ command }) => command?.title);
  expect(titles[0]).toMatch(/fits, 1 note$/);
  // 29-1/4" inside, less three gaps of 1/8", leaves 28-7/8" for 40".
  expect(titles[1]).toMatch(/· 1 finding: 11-1\/8" too much$/);
});

test('a text without a piece has none', async () => {
  expect(await lenses('sheet "ash" actual 3/4')).toEqual([]);
});
