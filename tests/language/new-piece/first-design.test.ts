import { Length } from '@fettle/engine';
import {
  createFettleServices,
  evaluateDocument,
  type FirstDesign,
  makeNewPiece,
  type NewPieceAnswers,
  nextQuestion,
} from '@fettle/language';
import fc from 'fast-check';
import { URI } from 'langium';
import { describe, expect, test } from 'vitest';

/** Whatever one answers, the piece that is written is sound, fits the place, and is laid out as the formatter would. */

const { shared, Fettle } = createFettleServices();
let folders = 0;

/** The texts as they would lie in a folder. */
async function open(files: Readonly<Record<string, string>>) {
  const folder = `file:///new-piece-${++folders}/`;
  const { DocumentBuilder, LangiumDocumentFactory, LangiumDocuments } = shared.workspace;
  const documents = Object.entries(files).map(([name, text]) =>
    LangiumDocumentFactory.fromString(text, URI.parse(folder + name)),
  );
  for (const document of documents) LangiumDocuments.addDocument(document);
  await DocumentBuilder.build(documents, { validation: false, eagerLinking: false });
  const [first] = documents;
  if (first === undefined) throw new Error('no file');
  const evaluated = evaluateDocument(Fettle, first);
  const edits = await Fettle.lsp.Formatter?.formatDocument(first, {
    textDocument: { uri: first.uri.toString() },
    options: { tabSize: 2, insertSpaces: true },
  });
  await DocumentBuilder.update(
    [],
    documents.map(({ uri }) => uri),
  );
  return { ...evaluated, edits: edits ?? [] };
}

function designOf(answers: NewPieceAnswers): FirstDesign {
  const next = nextQuestion(answers, 'inches-32');
  if (next.kind === 'ask') throw new Error(`${next.question.id} is asked again`);
  return next.design;
}

const contents = ['papers', 'clothes', 'boxes', 'books'] as const;
const subsets = Array.from({ length: 15 }, (_, index) => contents.filter((_each, bit) => ((index + 1) >> bit) & 1));
const rulers = ['inches-32', 'inches-64', 'inches-16', 'mm-1', 'mm-half'] as const;
const households = ['adults', 'children', 'seated'] as const;
const statures = ['low', 'side', 'chest', 'tall', 'full'] as const;

/** Sizes of places in whole units of 1/16" or half millimetres, from the smallest that is accepted to large rooms. */
const answers = fc
  .record({
    ruler: fc.constantFrom(...rulers),
    holds: fc.constantFrom(...subsets),
    people: fc.constantFrom(...households),
    stature: fc.constantFrom(...statures),
    width: fc.integer({ min: 13 * 16, max: 200 * 16 }),
    height: fc.integer({ min: 14 * 16, max: 130 * 16 }),
    depth: fc.integer({ min: 9 * 16, max: 40 * 16 }),
  })
  .map(({ depth, height, ruler, width, ...rest }) => {
    const said = (sixteenths: number) =>
      ruler.startsWith('inches')
        ? `${Math.floor(sixteenths / 16)}${sixteenths % 16 === 0 ? '' : `-${sixteenths % 16}/16`}`
        : `${Math.round((sixteenths / 16) * 25.4 * 2) / 2}`;
    return { name: 'Test piece', ruler, ...rest, width: said(width), height: said(height), depth: said(depth) };
  });

async function expectSound(given: NewPieceAnswers) {
  const next = nextQuestion(given, 'inches-32');
  // A place too small for what it must hold is asked about again; then there is nothing to write.
  if (next.kind === 'ask') return next.question.id;
  const { design } = next;
  const made = await makeNewPiece(design, new Map());
  const files = { [made.piece.name]: made.piece.text, ...(made.shop && { [made.shop.name]: made.shop.text }) };
  const { edits, findings, pieces, readable } = await open(files);
  const told = findings
    .filter(({ severity }) => severity !== 'note')
    .map(({ code, sentence }) => `${code}: ${sentence}`);
  expect(told, made.piece.text).toEqual([]);
  expect(readable).toBe(true);
  expect(edits, made.piece.text).toEqual([]);
  const [piece] = pieces;
  if (piece === undefined) throw new Error('there is no piece');
  expect(piece.name).toBe('Test piece');
  expect(piece.evaluation.parts.length).toBeGreaterThan(5);
  // What it must hold has its kind of space.
  const labels = piece.evaluation.parts.map(({ label }) => label).join('\n');
  const { holds } = design;
  expect(labels.includes('drawer front'), made.piece.text).toBe(holds.includes('papers') || holds.includes('clothes'));
  expect(labels.includes('door'), made.piece.text).toBe(holds.includes('boxes'));
  expect(made.piece.text.includes('open "'), made.piece.text).toBe(holds.includes('books'));
  // Drawers run on something, and whatever opens has what it hangs on and what it is opened by.
  const { hardware, parts } = piece.evaluation;
  const kindsOn = (id: string) => new Set(hardware.flatMap(({ kind, on }) => (on.includes(id) ? [kind] : [])));
  for (const { id, role, label, cell } of parts) {
    const kinds = kindsOn(id);
    if (role === 'door')
      expect([label, kinds.has('hinge'), kinds.has('pull')], made.piece.text).toEqual([label, true, true]);
    if (role === 'drawer-front') expect([label, kinds.has('pull')], made.piece.text).toEqual([label, true]);
    if (role === 'drawer-side')
      expect([label, hardware.some((each) => each.kind === 'slide' && each.cell === cell)], made.piece.text).toEqual([
        label,
        true,
      ]);
  }
  // Real sizes, read back from the parts: nothing stands out of the place.
  for (const part of piece.evaluation.parts) {
    for (const [axis, room] of [
      ['x', design.place.width],
      ['y', design.place.height],
      ['z', design.place.depth],
    ] as const) {
      expect(part.box[axis].size.length.isPositive(), `${part.label} ${axis}`).toBe(true);
      expect(part.box[axis].end.length.compare(room), `${part.label} ${axis}`).toBeLessThanOrEqual(0);
    }
  }
  return undefined;
}

describe('the text of a new piece', () => {
  test.each(subsets.map((holds) => [holds.join(' and '), holds] as const))(
    'holding %s: sound for every household, stature and ruler in a usual place',
    async (_, holds) => {
      let written = 0;
      for (const ruler of rulers) {
        const [width, height, depth] = ruler.startsWith('inches') ? ['48', '96', '20'] : ['1200', '2400', '500'];
        for (const people of households) {
          for (const stature of statures) {
            const given = { name: 'Test piece', ruler, holds, people, stature, width, height, depth };
            const asked = await expectSound(given);
            if (asked === undefined) written += 1;
            else expect(asked).toBe('stature');
          }
        }
      }
      expect(written).toBeGreaterThan(20);
    },
  );

  test('sound for any answers, in places of any size', async () => {
    let written = 0;
    await fc.assert(
      fc.asyncProperty(answers, async (given) => {
        if ((await expectSound(given)) === undefined) written += 1;
      }),
      { numRuns: 150 },
    );
    // Many places are too small for what they should hold, and are asked about again; enough are not.
    expect(written).toBeGreaterThan(20);
  });

  test('a cupboard in a 48" alcove, worked by hand', async () => {
    const design = designOf({
      name: ' Hall cupboard ',
      ruler: 'inches-32',
      holds: ['papers', 'boxes'],
      people: 'children',
      stature: 'side',
      width: '48',
      height: '96',
      depth: '17-5/8',
    });
    // 48 less twice 1/2; 17-5/8 less 1/2 is 17-1/8, down to a quarter 17.
    expect(design.size.width.equals(Length.inches(47))).toBe(true);
    expect(design.size.height.equals(Length.inches(34))).toBe(true);
    expect(design.size.depth.equals(Length.inches(17))).toBe(true);
    const { piece, shop, cautions } = await makeNewPiece(design, new Map());
    expect(piece.name).toBe('hall-cupboard.fettle');
    expect(shop?.name).toBe('shop.fettle');
    expect(cautions).toEqual([expect.stringContaining('Fasten it to the wall')]);
    expect(piece.text).toBe(`// A first design: change whatever you like, the rest follows.
// Fasten it to the wall through its back before anything goes in: small children live with it.
use "shop.fettle"

piece "Hall cupboard" {
  units inches to 1/32
  size 47 wide, 34 high, 17 deep

  site {
    alcove 48 wide, 96 high, 17-5/8 deep
  }

  case {
    top "birch ply 3/4" between sides
    plinth 3 high, set back 2, of "birch ply 3/4"
    sides "birch ply 3/4"
    bottom "birch ply 3/4" between sides
    back "backing ply 3/4" in rabbet 1/4 deep
    join dado 1/4 deep
  }

  face overlay full, gap 1/8 {
    row {
      doors "left doors" share 1 {
        pair
        hinges "half cup", "full cup" at left
        shelves 2 adjustable of "birch ply 3/4"
      }
      partition "birch ply 3/4", behind fronts
      stack share 1 {
        drawer "right drawer 1" front 5-3/4 high
        drawer "right drawer 2" front 5-3/4 high
        drawer "right drawer 3" front 5-3/4 high
        drawer "right drawer 4" front 5-3/4 high
        drawer "right drawer 5" rest
      }
    }
    fronts "birch ply 3/4"
    drawers {
      sides "birch ply 1/2"
      bottom "birch ply 1/4"
      corners rabbet
      slides "side mount 14"
    }
    pulls "knob 1-1/4"
  }
}
`);
    // A shop file has every name that the piece asks of it, and each can be changed there.
    for (const [, named] of piece.text.matchAll(/(?:hinges|at left|slides|pulls) "([^"]+)"/g))
      expect(shop?.text).toContain(`"${named}"`);
  });
});
