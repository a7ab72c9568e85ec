import { type Evaluation, Length } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CodeAction } from 'vscode-languageserver-types';
import { chest } from '../chest.ts';
import { type FixtureFile, readFixture } from '../harness/fixture.ts';
import { filesAfter, openFixture } from '../harness/workbench.ts';
import { shop, sideboardWith } from '../sideboard.ts';

/** Each refactoring is taken, and the piece is worked out again: what its title promised is true of the new text. */

interface Before {
  readonly actions: readonly CodeAction[];
  readonly piece: Evaluation;
  after(
    title: string,
  ): Promise<{ readonly text: string; readonly piece: Evaluation; readonly errors: readonly string[] }>;
}

async function at(source: string): Promise<Before> {
  const fixture = readFixture(source);
  const workbench = await openFixture(fixture);
  const document = workbench.document(fixture.caret?.file ?? '');
  const position = document.textDocument.positionAt(fixture.caret?.offset ?? 0);
  const actions = (await workbench.services.lsp.CodeActionProvider?.getCodeActions(document, {
    textDocument: { uri: document.uri.toString() },
    range: { start: position, end: position },
    context: { diagnostics: [], only: ['refactor'] },
  })) as CodeAction[];
  const first = evaluateDocument(workbench.services, document).pieces[0];
  if (first === undefined) throw new Error('no piece');
  return {
    actions,
    piece: first.evaluation,
    after: async (title) => {
      expect(actions.map((each) => each.title)).toContain(title);
      const edit = actions.find((each) => each.title === title)?.edit;
      return worked(filesAfter(workbench, edit ?? {}));
    },
  };
}

async function worked(files: readonly FixtureFile[]) {
  const workbench = await openFixture({ files });
  const [document] = workbench.documents;
  if (document === undefined) throw new Error('no file');
  const { pieces, findings } = evaluateDocument(workbench.services, document);
  const [piece] = pieces;
  if (piece === undefined) throw new Error('the piece is gone');
  return {
    text: document.textDocument.getText(),
    piece: piece.evaluation,
    errors: findings.filter(({ severity }) => severity === 'error').map(({ sentence }) => sentence),
  };
}

/** What a piece comes to: every part with its place, in exact inches. */
function made({ parts }: Evaluation) {
  const exact = (length: Length) => length.in('in').toString();
  return parts.map(({ label, role, box, thickness }) => [
    label,
    role,
    exact(thickness.length),
    ...[box.x, box.y, box.z].flatMap(({ start, end }) => [exact(start.length), exact(end.length)]),
  ]);
}

function fronts({ parts }: Evaluation) {
  return parts.filter(({ role }) => role === 'drawer-front' || role === 'door');
}

const inches = (piece: Evaluation) => fronts(piece).map(({ box }) => box.y.size.length.in('in').toString());
const titles = ({ actions }: Before) => actions.map(({ title }) => title);

describe('the drawers of a stack', () => {
  test('made alike', async () => {
    const before = await at(chest('stack<|> { drawer "a" front 5 high   drawer "b" share 2   drawer "c" rest }'));
    const { text, piece, errors } = await before.after('Make the 3 drawers of the stack alike');
    expect(text).toContain('drawer "a" rest   drawer "b" rest   drawer "c" rest');
    // 29-1/4 less four gaps of 1/8 is 28-3/4; a third of it is 9-7/12.
    expect(inches(piece)).toEqual(['115/12', '115/12', '115/12']);
    expect(errors).toEqual([]);
  });

  test('a grading goes when they are made alike', async () => {
    const before = await at(chest('stack graded by 1 { drawer "a"   dra<|>wer "b" }'));
    const { text, piece } = await before.after('Make the 2 drawers of the stack alike');
    expect(text).toContain('stack { drawer "a"   drawer "b" }');
    expect(new Set(inches(piece)).size).toBe(1);
  });

  test('not offered where something else takes a part of what is left, or where they are alike', async () => {
    expect(titles(await at(chest('sta<|>ck { drawer front 5 high   drawer front 6 high   open rest }')))).not.toContain(
      'Make the 2 drawers of the stack alike',
    );
    expect(titles(await at(chest('sta<|>ck { drawer rest   drawer rest }')))).not.toContain(
      'Make the 2 drawers of the stack alike',
    );
  });

  test('a difference they have already is kept, and nothing changes', async () => {
    // Together 28-3/4: 8-7/12, 9-7/12, 10-7/12.
    const before = await at(
      chest('stack<|> { drawer "a" front 103/12 high   drawer "b" front 115/12 high   drawer "c" rest }'),
    );
    const { text, piece } = await before.after('Say that the stack is graded by 1"');
    expect(text).toContain('stack graded by 1" { drawer "a"   drawer "b"   drawer "c" }');
    expect(made(piece)).toEqual(made(before.piece));
  });

  test('any difference that is there is kept exactly', () =>
    fc.assert(
      fc.asyncProperty(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 1, max: 60 }), async (count, step) => {
        const words = Array.from({ length: count }, (_, n) =>
          n === count - 1
            ? 'drawer rest'
            : `drawer front ${sixtyFourths(first(count, step) + BigInt(n * step) * BigInt(count))}/${64 * count} high`,
        );
        const before = await at(chest(`stack<|> { ${words.join('   ')} }`));
        const title = titles(before).find((each) => each.startsWith('Say that the stack is graded'));
        const { piece, errors } = await before.after(title ?? 'a grading');
        expect(made(piece)).toEqual(made(before.piece));
        expect(errors).toEqual([]);
      }),
      { numRuns: 12 },
    ));

  test('sizes that do not add up have no difference to keep', async () => {
    const before = await at(chest('stack<|> { drawer front 9 high   drawer front 20 high }'));
    expect(titles(before).filter((each) => each.includes('grade'))).toEqual([]);
  });

  test('without one an inch is taken', async () => {
    const before = await at(chest('stack<|> { drawer rest   drawer rest   drawer rest }'));
    const { piece, errors } = await before.after('Grade the stack by 1"');
    expect(inches(piece)).toEqual(['103/12', '115/12', '127/12']);
    expect(errors).toEqual([]);
  });
});

describe('a difference shared among several', () => {
  // 29-1/4 less four gaps of 1/8 is 28-3/4 for three fronts; a piece of its own units has marks of 1/32.
  const inStack = (cells: string) => chest(`stack { ${cells} }`);

  test('in whole marks, from anywhere in the stack, the largest giving what is over', async () => {
    const source = inStack('drawer "a" front 9 high   drawer "b" front 10 high   drawer "<|>c" front 9-29/32 high');
    const before = await at(source);
    // 28-29/32 is 5/32 too much: a mark from each, and one more from the two largest.
    const title = 'Share the 5/32" too much among the 3 sizes, 1/32" to 1/16" less each';
    const { text, piece, errors } = await before.after(title);
    expect(text).toContain('front 8-31/32" high   drawer "b" front 9-15/16" high   drawer "c" front 9-27/32" high');
    expect(inches(piece)).toEqual(['287/32', '159/16', '315/32']);
    expect(errors).toEqual([]);
  });

  test('what is left over is given to them', async () => {
    const before = await at(inStack('dra<|>wer front 9 high   drawer front 9 high   drawer front 10 high'));
    const { piece, errors } = await before.after('Share the 3/4" left over among the 3 sizes, 1/4" more each');
    expect(inches(piece)).toEqual(['37/4', '37/4', '41/4']);
    expect(errors).toEqual([]);
  });

  test('any difference, exactly', () =>
    fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 128, max: 400 }), { minLength: 2, maxLength: 4 }),
        fc.integer({ min: 3, max: 5 }),
        async (parts, finer) => {
          const cells = parts.map((part) => `drawer front ${part}/${2 ** finer} high`).join('   ');
          const before = await at(chest(`sta<|>ck { ${cells} }`));
          const title = titles(before).find((each) => each.startsWith('Share the'));
          const available = 29.25 - (parts.length + 1) / 8;
          const difference = parts.reduce((sum, part) => sum + part / 2 ** finer, 0) - available;
          // One cannot give more than it has, and nothing is shared where nothing is wrong.
          if (title === undefined) {
            expect(difference === 0 || parts.some((part) => part / 2 ** finer <= difference / parts.length + 1)).toBe(
              true,
            );
            return;
          }
          const { piece, errors } = await before.after(title);
          expect(errors.filter((each) => each.includes('too much') || each.includes('left over'))).toEqual([]);
          expect(fronts(piece)).toHaveLength(parts.length);
        },
      ),
      { numRuns: 15 },
    ));

  test('not offered where one takes the rest, where a limit holds one, or elsewhere in the piece', async () => {
    const shared = async (source: string) => titles(await at(source)).filter((each) => each.startsWith('Share the'));
    expect(await shared(inStack('dra<|>wer front 9 high   drawer rest'))).toEqual([]);
    const held = 'dra<|>wer front 9 high   drawer front 9 high, at least 8 high   drawer front 10 high';
    expect(await shared(inStack(held))).toEqual([]);
    const elsewhere = inStack('drawer front 9 high   drawer front 9 high').replace('sides', 'sid<|>es');
    expect(await shared(elsewhere)).toEqual([]);
  });
});

/** The first of `count` fronts in parts of an inch (64 × count of them), so that they and their gaps fill 29-1/4". */
function first(count: number, step: number): bigint {
  const total = BigInt(64 * 29 + 16 - 8 * (count + 1));
  return total - BigInt((step * count * (count - 1)) / 2);
}
function sixtyFourths(parts: bigint): string {
  return parts.toString();
}

/** The parts of which everything is said. */
function said(piece: Evaluation) {
  const habit = new Set<unknown>(['drawer-side', 'drawer-end', 'drawer-bottom', 'shelf', 'back']);
  return made(piece).filter(([, role]) => !habit.has(role));
}

describe('units', () => {
  test.each([
    ['piece "chest"', 'pie<|>ce "chest"'],
    ['units inches', 'units inch<|>es'],
  ])('from %s: exactly as large as before', async (words, caret) => {
    const source = chest('stack { drawer "a" front (2 + 1/2) * 2 high   drawer "b" front 4-1/3" high   drawer rest }')
      .replace('{\n', '{\n  units inches to 1/32\n')
      .replace(words, caret);
    const before = await at(source);
    const { text, piece } = await before.after('Write the piece in millimetres');
    expect(text).toContain('units mm\n  size 508 wide, 762 high, 381 deep');
    expect(text).toContain('front (50.8 + 12.7) * 2 high');
    expect(text).toContain('front 110-1/15mm high');
    expect(made(piece)).toEqual(made(before.piece));
  });

  test('the sideboard there and back', async () => {
    const before = await at(sideboardWith('piece "Games', 'pie<|>ce "Games'));
    // Grooves and clearances of its drawer boxes, the play of its shelves and that of its back are left to habit.
    const metric = await before.after('Write the piece in millimetres; what it leaves unsaid takes metric habits');
    expect(said(metric.piece)).toEqual(said(before.piece));
    expect(said(before.piece).length).toBeGreaterThan(20);
    expect(metric.text).toContain('weighs 3 lb');
    expect(metric.text).toContain('shelves 2 adjustable');
    const back = await at(`${metric.text.replace('piece "Games', 'pie<|>ce "Games')}\n// file: shop.fettle\n${shop}`);
    const again = await back.after('Write the piece in inches; what it leaves unsaid takes inch habits');
    expect(made(again.piece)).toEqual(made(before.piece));
    expect(again.text).toContain('size 60 wide, 34 high, 17 deep');
  });

  test('any lengths, exactly', () =>
    fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 99 }), async (n, d) => {
        const before = await at(
          chest(`stack { drawer front ${n}/${d} high   drawer rest }`).replace('piece', 'pi<|>ece'),
        );
        const { piece } = await before.after('Write the piece in millimetres');
        expect(made(piece)).toEqual(made(before.piece));
      }),
      { numRuns: 15 },
    ));

  test('a gap that was assumed is written down, so that every front stays as it is', async () => {
    const source = chest('stack { drawer rest   drawer rest }').replace('face inset, gap 1/8', 'face inset');
    const before = await at(source.replace('piece', 'pi<|>ece'));
    const { text, piece } = await before.after('Write the piece in millimetres');
    expect(text).toContain('face inset, gap 2.38125mm {');
    expect(made(piece)).toEqual(made(before.piece));
  });

  test('not offered where a named number may be a length or a count', async () => {
    const source = chest('drawer rest').replace('{\n', '{\n  let "two" be 2\n').replace('piece', 'pi<|>ece');
    expect(titles(await at(source))).not.toContain('Write the piece in millimetres');
  });
});

describe('a pattern', () => {
  test('made of a piece, which comes out as before', async () => {
    const before = await at(chest('drawer "only"').replace('piece', 'pi<|>ece'));
    const { text, piece, errors } = await before.after('Make a pattern of "chest" that takes its width');
    expect(text).toContain('pattern "chest pattern" {\n  takes "width"\n  size "width" wide, 30 high, 15 deep');
    expect(text).toMatch(/\n\npiece "chest" from "chest pattern" with "width" 20"$/);
    expect(made(piece)).toEqual(made(before.piece));
    expect(errors).toEqual([]);
  });

  test('the sideboard', async () => {
    const before = await at(sideboardWith('piece "Games', 'pie<|>ce "Games'));
    const { piece, errors } = await before.after('Make a pattern of "Games sideboard" that takes its width');
    expect(made(piece)).toEqual(made(before.piece));
    expect(errors).toEqual([]);
  });

  test('any width of the piece is the width it gives', () =>
    fc.assert(
      fc.asyncProperty(fc.integer({ min: 10, max: 60 }), fc.integer({ min: 0, max: 31 }), async (whole, part) => {
        const width = part === 0 ? `${whole}` : `${whole}-${part}/32`;
        const before = await at(
          chest('drawer "only"').replace('size 20', `size ${width}`).replace('piece', 'pi<|>ece'),
        );
        const { piece } = await before.after('Make a pattern of "chest" that takes its width');
        expect(made(piece)).toEqual(made(before.piece));
      }),
      { numRuns: 10 },
    ));
});

describe('the fit', () => {
  test('inset to overlay and back, the outside kept', async () => {
    const source = chest('stack { drawer "a" rest   drawer "b" rest }');
    const before = await at(source.replace('face inset', 'fa<|>ce inset'));
    const overlay = await before.after('Let the fronts lie on the case, its outside kept');
    expect(overlay.text).toContain('face overlay full, gap 1/8');
    expect(outside(overlay.piece)).toEqual(outside(before.piece));
    expect(overlay.piece.design.face?.fit.kind).toBe('overlay');
    expect(overlay.errors).toEqual([]);
    const back = await at(overlay.text.replace('face overlay', 'fa<|>ce overlay'));
    const inset = await back.after('Let the fronts lie inside the case, its outside kept');
    expect(inset.text).toBe(source);
  });

  test('not offered where every size is written', async () => {
    const source = chest('stack { drawer front 14 high   drawer front 14-3/4 high }');
    const before = await at(source.replace('face inset', 'fa<|>ce inset'));
    expect(titles(before).filter((each) => each.includes('outside kept'))).toEqual([]);
  });
});

function outside({ layout }: Evaluation) {
  const box = layout.carcase?.outside;
  if (box === undefined) throw new Error('no carcase');
  return [box.x, box.y, box.z].map(({ size }) => size.length.in('in').toString());
}

describe('an opening in two', () => {
  test('side by side in a stack', async () => {
    const before = await at(chest('stack { drawer "a" rest   op<|>en "b" opening 12 high { shelves 1 fixed } }'));
    const { text, piece, errors } = await before.after('Split it in two, side by side');
    expect(text).toContain('row opening 12 high {');
    expect(text).toContain('partition thick 3/4, shown');
    expect(errors).toEqual([]);
    const row = piece.layout.face?.cells[1];
    const old = before.piece.layout.face?.cells[1];
    expect(row?.opening.y.size.length.equals(old?.opening.y.size.length ?? Length.zero)).toBe(true);
    expect(row?.cells.map(({ cell }) => [cell.kind, cell.name])).toEqual([
      ['open', 'b'],
      ['open', undefined],
    ]);
    // 18-1/2 less 3/4, halved.
    expect(row?.cells.map(({ opening }) => opening.x.size.length.in('in').toString())).toEqual(['71/8', '71/8']);
    expect(fronts(piece).map(({ label }) => label)).toEqual(fronts(before.piece).map(({ label }) => label));
  });

  test('one above the other in a row', async () => {
    const before = await at(chest('row { door "a" rest   dra<|>wer "b" opening 8 wide }'));
    const { piece, errors } = await before.after('Split it in two, one above the other');
    expect(errors).toEqual([]);
    expect(fronts(piece)).toHaveLength(3);
    const stack = piece.layout.face?.cells[1];
    expect(stack?.opening.x.size.length.equals(Length.inches(8))).toBe(true);
  });

  test('not offered for what others follow', async () => {
    const before = await at(chest('row { op<|>en "a" opening 5 wide   open same as "a"   open rest }'));
    expect(titles(before).filter((each) => each.startsWith('Split'))).toEqual([]);
  });
});

describe('a row mirrored', () => {
  test('every front stands where its mirror image stood', async () => {
    const before = await at(sideboardWith('row {', 'ro<|>w {'));
    const { piece, errors } = await before.after('Mirror the row, left to right');
    expect(errors).toEqual([]);
    expect(mirrorImage(piece)).toEqual(image(before.piece));
    expect(image(piece)).not.toEqual(image(before.piece));
  });

  test('twice is the text it was', () =>
    fc.assert(
      fc.asyncProperty(fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 2, maxLength: 4 }), async (shares) => {
        const cells = shares.map((share, n) => `door "${n}" share ${share}`).join('\npartition thick 3/4, shown\n');
        const source = chest(`row {\n${cells}\n}`);
        const before = await at(source.replace('row {', 'r<|>ow {'));
        const once = await before.after('Mirror the row, left to right');
        expect(mirrorImage(once.piece)).toEqual(image(before.piece));
        const again = await at(once.text.replace('row {', 'r<|>ow {'));
        const twice = await again.after('Mirror the row, left to right');
        expect(twice.text).toBe(source);
      }),
      { numRuns: 10 },
    ));

  test('a graded row is not offered', async () => {
    const before = await at(chest('r<|>ow graded by 1 { door   door }'));
    expect(titles(before)).not.toContain('Mirror the row, left to right');
  });
});

/** Name, left and right end of each front, in exact inches, from left to right. */
function image(piece: Evaluation) {
  return placed(piece, (start, end) => [start, end]);
}
function mirrorImage(piece: Evaluation) {
  const width = piece.layout.carcase?.outside.x.size.length ?? Length.zero;
  return placed(piece, (start, end) => [width.minus(end), width.minus(start)]);
}
function placed(piece: Evaluation, turn: (start: Length, end: Length) => [Length, Length]) {
  return fronts(piece)
    .map(({ box, cell }) => {
      const [start, end] = turn(box.x.start.length, box.x.end.length);
      return [
        cell?.split('/').at(-1),
        start.in('in').toString(),
        end.in('in').toString(),
        box.y.size.length.in('in').toString(),
      ];
    })
    .sort((a, b) => a.join().localeCompare(b.join()));
}

test('nothing is offered outside a piece, or while braces are missing', async () => {
  const workbench = await openFixture(readFixture('piece "a" { case { sides thick 3/4 }'));
  const [document] = workbench.documents;
  if (document === undefined) throw new Error('no file');
  const actions = await workbench.services.lsp.CodeActionProvider?.getCodeActions(document, {
    textDocument: { uri: document.uri.toString() },
    range: { start: { line: 0, character: 2 }, end: { line: 0, character: 2 } },
    context: { diagnostics: [], only: ['refactor'] },
  });
  expect(actions).toEqual([]);
});
