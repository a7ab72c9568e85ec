import { selectionRanges } from '@fettle/language';
import { describe, expect, test } from 'vitest';
import type { SelectionRange } from 'vscode-languageserver-types';
import { readFixture } from '../harness/fixture.ts';
import { openFixture } from '../harness/workbench.ts';

/** What a selection at the caret grows to, step by step. */
async function steps(source: string): Promise<string[]> {
  const fixture = readFixture(source);
  const workbench = await openFixture(fixture);
  const document = workbench.document(fixture.caret?.file ?? '');
  const position = document.textDocument.positionAt(fixture.caret?.offset ?? 0);
  const found: string[] = [];
  let at: SelectionRange | undefined = selectionRanges(document, [position])[0];
  for (; at !== undefined; at = at.parent) found.push(document.textDocument.getText(at.range));
  return found;
}

describe('a selection grows', () => {
  test('from a word by its phrase and its statement to the piece', async () => {
    expect(await steps('piece "a" { size 60 wi<|>de, 34 high }')).toEqual([
      'wide',
      '60 wide',
      'size 60 wide, 34 high',
      ' size 60 wide, 34 high ',
      'piece "a" { size 60 wide, 34 high }',
    ]);
  });

  test('by the statement with its body and all between the same braces', async () => {
    expect(await steps('piece "a" { face { stack gra<|>ded by 1 { drawer }   open } }')).toEqual([
      'graded',
      'graded by 1',
      'stack graded by 1',
      'stack graded by 1 { drawer }',
      'stack graded by 1 { drawer }   open',
      ' stack graded by 1 { drawer }   open ',
      'face { stack graded by 1 { drawer }   open }',
      ' face { stack graded by 1 { drawer }   open } ',
      'piece "a" { face { stack graded by 1 { drawer }   open } }',
    ]);
  });

  test('from a blank between statements', async () => {
    expect(await steps('piece "a" { size 60 wide <|>  case { } }\n')).toEqual([
      'size 60 wide   case { }',
      ' size 60 wide   case { } ',
      'piece "a" { size 60 wide   case { } }',
      'piece "a" { size 60 wide   case { } }\n',
    ]);
  });

  test('in an empty text and behind its end there is one step', async () => {
    expect(await steps('<|>')).toEqual(['']);
  });
});
