import { describe, expect, test } from 'vitest';
import { codesIn, read } from './one-piece.ts';

/** What is wrong in the same way several times is one finding with the others beside it; what only follows is not said. */

function box(face: string, shop = '', size = '60 wide, 40 high, 12 deep'): string {
  return `${shop}
    piece "box" {
      size ${size}
      case { sides thick 3/4   bottom thick 3/4, between sides }
      face inset, gap 1/8 { ${face}   fronts thick 3/4 }
    }`;
}

describe('several alike', () => {
  test('two doors that are too wide are one finding, mended together', async () => {
    const text = box('row { door "left"   partition thick 3/4, shown   door "right" }');
    const { findings, taking } = await read(text);
    expect(findings.map(({ code }) => code)).toEqual(['door-too-wide']);
    expect(findings[0]?.related.map(({ sentence }) => sentence)).toEqual(['"right" is too wide as well']);
    const [fix] = findings[0]?.fixes ?? [];
    expect(fix?.title).toBe('Make them pairs of doors');
    expect(fix && (await codesIn(taking(fix)))).toEqual([]);
  });

  test('two doors on the same wrong hinge are one finding', async () => {
    const doors = (hinge: string) =>
      box(
        `row { door "a" { hinges "${hinge}" }   partition thick 3/4, shown   door "b" { hinges "${hinge}" } }`,
        'hinge "heavy" doors 1 to 2 thick\nhinge "light" doors 1/2 to 1 thick',
        '36 wide, 40 high, 12 deep',
      );
    const { findings, taking } = await read(doors('heavy'));
    expect(findings.map(({ code }) => code)).toEqual(['hinge-door-thickness']);
    expect(findings[0]?.related.map(({ sentence }) => sentence)).toEqual([
      '"heavy" is described here',
      '"b" hangs on it as well',
    ]);
    const [fix] = findings[0]?.fixes ?? [];
    expect(fix && (await codesIn(taking(fix)))).toEqual([]);
    expect(await codesIn(doors('light'))).toEqual([]);
  });

  test('parts of one size that no machine takes are one finding', async () => {
    const text = box('open', 'machine "sled" crosscuts at most 10 wide', '20 wide, 20 high, 12 deep');
    const { findings } = await read(text);
    expect(findings.map(({ code }) => code)).toEqual(['crosscut-too-wide']);
    expect(findings[0]?.related.map(({ sentence }) => sentence)).toEqual([
      '"sled" is described here',
      'the bottom is too wide as well',
    ]);
  });
});

describe('what only follows is not said', () => {
  test('a thickness in another unit is the error that breaks the face', async () => {
    const text = `
      piece "box" {
        size 20 wide, 20 high, 12 deep
        case { sides thick 18   bottom thick 3/4, between sides }
        face inset { door "front"   fronts thick 3/4 }
      }`;
    const { findings, taking } = await read(text);
    expect(findings.map(({ severity, code }) => `${severity} ${code}`)).toEqual(['error thickness-absurd']);
    const [fix] = findings[0]?.fixes ?? [];
    expect(fix && (await codesIn(taking(fix)))).toEqual([]);
  });

  test('fronts that do not add up are said, their proportions are not', async () => {
    const face = 'stack { drawer "a" front 1 high   drawer "b" front 50 high }';
    expect(await codesIn(box(face))).toEqual(['fronts-do-not-add-up']);
  });

  test('a part that does not come out of its stock is not measured against machines', async () => {
    const shop = 'sheet "ply" nominal 3/4, actual 3/4, 30 long, 48 wide\nmachine "sled" crosscuts at most 36';
    const text = `${shop}
      piece "box" { size 20 wide, 40 high, 12 deep   case { sides "ply" } }`;
    expect(await codesIn(text)).toEqual(['part-longer-than-stock']);
  });

  test('a drawer over a frame runs on it, and needs no slides', async () => {
    const shop = 'slide "s" side mount, 10 long';
    const stack = (dividers: string) =>
      box(
        `stack { ${dividers}   row { drawer "a"   partition thick 3/4, shown   drawer "b" }   drawer "c" }
         drawers { sides thick 1/2   bottom thick 1/4 }`,
        shop,
        '20 wide, 20 high, 12 deep',
      );
    expect(await codesIn(stack('dividers web-frame thick 3/4, behind fronts'))).toEqual([]);
    expect(await codesIn(stack(''))).toEqual(['drawers-without-slides']);
  });
});

describe('in millimetres', () => {
  const metric = (words: { gap?: string; door?: string; deep?: string }) => `
    piece "vanity" {
      units mm
      size ${words.door ?? '500'} wide, 800 high, 450 deep
      case {
        sides thick 18   bottom thick 18, between sides
        back thick 6 in groove 6 deep, ${words.deep ?? '12'} in from back edge
      }
      face inset, gap ${words.gap ?? '2'} { door "front"   fronts thick 18 }
    }`;

  test('limits and mends are round figures', async () => {
    expect(await codesIn(metric({}))).toEqual([]);
    const wide = (await read(metric({ door: '660' }))).findings[0];
    expect(wide?.sentence).toBe('"front" is 620 mm wide, doors are at most about 600 mm: 20 mm too wide');
    const gap = (await read(metric({ gap: '8' }))).findings[0];
    expect(gap?.sentence).toBe('a gap of 8 mm around inset fronts is 3 mm over 5 mm: it shows');
    expect(gap?.fixes.map(({ title }) => title)).toEqual(['Make the gap 2 mm']);
    const back = (await read(metric({ deep: '2' }))).findings[0];
    expect(back?.fixes.map(({ title }) => title)).toEqual([
      'Set the back 12 mm in from the back edge',
      'Set the back 3 mm in from the back edge',
    ]);
  });
});
