import { describe, expect, test } from 'vitest';
import { check } from '../harness/check.ts';
import { checkFix, titlesAtCaret } from '../harness/check-fix.ts';

/** Terms as they are spoken: without the hyphens they are written with, and with a small word among their words. */

const cupboard = (inCase: string, inFace = 'open "all" rest') => `
piece "cupboard" {
  size 30 wide, 36 high, 12 deep
  case { bottom thick 3/4, between sides   ${inCase} }
  face inset, gap 1/8 { ${inFace} fronts thick 3/4 }
}
`;
const sides = 'sides thick 3/4';

describe('a term whose hyphens are left out', () => {
  test('is read as what it means, and one thing is said', async () => {
    await check(`
piece "cupboard" {
  size 30 wide, 36 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    toe space thick 3/4, 4 high, 3 deep
//  ^^^^^^^^^ error hyphen-left-out: 'toe space' is one word here: 'toe-space'
  }
}
`);
  });

  test.each([
    ['toe space', cupboard(`${sides}   <|>toe space thick 3/4, 4 high, 3 deep`)],
    ['Frame And Panel', cupboard('sides thick 3/4, <|>Frame And Panel')],
    ['top rail', cupboard('sides thick 3/4, frame-and-panel { <|>top rail 3 wide }')],
    ['web frame', cupboard(sides, 'stack { open "a" rest  divider <|>web frame thick 3/4  open "b" rest }')],
    ['box joint', cupboard(sides, 'drawer "a" rest  drawers { sides thick 1/2  corners <|>box joint }')],
  ])('is written with them by one fix: %s', async (spoken, text) => {
    const written = spoken.toLowerCase().replaceAll(' ', '-');
    await checkFix(text, `Write '${written}'`, text.replace('<|>', '').replace(spoken, written));
  });

  test('is only what stands on one line, a blank apart', async () => {
    expect(await titlesAtCaret(cupboard(`${sides}   <|>toe\n space 4 high`))).not.toContain("* Write 'toe-space'");
    // A thing of its own, and a word said of it, stay what they are.
    await check(cupboard('top thick 3/4, over sides { overhang 1 at front }   sides thick 3/4'));
  });
});

describe('a small word among those of a phrase', () => {
  test.each([
    ['over sides', 'over the sides'],
    ['over sides', 'over both sides'],
  ])('does not begin another thing: %s', async (meant, said) => {
    const text = cupboard(`${sides}   top thick 3/4, <|>${said}`);
    await checkFix(text, `Write '${meant}'`, cupboard(`${sides}   top thick 3/4, ${meant}`));
  });

  test('nor does a thing that is named by its kind', async () => {
    const stack = (third: string) =>
      cupboard(sides, `stack { drawer "a" front 4 high  drawer "b" ${third}  drawer "c" rest }`);
    await checkFix(stack('<|>same as drawer "a"'), `Write 'same as "a"'`, stack('same as "a"'));
  });

  test('takes nothing from the line below, nor from what may be said there', async () => {
    await check(`
piece "cupboard" {
  size 30 wide, 36 high, 12 deep
  case {
    bottom thick 3/4, between
//                    ^^^^^^^ error unknown-word: 'between' means nothing in 'bottom'; did you mean 'between sides'?
    sides thick 3/4
  }
}
`);
  });
});
