import { describe, expect, test } from 'vitest';
import { chest } from '../chest.ts';
import { checkHover, hoverAt } from '../harness/check-hover.ts';
import { sideboardWith } from '../sideboard.ts';

describe('numbers and phrases', () => {
  test('`rest` tells what is left, with its terms', () =>
    checkHover(
      chest('stack { drawer "top" front 5 high   drawer "low" re<|>st }'),
      `
      **rest** · Whatever is left.

      height of the front:

      - 23-7/8" = 29-1/4" (height of the face) − 5" (front of "top") − 3 × 1/8" (gap)
        - 29-1/4" (height of the face) = 30" (height of the body) − 3/4" (thickness of the bottom)
          - 30" (height of the body): height of the body
            - 30" (height of the piece): written in line 2
          - 3/4" (thickness of the bottom): written in line 3
        - 5" (front of "top"): written in line 5
        - 1/8" (gap): written in line 4

      height of the opening:

      - 24-1/16" = 23-7/8" (front of "low") + 1-1/2 × 1/8" (gap)
      `,
    ));

  test('the sideboard: "blankets" is 10-5/32" high', async () => {
    const { read, words } = await hoverAt(sideboardWith('"blankets" rest', '"blankets" re<|>st'));
    expect(words).toBe('rest');
    expect(read).toContain('10-5/32" = 28-5/8" (height of the stack) − 5" (front of "cards") − 5 × 3/32" (gap)');
  });

  test('every term leads to the line where it is written', async () => {
    const { markdown } = await hoverAt(`
      // file: my-(old)-desk.fettle
      piece "a" {
        size 20 wide, 30 high, 15 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset, gap 1/8 { drawer re<|>st }
      }
    `);
    const address = /\[line 2\]\((\S+)\)/.exec(markdown)?.[1] ?? '';
    expect(address).toMatch(/^file:\/\/\/\S+\/my-%28old%29-desk\.fettle#L2$/);
    expect(markdown).toContain('written in [line 4](');
  });

  test('a number is told in both systems, with the nearest sizes it leads to', () =>
    checkHover(
      chest('drawer "only" rest').replace('sides thick 3/4', 'sides thick 3/<|>4'),
      `
      **thick …** · Its thickness. A nominal thickness of the stock stands for the actual one.

      3/4" · 19.05 mm

      It leads to:
      - width of the face 18-1/2"
      - width of the front of "only" 18-1/4"
      `,
    ));

  test('a size of the piece tells the sizes it becomes', async () => {
    const { read } = await hoverAt(chest('drawer "only" rest').replace('size 20', 'size 2<|>0'));
    expect(read).toContain('18-1/2" = 20" (width of the body) − 2 × 3/4" (thickness of the sides)');
    expect(read).not.toContain('height');
  });

  test('a sum says what it comes to', async () => {
    const { markdown } = await hoverAt(chest('stack { drawer front (2<|> + 1/2) * 2 high   drawer rest }'));
    expect(markdown).toContain('\\(2 \\+ 1/2\\) \\* 2 = 5" · 127 mm');
  });

  test('a named length is worked out', async () => {
    const { markdown } = await hoverAt(
      `let "thin" be 3/32\n${chest('drawer rest').replace('gap 1/8', 'ga<|>p "thin"')}`,
    );
    expect(markdown).toContain('"thin" = 3/32" · about 2.38 mm');
  });

  test('millimetres are told in inches too', async () => {
    const { markdown } = await hoverAt('piece "a" { units mm   size 50<|>0 wide, 700 high, 400 deep }');
    expect(markdown).toContain('500 mm · about 19.685"');
  });

  test('what is not computed says so', async () => {
    const { markdown } = await hoverAt('piece "a" { site { alcove 6<|>4 wide } }');
    expect(markdown).toBe('**… wide** · Between its walls.\n\n64" · 1625.6 mm\n\nUnderstood, and not checked yet.');
  });
});

describe('words', () => {
  test('a front tells its sizes', () =>
    checkHover(
      chest('dra<|>wer "only" rest'),
      `
      **drawer** · A drawer with its front.

      - height of the front 29"
      - height of the opening 29-1/4"
      - width of the front 18-1/4"
      - width of the opening 18-1/2"
      `,
    ));

  test('a part of the case tells the parts it makes', () =>
    checkHover(
      chest('drawer "only" rest').replace('sides thick', 'si<|>des thick'),
      `
      **sides** · The two sides of the case.

      - left side 30" × 15" × 3/4"
      - right side 30" × 15" × 3/4"
      `,
    ));

  test('an unknown word tells nothing', () => checkHover('piece "a" { fri<|>nge 3 }', ''));
  test('braces, comments and blanks tell nothing', async () => {
    await checkHover('piece "a" <|>{ }', '');
    await checkHover('piece "a" { } // comm<|>ent', '');
    await checkHover('<|>', '');
  });
});

describe('names', () => {
  test('a stock shows its entry and its file', () =>
    checkHover(
      `
      use "shop.fettle"
      piece "a" { case { sides "a<|>sh" } }
      // file: shop.fettle
      sheet "ash" nominal 3/4, actual 23/32, 96 long, 48 wide
      `,
      `
      **"ash"** · sheet · shop.fettle

      \`\`\`fettle
      sheet "ash" nominal 3/4, actual 23/32, 96 long, 48 wide
      \`\`\`

      The stock it is made of, by its name in the shop file.
      `,
    ));

  test('a front that another follows shows its size', async () => {
    const { markdown } = await hoverAt(chest('row { door "left" rest   door "right" same as "le<|>ft" }'));
    expect(markdown).toContain('**"left"** · door\n\nwidth of the front:');
    expect(markdown).toContain('half of');
  });

  test('the name of a front shows its size', async () => {
    const { markdown, words } = await hoverAt(chest('row { door "le<|>ft" rest   door "right" rest }'));
    expect(words).toBe('"left"');
    expect(markdown).toContain('**"left"** · door\n\nwidth of the front:');
  });

  test('a used file tells what it declares', async () => {
    const { markdown } = await hoverAt(`
      use "shop.<|>fettle"
      // file: shop.fettle
      sheet "ash" actual 3/4
      slide "short" 10 long
      slide "long" 14 long
    `);
    expect(markdown).toContain('Declares: stock 1, slide 2');
  });

  test('a name nothing declares tells only what belongs there', () =>
    checkHover('piece "a" { case { sides "a<|>sh" } }', 'The stock it is made of, by its name in the shop file.'));

  test('no name breaks out of the Markdown', async () => {
    const name = '`x` **b** [a](http://b) <img src=y> ```';
    const { markdown } = await hoverAt(chest(`stack { drawer "${name}" front 5 high   drawer same as "<|>${name}" }`));
    const [title, ...rest] = markdown.split('\n');
    expect(title?.replace(/\\[^A-Za-z0-9\s]/g, '')).toMatch(/^\*\*"[^`*[\]()<>]*"\*\* · drawer$/);
    // Nothing of the name is left that is not guarded: no code, no emphasis, no address, no tag.
    const unguarded = rest.map((line) =>
      line.replace(/\[line \d+\]\(file:\S+#L\d+\)/g, '').replace(/\\[^A-Za-z0-9\s]/g, ''),
    );
    expect(unguarded.join('\n')).toContain('front of');
    expect(unguarded.join('\n').replace(/^ *- /gm, '').replace(/\*\*/g, '')).not.toMatch(/[`*[\]<>()]/);
  });
});
