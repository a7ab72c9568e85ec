import { readFileSync } from 'node:fs';
import { partDrawings, partSheets, toSvg } from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';
import { createFettleServices, evaluateDocument } from '@fettle/language';
import { URI } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { describe, expect, it } from 'vitest';
import { cutWords, headWords } from '../../../packages/drawings/src/part-drawing/cut-words.ts';

/** What the sheets of parts say of the examples, against what the bench needs. Worked out by hand; no published source. */

async function pieceOf(name: string): Promise<Evaluation> {
  const { shared, Fettle } = createFettleServices(NodeFileSystem);
  const path = new URL(`../../../examples/${name}.fettle`, import.meta.url);
  const document = shared.workspace.LangiumDocumentFactory.fromString(readFileSync(path, 'utf8'), URI.parse(path.href));
  shared.workspace.LangiumDocuments.addDocument(document);
  await shared.workspace.DocumentBuilder.build([document], { validation: false });
  const [piece] = evaluateDocument(Fettle, document).pieces;
  if (piece === undefined) throw new Error(`${name} holds no piece`);
  return piece.evaluation;
}

/** All lines of all sheets. */
function linesOf(evaluation: Evaluation): readonly string[] {
  const sheets = partSheets(evaluation).map((_, at) => toSvg(partDrawings(evaluation, at + 1)));
  return sheets.flatMap((svg) => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, words]) => words ?? ''));
}

describe('the sideboard', () => {
  it('has left doors and right doors: the knob hole makes them mirror images', async () => {
    const sideboard = await pieceOf('sideboard');
    const doors = partSheets(sideboard)
      .flat()
      .filter(({ frame }) => frame.part.role === 'door');
    const labels = (parts: readonly { readonly label: string }[]) => parts.map(({ label }) => label.split(' ')[0]);
    expect(doors.map(({ same, mirrored }) => [labels(same), labels(mirrored)])).toEqual([
      [
        ['left', 'left'],
        ['right', 'right'],
      ],
    ]);
  });
  it('tells holes by their middles, rows by their pitch, and edging that goes all round in one word', async () => {
    const lines = linesOf(await pieceOf('sideboard'));
    expect(lines.some((line) => /pin holes .* apart/.test(line))).toBe(true);
    expect(lines.some((line) => line.includes('all round'))).toBe(true);
    // Only a partition has slides on one face and pins on the other: three screws to each of four drawers.
    expect(lines.filter((line) => /in the other face/.test(line) && /screw hole/.test(line))).toEqual([
      '12 screw holes ⌀ 1/8", 1/2" deep in the other face',
    ]);
  });
});

it.each(['chest', 'linen-press', 'pantry', 'sideboard'])('%s has all its words to the last', async (name) => {
  const piece = await pieceOf(name);
  const lines = linesOf(piece);
  expect(lines.filter((line) => line.includes('…'))).toEqual([]);
  // What does not fit into one line goes on in the next.
  const said = lines.join(' ');
  for (const alike of partSheets(piece).flat()) {
    for (const words of [headWords(alike), ...cutWords(alike, piece)]) expect(said).toContain(words);
  }
});

describe('the chest', () => {
  it('has sockets for its dividers 7/8" wide at the bottom and 3/32" less at the mouth, which is what is dimensioned', async () => {
    const lines = linesOf(await pieceOf('chest'));
    // 3/8" deep at 1 in 8 is 3/64" on either side: 7/8 less 3/32 is 25/32.
    expect(
      lines.some((line) => line.startsWith('5 dovetail sockets 25/32" to 7/8" wide, 3/8" deep, 2-1/4" long')),
    ).toBe(true);
    // 3/64" on a ruler of 1/32" is a mark and half of one.
    expect(lines).toContain('4 tail cheeks 3/8" long, 1/32" + 1/64" deep');
  });
});
