import { isArrow, stepTo } from '@fettle/preview';
import { readFromPage, readPageMemory, readToPage } from '@fettle/protocol';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { frame, message, picture, uri } from './pictures.ts';

const kinds = [
  'ready',
  'choose',
  'choose-finding',
  'look',
  'move-division',
  'copy-table',
  'stop-planning',
  'export',
  'png',
  'png-failed',
];

/** What either end accepts from the other. */

describe('a message from the page', () => {
  test('is taken for what it says, without what it should not say', () => {
    const choose = { kind: 'choose', uri, version: 3, piece: 0, part: 'front/dice' };
    expect(readFromPage({ ...choose, command: 'rm' })).toEqual(choose);
    expect(readFromPage({ kind: 'ready', uri })).toEqual({ kind: 'ready' });
    expect(readFromPage({ kind: 'choose-finding', uri, version: 3, finding: 0 })).toEqual({
      kind: 'choose-finding',
      uri,
      version: 3,
      finding: 0,
    });
  });

  test('about a line, a table, a file or a picture is taken with its bounds', () => {
    const about = { uri, version: 3, piece: 0 };
    const move = { kind: 'move-division', ...about, division: 'a|b', steps: -4, drop: true };
    expect(readFromPage({ ...move, edits: [] })).toEqual(move);
    for (const wrong of [{ steps: 0.5 }, { steps: 1e9 }, { steps: '4' }, { drop: 1 }, { division: null }]) {
      expect(readFromPage({ ...move, ...wrong })).toBeUndefined();
    }
    const file = { kind: 'export', ...about, sheet: 'elevation', format: 'png' };
    expect(readFromPage(file)).toEqual(file);
    expect(readFromPage({ ...file, format: 'exe' })).toBeUndefined();
    expect(readFromPage({ kind: 'copy-table', ...about, sheet: 7 })).toBeUndefined();
    expect(readFromPage({ kind: 'png', request: 1, bytes: [137, 80] })).toBeUndefined();
    expect(readFromPage({ kind: 'png', request: 1, bytes: new Uint8Array(2) })?.kind).toBe('png');
    expect(readFromPage({ kind: 'look', uri, piece: 'A', sheet: 'b', extra: 1 })).toEqual({
      kind: 'look',
      uri,
      piece: 'A',
      sheet: 'b',
    });
  });

  test('of any other shape is none, and never a failure', () => {
    const choose = { kind: 'choose', uri, version: 3, piece: 0, part: 'front/dice' };
    for (const wrong of [{ version: -1 }, { version: 1.5 }, { version: '3' }, { piece: -1 }, { part: 4 }, { uri: 5 }]) {
      expect(readFromPage({ ...choose, ...wrong })).toBeUndefined();
    }
    fc.assert(
      fc.property(fc.anything(), (value) => {
        const read = readFromPage(value);
        expect(read === undefined || kinds.includes(read.kind)).toBe(true);
      }),
    );
  });
});

describe('what the page accepts and remembers', () => {
  test('a picture with all its fields, a caret with all its fields', () => {
    expect(readToPage(message(picture(1)))?.kind).toBe('picture');
    const { verdict: _, ...incomplete } = frame(picture(1));
    expect(readToPage({ kind: 'picture', frame: incomplete, anew: false })).toBeUndefined();
    expect(readToPage({ kind: 'caret', uri, version: 1, piece: 0, parts: ['a'] })?.kind).toBe('caret');
    expect(readToPage({ kind: 'caret', uri, version: 1, parts: ['a'] })).toBeUndefined();
  });

  test('nothing whose shape is not a picture through and through', () => {
    const whole = frame(picture(1));
    const [piece] = whole.pieces;
    for (const wrong of [
      { pieces: [{ ...piece, parts: [{ id: 'x' }] }] },
      {
        pieces: [
          { ...piece, sheets: [{ kind: 'drawing', id: 'e', title: 'E', svg: 5, description: '', divisions: [] }] },
        ],
      },
      { pieces: [{ ...piece, sheets: [{ kind: 'film', id: 'e', title: 'E' }] }] },
      { pieces: [{ ...piece, span: { start: 'a', end: 4 } }] },
      { findings: [{ severity: 'fatal' }] },
      { frame: -1 },
    ]) {
      expect(readToPage({ kind: 'picture', frame: { ...whole, ...wrong }, anew: false, only: '' })).toBeUndefined();
    }
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(readToPage(value)).toBeUndefined();
        expect(readToPage({ kind: 'picture', frame: value })).toBeUndefined();
      }),
    );
  });

  test('a memory that is no memory makes a fresh page', () => {
    const fresh = {
      uri: '',
      piece: '',
      sheet: '',
      zoom: 'fit',
      scroll: { left: 0, top: 0 },
      chosen: '',
      only: '',
      tall: false,
    };
    for (const nothing of [
      undefined,
      null,
      3,
      'x',
      [],
      { zoom: Number.NaN },
      { zoom: -2 },
      { scroll: { left: 'x' } },
    ]) {
      expect(readPageMemory(nothing)).toEqual(fresh);
    }
    const memory = {
      uri,
      piece: 'Chest',
      sheet: 'cut-list',
      zoom: 2,
      scroll: { left: 3, top: 4 },
      chosen: 'front/dice',
      only: '',
      tall: true,
    };
    expect(readPageMemory(structuredClone(memory))).toEqual(memory);
  });
});

describe('arrow keys among parts', () => {
  const at = (what: string, x: number, y: number) => ({ what, x, y });
  const left = at('left', 0, 50);
  const middle = at('middle', 100, 50);
  const upper = at('upper', 100, 10);
  const right = at('right', 200, 60);
  const all = [left, middle, upper, right];

  test('go to the nearest part ahead, and stop at the edge', () => {
    expect(stepTo(left, 'ArrowRight', all)).toBe('middle');
    expect(stepTo(middle, 'ArrowRight', all)).toBe('right');
    expect(stepTo(right, 'ArrowRight', all)).toBeUndefined();
    expect(stepTo(middle, 'ArrowUp', all)).toBe('upper');
    expect(stepTo(upper, 'ArrowUp', all)).toBeUndefined();
    expect(isArrow('ArrowUp')).toBe(true);
    expect(isArrow('Enter')).toBe(false);
  });

  test('never stay on the part they leave', () => {
    const place = fc.record({ x: fc.nat(300), y: fc.nat(300) });
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 12 }), (places) => {
        const parts = places.map(({ x, y }, index) => ({ what: index, x, y }));
        const [from] = parts;
        if (from === undefined) return;
        for (const arrow of ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'] as const) {
          expect(stepTo(from, arrow, parts)).not.toBe(from.what);
        }
      }),
    );
  });
});
