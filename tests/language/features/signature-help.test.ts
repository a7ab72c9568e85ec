import { describe, expect, test } from 'vitest';
import type { SignatureHelp, SignatureHelpContext } from 'vscode-languageserver';
import { readFixture } from '../harness/fixture.ts';
import { openFixture } from '../harness/workbench.ts';

async function helpAt(source: string, context?: SignatureHelpContext): Promise<SignatureHelp | undefined> {
  const fixture = readFixture(source);
  const workbench = await openFixture(fixture);
  const document = workbench.document(fixture.caret?.file ?? '');
  return workbench.services.lsp.SignatureHelp?.provideSignatureHelp(document, {
    textDocument: { uri: document.uri.toString() },
    position: document.textDocument.positionAt(fixture.caret?.offset ?? 0),
    ...(context === undefined ? {} : { context }),
  });
}

/** Each phrase with its next word in brackets. */
async function phrases(source: string): Promise<string[]> {
  const help = await helpAt(source);
  return (help?.signatures ?? []).map(({ label, parameters, activeParameter }) => {
    const [start, end] = (parameters ?? [])[activeParameter ?? 0]?.label ?? [0, 0];
    if (typeof start !== 'number' || typeof end !== 'number') throw new Error('places are told as offsets');
    return `${label.slice(0, start)}[${label.slice(start, end)}]${label.slice(end)}`;
  });
}

const blankTyped = { triggerKind: 2, triggerCharacter: ' ', isRetrigger: false } as const;

describe('help inside a statement', () => {
  test('a phrase that has begun tells what comes next', async () => {
    expect(await phrases('piece "a" { size 60 <|> }')).toEqual(['⟨width⟩ [wide]', '⟨height⟩ [high]', '⟨depth⟩ [deep]']);
    expect(await phrases('piece "a" { case { back in groove <|> } }')).toEqual(['in groove [⟨depth⟩] deep']);
  });

  test('a number or a word that is still being typed has not been said yet', async () => {
    expect(await phrases('piece "a" { case { back in groove 1/<|> } }')).toEqual(['in groove [⟨depth⟩] deep']);
    expect(await phrases('piece "a" { case { back in gro<|> } }')).toContain('in [groove] ⟨depth⟩ deep');
  });

  test('what is to be put in is called by what it measures, and names by what they are names of', async () => {
    expect(await phrases('piece "a" { face inset { drawer "d" front <|> } }')).toEqual([
      'front [⟨height⟩] high',
      'front [⟨width⟩] wide',
    ]);
    const slides = await phrases('piece "a" { face inset { drawers { slides <|> } } }');
    expect(slides).toContain('["⟨slide⟩"]');
    expect(slides).toContain('[⟨height⟩] above lower edge of front');
    expect(await phrases('piece "a" { face inset { open "d" { shelves <|> } } }')).toContain('[⟨how many⟩] adjustable');
  });

  test('what is said already is not offered again', async () => {
    expect(await phrases('piece "a" { size 60 wide, <|> }')).toEqual(['[⟨height⟩] high', '[⟨depth⟩] deep']);
  });

  test('typing a blank shows it only inside a phrase, asking for it always', async () => {
    expect(await helpAt('piece "a" { size 60 wide <|> }', blankTyped)).toBeUndefined();
    expect(await helpAt('piece "a" { size 60 <|> }', blankTyped)).toBeDefined();
    expect(await helpAt('piece "a" { size 60 wide <|> }')).toBeDefined();
  });

  test('nothing in a comment, between statements, or in an empty text', async () => {
    expect(await helpAt('piece "a" { size 60 // thirty <|>')).toBeUndefined();
    expect(await helpAt('piece "a" { <|> }')).toBeUndefined();
    expect(await helpAt('<|>')).toBeUndefined();
  });

  test('its words say what the phrase means', async () => {
    const help = await helpAt('piece "a" { size 60 <|> }');
    expect(help?.signatures[0]?.documentation).toBe('Overall width, overhang included.');
  });
});
