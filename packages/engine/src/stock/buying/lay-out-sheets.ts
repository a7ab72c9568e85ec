import { Length } from '../../length/length.ts';
import type { CutPiece, CuttingNode, PlacedBlank } from '../sheets/sheet-plan.ts';
import { lengthOf, type SheetOrder, type StockOffer } from './buying-request.ts';
import type { LaidArea, LaidPiece, LaidRun, LaidStock, PartedPiece, SawCut } from './laid-stock.ts';
import { layOutRun } from './lay-out-runs.ts';
import { nameInside } from './piece-names.ts';
import type { PlannedSheets } from './plan-buying.ts';

/** Sheets as they are cut, numbered from `first`. */
export function layOutSheets({ order, plan }: PlannedSheets, first: number): readonly LaidStock[] {
  const { stock, offers } = order;
  const thickness = stock.actual ?? stock.nominal;
  const trim = stock.trim?.length.max(Length.zero) ?? Length.zero;
  return plan.sheets.flatMap(({ sheet, root }, at): readonly LaidStock[] => {
    const offer = offers.get(sheet);
    if (offer === undefined) return [];
    const read = new SheetReader(order);
    read.trim(root, offer, `${first + at}`);
    read.node(root, `${first + at}`, 0);
    return [
      {
        number: first + at,
        kind: 'sheet',
        stock,
        ...(thickness === undefined ? {} : { thickness: thickness.length }),
        length: offer.length,
        width: offer.width,
        lost: { ends: trim, edges: trim },
        ...(offer.offcut === undefined ? {} : { offcut: offer.offcut }),
        pieces: read.pieces,
        runs: read.runs,
        parted: read.parted,
        offcuts: read.offcuts,
        cuts: read.cuts,
      },
    ];
  });
}

class SheetReader {
  readonly pieces: LaidPiece[] = [];
  readonly runs: LaidRun[] = [];
  readonly parted: PartedPiece[] = [];
  readonly offcuts: LaidArea[] = [];
  readonly cuts: SawCut[] = [];
  /** How many changes of direction come before what the plan says: those of trimming. */
  #before = 0;
  readonly #order: SheetOrder;

  constructor(order: SheetOrder) {
    this.#order = order;
  }

  /** Each edge that is trimmed is cut off first: the fence is set to what is to remain. */
  trim({ x, y, width, length }: CuttingNode, whole: StockOffer, of: string): void {
    const blanks: readonly string[] = [];
    const gives = 'trimmed sheet';
    const [left, near] = [this.#length(x), this.#length(y)];
    const [right, far] = [this.#length(x + width), this.#length(y + length)];
    const rip = (at: Length, setting: Length) =>
      this.cuts.push({
        depth: 0,
        direction: 'rip',
        of,
        gives,
        setting,
        at,
        from: Length.zero,
        to: whole.length,
        blanks,
      });
    const cross = (at: Length, setting: Length) =>
      this.cuts.push({ depth: 0, direction: 'crosscut', of, gives, setting, at, from: left, to: right, blanks });
    if (left.isPositive()) rip(left, whole.width.minus(left));
    if (right.compare(whole.width) < 0) rip(right, right.minus(left));
    if (near.isPositive()) cross(near, whole.length.minus(near));
    if (far.compare(whole.length) < 0) cross(far, far.minus(near));
    if (this.cuts.length > 0) this.#before = 1;
  }

  node(node: CuttingNode, name: string, depth: number): void {
    if (node.kind === 'offcut') this.offcuts.push(this.#area(node));
    else if (node.kind === 'cut') this.#cut(node, name, depth);
    else this.#blank(node, name, depth);
  }

  #blank(node: PlacedBlank, name: string, depth: number): void {
    const blank = this.#order.blanks.get(node.blank);
    const [piece, ...others] = blank?.pieces ?? [];
    if (blank === undefined || piece === undefined) return;
    if (others.length === 0) {
      this.pieces.push({ ...this.#area(node), piece, turned: node.turned });
      return;
    }
    const laid = layOutRun(blank, this.#area(node), node.turned, name, depth + this.#before);
    this.runs.push(laid.run);
    this.pieces.push(...laid.pieces);
    this.offcuts.push(...laid.offcuts);
    this.cuts.push(...laid.cuts);
  }

  /** A cut after each piece but the last, and after that where it does not end with what it is cut from. */
  #cut(cut: CutPiece, name: string, depth: number): void {
    const rip = cut.direction === 'rip';
    const end = rip ? cut.x + cut.width : cut.y + cut.length;
    cut.pieces.forEach((piece, at) => {
      const inside = nameInside(name, depth, at);
      const pieceEnd = rip ? piece.x + piece.width : piece.y + piece.length;
      const isLast = at === cut.pieces.length - 1;
      if (!isLast || pieceEnd < end) {
        const blank = piece.kind === 'blank' ? this.#order.blanks.get(piece.blank) : undefined;
        const isOne = blank?.pieces.length === 1;
        const gives = isOne ? blank.pieces[0]?.mark : inside;
        this.cuts.push({
          depth: depth + this.#before,
          direction: cut.direction,
          of: name,
          setting: this.#length(rip ? piece.width : piece.length),
          at: this.#length(pieceEnd),
          from: this.#length(rip ? cut.y : cut.x),
          to: this.#length(rip ? cut.y + cut.length : cut.x + cut.width),
          ...(gives === undefined || piece.kind === 'offcut' ? {} : { gives }),
          blanks: this.#piecesIn(piece),
          ...(blank?.label === undefined ? {} : { run: blank.label }),
        });
      }
      if (piece.kind === 'cut') this.parted.push({ ...this.#area(piece), name: inside });
      this.node(piece, inside, depth + 1);
    });
  }

  #piecesIn(node: CuttingNode): readonly string[] {
    if (node.kind === 'blank') return this.#order.blanks.get(node.blank)?.pieces.map(({ blank }) => blank.id) ?? [];
    return node.kind === 'cut' ? node.pieces.flatMap((each) => this.#piecesIn(each)) : [];
  }

  #area({ x, y, width, length }: CuttingNode): LaidArea {
    return {
      along: this.#length(y),
      across: this.#length(x),
      length: this.#length(length),
      width: this.#length(width),
    };
  }

  #length(units: number): Length {
    if (units === 0) return Length.zero;
    return lengthOf(units, this.#order.scale);
  }
}
