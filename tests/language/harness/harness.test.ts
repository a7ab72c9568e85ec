import { describe, expect, test } from 'vitest';
import { check } from './check.ts';
import { readFixture } from './fixture.ts';
import { readMarks } from './marks.ts';

describe('fixtures', () => {
  test('a line names the next file, and the caret is taken out', () => {
    const fixture = readFixture(`
      use "shop.fettle"
      // file: shop.fettle
      units <|>mm
    `);
    expect(fixture.files).toEqual([
      { name: 'piece.fettle', text: 'use "shop.fettle"' },
      { name: 'shop.fettle', text: 'units mm\n' },
    ]);
    expect(fixture.caret).toEqual({ file: 'shop.fettle', offset: 6 });
  });

  test('marks are places in the line above them', () => {
    const { marks, notesShown } = readMarks(
      ['// notes not shown', 'frame 3', '//<^^ error unknown-word: frame', '//    ^ error unknown-word: 3'].join('\n'),
    );
    expect(notesShown).toBe(false);
    expect(marks.map(({ start, end, code, words }) => [start - 19, end - 19, code, words])).toEqual([
      [0, 5, 'unknown-word', 'frame'],
      [6, 7, 'unknown-word', '3'],
    ]);
  });

  test('what looks like a mark and is none is refused', () => {
    expect(() => readMarks('size 3 wide\n//   ^^^ eror unknown-word: x')).toThrow('looks like a mark');
    expect(() => readMarks('size\n//   ^^^ error unknown-word: x')).toThrow('reaches beyond');
  });
});

describe('check', () => {
  test('passes where findings and marks are the same', async () => {
    await check(`
      // notes not shown
      piece "chest" {
        size 20 wide, 30 high, 15 deep, painted
        //                              ^^^^^^^ error unknown-word: 'painted' means nothing
        case { sides thick 3/4 }
      }
    `);
  });

  test('fails on a finding without a mark', async () => {
    const unmarked = check(`
      piece "chest" { size 20 wide, 30 high, 15 deep, painted   case { sides thick 3/4 } }
    `);
    await expect(unmarked).rejects.toThrow(/found in piece\.fettle, and not marked:[\s\S]*unknown-word/);
  });

  test('fails on a mark without a finding', async () => {
    const nothing = check(`
      piece "chest" {
        case { sides thick 3/4 }
        size 20 wide, 30 high, 15 deep
        //   ^^ error unknown-word: 20
      }
    `);
    await expect(nothing).rejects.toThrow('marked in piece.fettle, and not found');
  });

  test.each([
    ['another severity', '        //                              ^^^^^^^ note unknown-word: painted'],
    ['another code', '        //                              ^^^^^^^ error unknown-name: painted'],
    ['other words', '        //                              ^^^^^^^ error unknown-word: varnished'],
    ['another place', '        //                              ^^^^^^ error unknown-word: painted'],
  ])('fails on %s', async (_what, mark) => {
    const other = check(
      `piece "chest" {\n        size 20 wide, 30 high, 15 deep, painted\n${mark}\n case { sides thick 3/4 } }`,
    );
    await expect(other).rejects.toThrow('not found');
  });

  test('two findings of one kind need two marks', async () => {
    const once = check(`
      piece "a" { size 20 wide, 30 high, 15 deep, red, red   case { sides thick 3/4 } }
      //                                          ^^^ error unknown-word: red
    `);
    await expect(once).rejects.toThrow('not marked');
  });

  test('notes may go unmarked where the fixture says so, and only there', async () => {
    const text = 'piece "a" { size 20 wide, 30 high, 15 deep   case { sides thick 3/4 }   site { alcove 30 wide } }';
    await check(`// notes not shown\n${text}`);
    await expect(check(text)).rejects.toThrow('note not-checked-yet');
  });

  test('findings of each file are marked in that file', async () => {
    await check(`
      // notes not shown
      use "shop.fettle"
      piece "a" { size 20 wide, 30 high, 15 deep   case { sides "oak" } }
      //                                                        ^^^^^ error unknown-name: no stock is called "oak"
      // file: shop.fettle
      sheet "ash" nominal 3/4, actual 3/4, 96 long, 48 wider
      //                                               ^^^^^ error unknown-word: did you mean 'wide'?
    `);
  });
});
