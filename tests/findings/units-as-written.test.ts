import { describe, expect, it } from 'vitest';
import { check } from '../language/harness/check.ts';
import { checkFix, titlesAtCaret } from '../language/harness/check-fix.ts';

/** Sizes in a unit that was not meant: what is offered is usual as a whole, and speaks of what is written. */

describe('bare sizes that look like another unit', () => {
  const cabinet = (size: string) => `
    piece "case" {
      units inches
      size ${size}
      case { sides thick 3/4 }
    }
  `;

  it('are rewritten when all of them are usual then', () =>
    checkFix(
      cabinet('600<|> wide, 900 high, 400 deep'),
      'Write 600mm, 900mm and 400mm',
      cabinet('600mm wide, 900mm high, 400mm deep'),
    ));

  it('are left to the one number that stands out when others would be odd', () =>
    check(`
      // notes not shown
      piece "case" {
        size 600 wide, 30 high, 24 deep
        //   ^^^ warning size-absurd: a piece 600" wide can hardly be meant
        case { sides thick 3/4 }
      }
    `));
});

describe('a size with a unit that was not meant', () => {
  it('is spoken of as it is written', () =>
    check(`
      // notes not shown
      piece "case" {
        units mm
        size 1200" wide, 900 high, 400 deep
        //   ^^^^^ warning size-absurd: a piece 1200" (30480 mm) wide can hardly be meant
        case { sides thick 18 }
      }
    `));

  it('is offered in the unit of the piece', async () => {
    const inches = (depth: string) => `
      piece "case" { size 30 wide, 30 high, ${depth} deep   case { sides thick 3/4 } }
    `;
    await checkFix(inches('16mm<|>'), 'Write 16"', inches('16"'));
    expect(await titlesAtCaret(inches('1/2mm<|>'))).toEqual([]);
  });
});
