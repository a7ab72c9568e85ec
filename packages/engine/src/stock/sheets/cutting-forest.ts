import { cell, grown } from './cells.ts';

/** What a node is. Children of `SIDE_BY_SIDE` are parted by rips, those of `BEHIND` by crosscuts. */
export const FREE = 0;
export const SIDE_BY_SIDE = 1;
export const BEHIND = 2;
export const BLANK = 3;
export const WASTE = 4;
export const NONE = -1;

/**
 * Sheets being cut: a tree of guillotine cuts for each, in typed arrays. Directions alternate from level to level, and a
 * node has at most one waste child, for its children may change places: so a blank that is taken out leaves as large a
 * rectangle as the cuts around it allow.
 */
export class CuttingForest {
  kind: Int32Array;
  width: Int32Array;
  length: Int32Array;
  /** The blank's type. */
  type: Int32Array;
  parent: Int32Array;
  first: Int32Array;
  next: Int32Array;
  previous: Int32Array;
  sheet: Int32Array;
  private freeNode = NONE;
  private nodeCount = 0;

  /** Waste that could hold some blank, in no order. */
  waste: Int32Array;
  wasteCount = 0;
  private wastePlace: Int32Array;

  /** For each sheet its root, or NONE if that place is empty. */
  root: Int32Array = new Int32Array(16).fill(NONE);
  sheetKind: Int32Array = new Int32Array(16);
  /** Places of `root` that are taken, in no order. */
  open: Int32Array = new Int32Array(16);
  openCount = 0;
  private openPlace: Int32Array = new Int32Array(16);
  private readonly freeSheets: number[] = [];
  private sheetCount = 0;

  /** Sum over waste of its squared share of `unitArea`: large when waste lies together. */
  gathered = 0;

  private readonly leastWidth: number;
  private readonly leastLength: number;
  private readonly perArea: number;

  constructor(leastWidth: number, leastLength: number, unitArea: number) {
    const size = 256;
    this.kind = new Int32Array(size);
    this.width = new Int32Array(size);
    this.length = new Int32Array(size);
    this.type = new Int32Array(size);
    this.parent = new Int32Array(size);
    this.first = new Int32Array(size);
    this.next = new Int32Array(size);
    this.previous = new Int32Array(size);
    this.sheet = new Int32Array(size);
    this.waste = new Int32Array(size);
    this.wastePlace = new Int32Array(size).fill(NONE);
    this.leastWidth = leastWidth;
    this.leastLength = leastLength;
    this.perArea = 1 / unitArea;
  }

  openSheet(kind: number, width: number, length: number): number {
    const at = this.placeSheet(kind);
    this.root[at] = this.newWaste(width, length, NONE, at);
    return at;
  }

  private placeSheet(kind: number): number {
    const at = this.freeSheets.pop() ?? this.sheetCount++;
    if (at >= this.root.length) {
      this.root = grown(this.root, at + 1);
      this.sheetKind = grown(this.sheetKind, at + 1);
      this.open = grown(this.open, at + 1);
      this.openPlace = grown(this.openPlace, at + 1);
    }
    this.sheetKind[at] = kind;
    this.openPlace[at] = this.openCount;
    this.open[this.openCount++] = at;
    return at;
  }

  closeSheet(at: number): void {
    this.freeTree(cell(this.root, at));
    this.root[at] = NONE;
    const last = cell(this.open, --this.openCount);
    const place = cell(this.openPlace, at);
    this.open[place] = last;
    this.openPlace[last] = place;
    this.freeSheets.push(at);
  }

  isEmptySheet(at: number): boolean {
    return cell(this.kind, cell(this.root, at)) === WASTE;
  }

  /**
   * Puts a blank into the corner of waste that is large enough for it. `ripFirst` says which cut comes first where both
   * are possible.
   */
  insert(waste: number, type: number, width: number, length: number, ripFirst: boolean): void {
    const fullWidth = width === cell(this.width, waste);
    const fullLength = length === cell(this.length, waste);
    if (fullWidth && fullLength) {
      this.dropWaste(waste);
      this.kind[waste] = BLANK;
      this.type[waste] = type;
      return;
    }
    const direction = fullWidth ? BEHIND : fullLength || ripFirst ? SIDE_BY_SIDE : BEHIND;
    const above = cell(this.parent, waste);
    if (above === NONE || cell(this.kind, above) !== direction) this.putBetween(waste, direction);
    const node = this.newNode();
    const side = direction === SIDE_BY_SIDE;
    this.linkBefore(node, waste);
    this.width[node] = side ? width : cell(this.width, waste);
    this.length[node] = side ? cell(this.length, waste) : length;
    this.resizeWaste(
      waste,
      side ? cell(this.width, waste) - width : cell(this.width, waste),
      side ? cell(this.length, waste) : cell(this.length, waste) - length,
    );
    if (side ? fullLength : fullWidth) {
      this.kind[node] = BLANK;
      this.type[node] = type;
      return;
    }
    this.kind[node] = side ? BEHIND : SIDE_BY_SIDE;
    this.first[node] = NONE;
    const at = cell(this.sheet, node);
    const rest = side
      ? this.newWaste(width, cell(this.length, node) - length, node, at)
      : this.newWaste(cell(this.width, node) - width, length, node, at);
    this.next[rest] = NONE;
    this.previous[rest] = NONE;
    this.first[node] = rest;
    const blank = this.newNode();
    this.linkBefore(blank, rest);
    this.kind[blank] = BLANK;
    this.type[blank] = type;
    this.width[blank] = width;
    this.length[blank] = length;
  }

  /** Turns a blank, or a piece with everything in it, into waste and joins that with the waste around it. */
  clear(node: number, removed: (type: number) => void): void {
    this.removeChildren(node, removed);
    if (cell(this.kind, node) === BLANK) removed(cell(this.type, node));
    let at = node;
    this.becomeWaste(at);
    for (;;) {
      const above = cell(this.parent, at);
      if (above === NONE) return;
      let other = cell(this.first, above);
      while (other !== NONE && (other === at || cell(this.kind, other) !== WASTE)) other = cell(this.next, other);
      if (other !== NONE) {
        const side = cell(this.kind, above) === SIDE_BY_SIDE;
        const width = side ? cell(this.width, at) + cell(this.width, other) : cell(this.width, at);
        const length = side ? cell(this.length, at) : cell(this.length, at) + cell(this.length, other);
        this.dropWaste(other);
        this.unlink(other);
        this.release(other);
        this.resizeWaste(at, width, length);
      }
      if (cell(this.first, above) !== at || cell(this.next, at) !== NONE) return;
      this.dropWaste(at);
      this.release(at);
      this.becomeWaste(above);
      at = above;
    }
  }

  private removeChildren(node: number, removed: (type: number) => void): void {
    const kind = cell(this.kind, node);
    if (kind !== SIDE_BY_SIDE && kind !== BEHIND) return;
    let child = cell(this.first, node);
    while (child !== NONE) {
      const next = cell(this.next, child);
      const what = cell(this.kind, child);
      if (what === BLANK) removed(cell(this.type, child));
      else if (what === WASTE) this.dropWaste(child);
      else this.removeChildren(child, removed);
      this.release(child);
      child = next;
    }
    this.first[node] = NONE;
  }

  /** An array that has room for every blank there is: the one given if it has. */
  roomForBlanks(list: Int32Array): Int32Array {
    return list.length >= this.kind.length ? list : new Int32Array(this.kind.length);
  }

  /** The nodes of blanks in a sheet, written into `list`; answers how many. */
  blanksIn(node: number, list: Int32Array, count: number): number {
    const kind = cell(this.kind, node);
    if (kind === BLANK) {
      list[count] = node;
      return count + 1;
    }
    if (kind === WASTE) return count;
    let found = count;
    for (let child = cell(this.first, node); child !== NONE; child = cell(this.next, child)) {
      found = this.blanksIn(child, list, found);
    }
    return found;
  }

  /** How many cuts in changing directions lead to what lies inside `node`'s parent. */
  depth(node: number): number {
    let depth = 0;
    for (let at = cell(this.parent, node); at !== NONE; at = cell(this.parent, at)) depth++;
    return depth;
  }

  /** Writes a sheet as numbers: its kind of sheet, then its nodes, parents first. Answers where it ended. */
  write(at: number, into: Recording): void {
    into.put(cell(this.sheetKind, at));
    this.writeNode(cell(this.root, at), into);
  }

  private writeNode(node: number, into: Recording): void {
    const kind = cell(this.kind, node);
    const children = kind === SIDE_BY_SIDE || kind === BEHIND;
    into.put(kind);
    into.put(cell(this.width, node));
    into.put(cell(this.length, node));
    let count = 0;
    const place = into.end;
    into.put(kind === BLANK ? cell(this.type, node) : 0);
    if (!children) return;
    for (let child = cell(this.first, node); child !== NONE; child = cell(this.next, child)) {
      this.writeNode(child, into);
      count++;
    }
    into.cells[place] = count;
  }

  /** Opens a sheet as it was written; reading goes on where the sheet ended. */
  read(from: Recording): number {
    const at = this.placeSheet(from.take());
    this.root[at] = this.readNode(NONE, at, from);
    return at;
  }

  private readNode(parent: number, at: number, from: Recording): number {
    const kind = from.take();
    const width = from.take();
    const length = from.take();
    const last = from.take();
    if (kind === WASTE) {
      const waste = this.newWaste(width, length, parent, at);
      this.next[waste] = NONE;
      this.previous[waste] = NONE;
      return waste;
    }
    const node = this.newNode();
    this.kind[node] = kind;
    this.width[node] = width;
    this.length[node] = length;
    this.type[node] = last;
    this.parent[node] = parent;
    this.sheet[node] = at;
    this.first[node] = NONE;
    this.next[node] = NONE;
    this.previous[node] = NONE;
    if (kind === BLANK) return node;
    let before = NONE;
    for (let left = last; left > 0; left--) {
      const child = this.readNode(node, at, from);
      this.previous[child] = before;
      if (before === NONE) this.first[node] = child;
      else this.next[before] = child;
      before = child;
    }
    return node;
  }

  private freeTree(node: number): void {
    const kind = cell(this.kind, node);
    if (kind === WASTE) this.dropWaste(node);
    else if (kind !== BLANK) {
      let child = cell(this.first, node);
      while (child !== NONE) {
        const next = cell(this.next, child);
        this.freeTree(child);
        child = next;
      }
    }
    this.release(node);
  }

  /** Puts a node of children between waste and its parent. */
  private putBetween(waste: number, direction: number): void {
    const node = this.newNode();
    const at = cell(this.sheet, waste);
    const above = cell(this.parent, waste);
    const before = cell(this.previous, waste);
    const after = cell(this.next, waste);
    this.kind[node] = direction;
    this.width[node] = cell(this.width, waste);
    this.length[node] = cell(this.length, waste);
    this.sheet[node] = at;
    this.parent[node] = above;
    this.first[node] = waste;
    if (above === NONE) {
      this.root[at] = node;
      this.next[node] = NONE;
      this.previous[node] = NONE;
    } else {
      this.previous[node] = before;
      this.next[node] = after;
      if (before === NONE) this.first[above] = node;
      else this.next[before] = node;
      if (after !== NONE) this.previous[after] = node;
    }
    this.parent[waste] = node;
    this.next[waste] = NONE;
    this.previous[waste] = NONE;
  }

  private linkBefore(node: number, sibling: number): void {
    const above = cell(this.parent, sibling);
    const before = cell(this.previous, sibling);
    this.parent[node] = above;
    this.sheet[node] = cell(this.sheet, sibling);
    this.next[node] = sibling;
    this.previous[node] = before;
    this.previous[sibling] = node;
    if (before === NONE) this.first[above] = node;
    else this.next[before] = node;
  }

  private unlink(node: number): void {
    const before = cell(this.previous, node);
    const after = cell(this.next, node);
    if (before === NONE) this.first[cell(this.parent, node)] = after;
    else this.next[before] = after;
    if (after !== NONE) this.previous[after] = before;
  }

  private newNode(): number {
    if (this.freeNode !== NONE) {
      const node = this.freeNode;
      this.freeNode = cell(this.next, node);
      return node;
    }
    const node = this.nodeCount++;
    if (node >= this.kind.length) this.growNodes(node + 1);
    return node;
  }

  private growNodes(atLeast: number): void {
    const before = this.wastePlace.length;
    this.kind = grown(this.kind, atLeast);
    this.width = grown(this.width, atLeast);
    this.length = grown(this.length, atLeast);
    this.type = grown(this.type, atLeast);
    this.parent = grown(this.parent, atLeast);
    this.first = grown(this.first, atLeast);
    this.next = grown(this.next, atLeast);
    this.previous = grown(this.previous, atLeast);
    this.sheet = grown(this.sheet, atLeast);
    this.waste = grown(this.waste, atLeast);
    this.wastePlace = grown(this.wastePlace, atLeast).fill(NONE, before);
  }

  private release(node: number): void {
    this.kind[node] = FREE;
    this.next[node] = this.freeNode;
    this.freeNode = node;
  }

  private newWaste(width: number, length: number, parent: number, at: number): number {
    const node = this.newNode();
    this.width[node] = width;
    this.length[node] = length;
    this.parent[node] = parent;
    this.sheet[node] = at;
    this.next[node] = NONE;
    this.previous[node] = NONE;
    this.becomeWaste(node);
    return node;
  }

  private becomeWaste(node: number): void {
    this.kind[node] = WASTE;
    this.first[node] = NONE;
    this.listWaste(node);
  }

  private listWaste(node: number): void {
    const share = cell(this.width, node) * cell(this.length, node) * this.perArea;
    this.gathered += share * share;
    if (cell(this.width, node) < this.leastWidth || cell(this.length, node) < this.leastLength) return;
    this.wastePlace[node] = this.wasteCount;
    this.waste[this.wasteCount++] = node;
  }

  private dropWaste(node: number): void {
    const share = cell(this.width, node) * cell(this.length, node) * this.perArea;
    this.gathered -= share * share;
    const place = cell(this.wastePlace, node);
    if (place === NONE) return;
    const last = cell(this.waste, --this.wasteCount);
    this.waste[place] = last;
    this.wastePlace[last] = place;
    this.wastePlace[node] = NONE;
  }

  private resizeWaste(node: number, width: number, length: number): void {
    this.dropWaste(node);
    this.width[node] = width;
    this.length[node] = length;
    this.listWaste(node);
  }
}

/** Numbers written one after the other and read again in the same order. */
export class Recording {
  cells: Int32Array = new Int32Array(1024);
  end = 0;
  at = 0;

  put(value: number): void {
    if (this.end >= this.cells.length) this.cells = grown(this.cells, this.end + 1);
    this.cells[this.end++] = value;
  }

  take(): number {
    return cell(this.cells, this.at++);
  }

  clear(): void {
    this.end = 0;
    this.at = 0;
  }

  /** A copy that is not written to any more, to be read from its beginning. */
  copy(): Recording {
    const copy = new Recording();
    copy.cells = this.cells.slice(0, this.end);
    copy.end = this.end;
    return copy;
  }
}
