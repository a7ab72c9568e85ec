import { describe, expect, test } from 'vitest';
import type { InlayHint, MarkupContent } from 'vscode-languageserver-types';
import { chest } from '../chest.ts';
import { readFixture } from '../harness/fixture.ts';
import { openFixture } from '../harness/workbench.ts';
import { sideboard, sideboardWith } from '../sideboard.ts';

/** The line each hint stands on, with the hint where it stands in brackets. */
async function hinted(source: string): Promise<{ readonly lines: string[]; readonly hints: InlayHint[] }> {
  const workbench = await openFixture(readFixture(source));
  const [document] = workbench.documents;
  if (document === undefined) throw new Error('no file');
  const text = document.textDocument.getText();
  const end = document.textDocument.positionAt(text.length);
  const hints =
    (await workbench.services.lsp.InlayHintProvider?.getInlayHints(document, {
      textDocument: { uri: document.uri.toString() },
      range: { start: { line: 0, character: 0 }, end },
    })) ?? [];
  const lines = text.split('\n');
  return {
    hints,
    lines: hints.map(({ position, label }) => {
      const line = lines[position.line] ?? '';
      return `${line.slice(0, position.character)}[${String(label)}]${line.slice(position.character)}`.trim();
    }),
  };
}

describe('computed sizes', () => {
  test('the sideboard, worked by hand: doors, and the drawer that takes the rest', async () => {
    const { lines, hints } = await hinted(sideboardWith('gap 3/32', 'gap 3/32'));
    // Else they would stand as close to the words as if they were written.
    expect(hints.every(({ paddingLeft }) => paddingLeft === true)).toBe(true);
    expect(lines).toEqual([
      // Two doors of 9-15/64", which is no mark of a ruler of 1/32".
      'doors "left" share 1[= 2 × (9-7/32" + 1/64")] {',
      'drawer "blankets" rest[= 10-5/32"]',
      'doors "right" same opening as "left"[= 2 × (9-7/32" + 1/64")] { hinges "knife 2" }',
      'drawers[assumed: clear below 1/4", clear above 1/2"] {',
    ]);
  });

  test('a face frame of which nothing is said: two of its habits beside the words, all of them where one points', async () => {
    const source = chest('drawer "a"').replace('case {', 'case { frame thick 3/4   ');
    expect(source).toContain('frame thick');
    const { hints } = await hinted(source);
    const hint = hints.find(({ label }) => String(label).includes('stiles'));
    expect(String(hint?.label)).toMatch(/^assumed: stiles \S+, top rail \S+ and 1 more$/);
    expect((hint?.tooltip as MarkupContent | undefined)?.value).toContain('bottom rail');
  });

  test('each front of a graded stack', async () => {
    // 30 − 3/4 is 29-1/4 inside; less three gaps of 1/8 leaves 28-7/8 = 2u + 1.
    const { lines } = await hinted(chest('stack graded by 1 {\ndrawer "a"\ndrawer "b"\n}'));
    expect(lines).toEqual(['drawer "a"[= 13-15/16"]', 'drawer "b"[= 14-15/16"]']);
  });

  test('a size that is written, or measured, needs none', async () => {
    const { lines } = await hinted(
      chest('stack {\ndrawer "a" front 5 high\ndrawer "b" measured front 9 high\ndrawer "c" rest\n}'),
    );
    expect(lines).toHaveLength(1);
    expect(lines[0]).toContain('"c"');
  });

  test('the terms stand in the tooltip', async () => {
    const { hints } = await hinted(chest('stack { drawer "a" front 5 high   drawer "b" rest }'));
    const [hint] = hints;
    const { value } = (hint as InlayHint).tooltip as MarkupContent;
    expect(value).toContain('height of the front:');
    expect(value).toMatch(/5" \\\(front of "a"\\\)\\: written in \[line 5\]\(file:/);
  });
});

describe('what is assumed', () => {
  test('the gap, once, at the face', async () => {
    const { lines } = await hinted(chest('drawer "a"').replace('face inset, gap 1/8', 'face inset'));
    expect(lines).toEqual(['face[assumed: gap 3/32"] inset {']);
  });

  test('nothing where it is said', async () => {
    const { lines } = await hinted(chest('drawer "a"\ndrawers { clear 1/4 below, 1/2 above }'));
    expect(lines).toEqual([]);
  });

  test('what a pattern leaves unsaid is not written into it: each piece has its own', async () => {
    const { lines } = await hinted(`
      pattern "p" {
        takes "width"
        size "width" wide, 30 high, 15 deep
        case { sides thick 3/4   bottom thick 3/4 between sides }
        face { stack { drawer "a" rest   drawer "b" rest }   fronts thick 1/2 }
      }
      piece "one" from "p" with "width" 20
    `);
    expect(lines).toEqual([]);
  });
});

test('only what lies in the range asked for', async () => {
  const workbench = await openFixture(readFixture(sideboardWith('gap 3/32', 'gap 3/32')));
  const [document] = workbench.documents;
  if (document === undefined) throw new Error('no file');
  const line = sideboard.split('\n').findIndex((each) => each.includes('"blankets" rest'));
  const hints = await workbench.services.lsp.InlayHintProvider?.getInlayHints(document, {
    textDocument: { uri: document.uri.toString() },
    range: { start: { line, character: 0 }, end: { line: line + 1, character: 0 } },
  });
  expect(hints?.map(({ label }) => label)).toEqual(['= 10-5/32"']);
});
