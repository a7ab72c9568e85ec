import { Length } from '../../length/length.ts';
import type { Band, CutBoard } from '../boards/board-problem.ts';
import { type BoardOrder, lengthOf } from './buying-request.ts';
import type { LaidArea, LaidPiece, LaidStock, SawCut } from './laid-stock.ts';
import { nameInside } from './piece-names.ts';
import type { PlannedBoards } from './plan-buying.ts';

/** Boards as they are cut, numbered from `first`. Staves of one part are counted as they come. */
export function layOutBoards({ order, plan }: PlannedBoards, first: number): readonly LaidStock[] {
  const staves = new Map<string, number>();
  return plan.boards.map((cut, at) => new BoardReader(order, cut, staves).read(first + at));
}

class BoardReader {
  readonly #order: BoardOrder;
  readonly #cut: CutBoard;
  readonly #staves: Map<string, number>;
  readonly #pieces: LaidPiece[] = [];
  readonly #offcuts: LaidArea[] = [];
  readonly #cuts: SawCut[] = [];
  /** Whether bands follow each other along the board. */
  readonly #bandsAlong: boolean;

  constructor(order: BoardOrder, cut: CutBoard, staves: Map<string, number>) {
    this.#order = order;
    this.#cut = cut;
    this.#staves = staves;
    this.#bandsAlong = cut.order === 'crosscut first';
  }

  read(number: number): LaidStock {
    const { prepared, stock } = this.#order;
    const { problem, thickness } = prepared;
    const kind = problem.boards.find(({ id }) => id === this.#cut.board);
    const offcut = this.#order.offers.get(this.#cut.board)?.offcut;
    const length = kind?.length ?? 0;
    const width = kind?.width ?? 0;
    const bandsEnd = this.#bandsAlong ? length - problem.endTrim : width - problem.edgeTrim;
    const [insideFrom, insideEnd] = this.#bandsAlong
      ? [problem.edgeTrim, width - problem.edgeTrim]
      : [problem.endTrim, length - problem.endTrim];
    const kerf = this.#bandsAlong ? problem.crosscutKerf : problem.ripKerf;
    this.#cut.bands.forEach((band, at) => {
      this.#band(band, nameInside(`${number}`, 0, at), insideFrom, insideEnd, bandsEnd);
    });
    const last = this.#cut.bands[this.#cut.bands.length - 1];
    const free = last === undefined ? 0 : last.at + last.size + kerf;
    this.#offcut(free, bandsEnd, insideFrom, insideEnd);
    return {
      number,
      kind: 'board',
      stock,
      thickness,
      length: this.#length(length),
      width: this.#length(width),
      ...(offcut === undefined ? {} : { offcut }),
      pieces: this.#pieces,
      offcuts: this.#offcuts,
      cuts: this.#cuts,
    };
  }

  #band(band: Band, name: string, insideFrom: number, insideEnd: number, bandsEnd: number): void {
    const { problem } = this.#order.prepared;
    const [first, second] = this.#bandsAlong ? (['crosscut', 'rip'] as const) : (['rip', 'crosscut'] as const);
    const kerf = this.#bandsAlong ? problem.ripKerf : problem.crosscutKerf;
    const bandEnd = band.at + band.size;
    if (bandEnd < bandsEnd) {
      this.#saw(
        0,
        first,
        band.size,
        bandEnd,
        insideFrom,
        insideEnd,
        name,
        band.blanks.map(({ blank }) => blank),
      );
    }
    let free = insideFrom;
    for (const { blank, at } of band.blanks) {
      const sizes = problem.blanks.find(({ id }) => id === blank);
      const piece = this.#order.pieces.find((each) => each.blank.id === blank);
      if (sizes === undefined || piece === undefined) continue;
      const [inside, through] = this.#bandsAlong ? [sizes.width, sizes.length] : [sizes.length, sizes.width];
      const stave = this.#stave(blank);
      const gives = stave === undefined ? piece.mark : `${piece.mark}.${stave.number}`;
      if (at + inside < insideEnd) this.#saw(1, second, inside, at + inside, band.at, bandEnd, gives, [blank]);
      // A last cut along the band's own direction takes off what the piece is smaller by.
      if (through < band.size) this.#saw(2, first, through, band.at + through, at, at + inside, gives, [blank]);
      this.#pieces.push({
        ...this.#area(band.at, through, at, inside),
        piece,
        turned: false,
        ...(stave === undefined ? {} : { stave }),
      });
      free = at + inside + kerf;
    }
    this.#offcut(band.at, bandEnd, free, insideEnd);
  }

  #stave(blank: string): LaidPiece['stave'] {
    const of = this.#order.prepared.glueUps.get(blank)?.staves ?? 1;
    if (of === 1) return undefined;
    const number = (this.#staves.get(blank) ?? 0) + 1;
    this.#staves.set(blank, number);
    return { number, of };
  }

  #saw(
    depth: number,
    direction: SawCut['direction'],
    setting: number,
    at: number,
    from: number,
    to: number,
    gives: string,
    blanks: readonly string[],
  ): void {
    this.#cuts.push({
      depth,
      direction,
      setting: this.#length(setting),
      at: this.#length(at),
      from: this.#length(from),
      to: this.#length(to),
      gives,
      blanks,
    });
  }

  #offcut(from: number, to: number, insideFrom: number, insideEnd: number): void {
    if (to > from && insideEnd > insideFrom) {
      this.#offcuts.push(this.#area(from, to - from, insideFrom, insideEnd - insideFrom));
    }
  }

  /** Through the bands and inside them, turned into along and across. */
  #area(at: number, through: number, insideAt: number, inside: number): LaidArea {
    const [one, other] = [
      { at: this.#length(at), size: this.#length(through) },
      { at: this.#length(insideAt), size: this.#length(inside) },
    ];
    const [along, across] = this.#bandsAlong ? [one, other] : [other, one];
    return { along: along.at, across: across.at, length: along.size, width: across.size };
  }

  #length(units: number): Length {
    return units === 0 ? Length.zero : lengthOf(units, this.#order.prepared.scale);
  }
}
