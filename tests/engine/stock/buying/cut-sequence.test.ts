import { cutSequence, Length, laidOut, reservesFor, sparesOf } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { pieceOfText, piecesOfExample, planned } from './evaluating.ts';

const box = (more: string) => `units inches to 1/32
sheet "ply" actual 3/4, ${more}
machine "saw" kerf 1/8
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply" thick 3/4   bottom "ply" thick 3/4, between sides }
}`;

describe('cuts in their order', () => {
  it('every piece of every example lies inside its stock, apart from every other by a blade', {
    timeout: 120_000,
  }, async () => {
    for (const name of ['sideboard', 'vanity', 'wall-cupboard', 'chest']) {
      for (const piece of await piecesOfExample(name)) {
        const plan = planned(piece);
        const kerf = plan.request.kerf.length;
        for (const { pieces, offcuts, length, width } of laidOut(plan)) {
          const areas = [...pieces, ...offcuts];
          for (const area of areas) {
            expect(area.along.plus(area.length).compare(length)).toBeLessThanOrEqual(0);
            expect(area.across.plus(area.width).compare(width)).toBeLessThanOrEqual(0);
          }
          for (const [at, a] of pieces.entries()) {
            for (const b of pieces.slice(at + 1)) {
              const apart =
                a.along.plus(a.length).plus(kerf).compare(b.along) <= 0 ||
                b.along.plus(b.length).plus(kerf).compare(a.along) <= 0 ||
                a.across.plus(a.width).plus(kerf).compare(b.across) <= 0 ||
                b.across.plus(b.width).plus(kerf).compare(a.across) <= 0;
              expect(apart).toBe(true);
            }
          }
        }
      }
    }
  });

  it('nothing is cut before the piece it is cut from has come off', { timeout: 120_000 }, async () => {
    const [piece] = await piecesOfExample('sideboard');
    if (piece === undefined) throw new Error('the sideboard is not there');
    const sequence = cutSequence(planned(piece));
    expect(sequence.map(({ number }) => number)).toEqual(sequence.map((_, at) => at + 1));
    const depths = new Map<number, number>();
    for (const { from, cut } of sequence) {
      expect(cut.depth).toBeGreaterThanOrEqual(depths.get(from.number) ?? 0);
      depths.set(from.number, cut.depth);
    }
  });

  it('what lies side by side comes off as it lies', { timeout: 120_000 }, async () => {
    for (const name of ['vanity', 'wall-cupboard']) {
      for (const piece of await piecesOfExample(name)) {
        const last = new Map<string, Length>();
        for (const { from, cut } of cutSequence(planned(piece))) {
          const row = `${from.number} ${cut.depth} ${cut.direction} ${cut.from.exactInches} ${cut.to.exactInches}`;
          expect(cut.at.compare(last.get(row) ?? Length.zero), row).toBeGreaterThan(0);
          last.set(row, cut.at);
        }
      }
    }
  });

  it('three parts of one width are ripped at one setting, one after the other', async () => {
    const sequence = cutSequence(planned(await pieceOfText(box('96 long, 48 wide'))));
    const rips = sequence.filter(({ cut }) => cut.direction === 'rip').map(({ cut }) => cut.setting.exactInches);
    expect(new Set(rips)).toEqual(new Set(['12']));
    // Every part comes off by some cut, or is what stays behind of a strip that ends with it.
    const given = sequence.flatMap(({ cut }) => cut.blanks);
    const cut = laidOut(planned(await pieceOfText(box('96 long, 48 wide')))).flatMap(({ pieces }) => pieces);
    expect(cut.map(({ piece }) => piece.blank.id).filter((id) => !given.includes(id))).toEqual([]);
  });
});

describe('spares', () => {
  it('a large sheet leaves enough for any part to be made again', async () => {
    const plan = planned(await pieceOfText(box('96 long, 48 wide')));
    const laid = laidOut(plan);
    expect(sparesOf(laid).every(({ spare }) => spare !== undefined)).toBe(true);
    expect(reservesFor(plan)).toEqual([]);
  });

  it('a sheet that is used up leaves no way back, and one more like it covers any mistake', async () => {
    // Three strips of 12 and two blades are 36-1/4: nothing else goes into 36-1/2 by 37.
    const plan = planned(await pieceOfText(box('37 long, 36-1/2 wide')));
    const laid = laidOut(plan);
    expect(laid).toHaveLength(1);
    expect(sparesOf(laid).map(({ spare }) => spare)).toEqual([undefined, undefined, undefined]);
    expect(reservesFor(plan).map(({ stock, covers }) => [stock.name, covers.length])).toEqual([['ply', 3]]);
    const parts = cutSequence(plan).filter(({ isWithoutWayBack }) => isWithoutWayBack);
    expect(parts.length).toBeGreaterThan(0);
  });
});
