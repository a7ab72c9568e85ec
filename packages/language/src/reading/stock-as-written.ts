import type { Figure, Length } from '@fettle/engine';
import {
  type Mend,
  type Origin,
  offcutLargerThanStock,
  sheetByBoardFoot,
  stockSizeNotPositive,
  stockWithoutSize,
  trimLeavesNothing,
} from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { sheet, type shopStatements } from '../schema/shop.ts';
import { readParts } from './phrases.ts';
import { bodyStatements, type ReadContext, Reader } from './reader.ts';

/** Whether sheets, boards and offcuts have sizes that something can be cut from: in a shop file as beside a piece. */
export function stockFindings(context: ReadContext, statement: Statement): void {
  const { word } = specOf(statement).spec;
  if (word !== 'sheet' && word !== 'board') return;
  const what = statement.name ?? '';
  const said = new StockWords(context, statement);
  const isSound = [said.sizes(what, 'stock'), said.positive(what, 'stock', 'trim', said.trim)].every(Boolean);
  if (word === 'sheet') said.pricedAsBoards(what);
  if (isSound) said.trimmed(what);
  for (const each of bodyStatements(statement, 'offcut')) {
    const offcut = new StockWords(context, each);
    if (offcut.sizes(what, 'offcut') && isSound) offcut.within(what, said);
  }
}

type Axis = 'long' | 'wide';
type StockWord = (typeof shopStatements)[number] extends infer Spec ? Spec : never;

/** What one statement says of sizes, with the places where it says it. */
class StockWords {
  readonly #context: ReadContext;
  readonly #reader: Reader<string>;
  /** Whether all of its words mean something. */
  readonly #isRead: boolean;
  readonly long: Figure | undefined;
  readonly wide: Figure | undefined;
  readonly trim: Figure | undefined;

  constructor(context: ReadContext, statement: Statement) {
    this.#context = context;
    this.#isRead = readParts(statement, specOf(statement).spec).unread.length === 0;
    // What is no length at all is told where lengths are read.
    this.#reader = new Reader<string>(statement, sheet as StockWord, { ...context, findings: [] });
    this.long = this.#reader.length('<length> long');
    this.wide = this.#reader.length('<length> wide');
    this.trim = this.#reader.length('trim <length>');
  }

  /** False where what it says cannot be used. */
  sizes(what: string, of: 'stock' | 'offcut'): boolean {
    const sound = (['long', 'wide'] as const).map((axis) => this.positive(what, of, axis, this[axis]));
    const isThickSound = this.positive(what, of, 'thick', this.#reader.length('<length> thick'));
    const missing = (['long', 'wide'] as const).filter((axis) => !this.#reader.has(`<length> ${axis}`));
    const [first, second] = missing;
    // Of a misspelt word one does not know whether it was meant to tell a size: it has its own finding.
    if (first !== undefined && this.#isRead) {
      const lacks = second !== undefined ? 'both' : first === 'long' ? 'length' : 'width';
      this.#tell(stockWithoutSize.at(this.#reader.origin, { what, of, missing: lacks }));
    }
    return sound.every(Boolean) && isThickSound && missing.length === 0;
  }

  positive(what: string, of: 'stock' | 'offcut', axis: Axis | 'thick' | 'trim', size: Figure | undefined): boolean {
    if (size === undefined) return true;
    const { length } = size;
    if (length.isPositive() || (axis === 'trim' && length.isZero())) return true;
    const at = this.#wordsOf(axis);
    this.#tell(stockSizeNotPositive.at(at, { what, of, axis, size: length }, { mends: this.#without(at, length) }));
    return false;
  }

  trimmed(what: string): void {
    const { trim } = this;
    if (trim === undefined) return;
    for (const axis of ['long', 'wide'] as const) {
      const size = this[axis];
      if (size === undefined || trim.length.times(2).compare(size.length) < 0) continue;
      this.#tell(trimLeavesNothing.at(this.#wordsOf('trim'), { what, trim: trim.length, axis, size: size.length }));
      return;
    }
  }

  /** As the offcut that it is: no larger than what it was cut from. */
  within(what: string, stock: StockWords): void {
    const isSwapped =
      this.long !== undefined &&
      this.wide !== undefined &&
      stock.long !== undefined &&
      stock.wide !== undefined &&
      this.long.length.compare(stock.wide.length) <= 0 &&
      this.wide.length.compare(stock.long.length) <= 0;
    for (const axis of ['long', 'wide'] as const) {
      const [size, limit] = [this[axis]?.length, stock[axis]?.length];
      if (size === undefined || limit === undefined || size.compare(limit) <= 0) continue;
      const facts = { what, axis, size, limit, difference: size.minus(limit) };
      this.#tell(offcutLargerThanStock.at(this.#wordsOf(axis), facts, { mends: isSwapped ? this.#swapped() : [] }));
      return;
    }
  }

  pricedAsBoards(what: string): void {
    const pattern = 'costs <number> a board foot';
    const [at, amount] = [this.#reader.originOf(pattern), this.#reader.number(pattern)];
    if (at === undefined || amount === undefined || amount.sign() < 0) return;
    const words = `costs ${amount} each`;
    const mends: readonly Mend[] = [{ how: 'write', values: { words }, changes: [{ kind: 'set-words', at, words }] }];
    this.#tell(sheetByBoardFoot.at(at, { what, amount: `${amount}` }, { mends }));
  }

  #swapped(): readonly Mend[] {
    const [long, wide] = [this.#wordsOf('long'), this.#wordsOf('wide')];
    if (this.long === undefined || this.wide === undefined) return [];
    return [
      {
        how: 'swap',
        values: {},
        changes: [
          { kind: 'set-length', at: long, to: this.wide.length },
          { kind: 'set-length', at: wide, to: this.long.length },
        ],
      },
    ];
  }

  /** Of a size below nothing the same size without its sign. */
  #without(at: Origin, length: Length): readonly Mend[] {
    if (length.isZero()) return [];
    const size = length.abs();
    return [{ how: 'write', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
  }

  #wordsOf(axis: Axis | 'thick' | 'trim'): Origin {
    const pattern = axis === 'trim' ? 'trim <length>' : `<length> ${axis}`;
    return this.#reader.slotOrigin(pattern) ?? this.#reader.origin;
  }

  #tell(finding: ReadContext['findings'][number]): void {
    this.#context.findings.push(finding);
  }
}
