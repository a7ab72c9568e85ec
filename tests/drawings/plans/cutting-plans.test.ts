import {
  cutListCsv,
  cuttingTable,
  type Primitive,
  planDrawing,
  planPages,
  shoppingTable,
  toSvg,
  walk,
} from '@fettle/drawings';
import { type BuyingPlan, cutSequence, type Evaluation, laidOut } from '@fettle/engine';
import { beforeAll, describe, expect, it } from 'vitest';
import { textBox } from '../../../packages/drawings/src/lettering.ts';
import { boxesOverlap } from '../../../packages/drawings/src/primitives.ts';
import { pieceOfText, piecesOfExample, planned } from '../../engine/stock/buying/evaluating.ts';

let sideboard: Evaluation;
let plan: BuyingPlan;
beforeAll(async () => {
  const [piece] = await piecesOfExample('sideboard');
  if (piece === undefined) throw new Error('the sideboard is not there');
  sideboard = piece;
  plan = planned(piece);
}, 120_000);

function groupsOf(content: readonly Primitive[], name: string) {
  return [...walk(content)].flatMap((each) => (each.kind === 'group' && each.name === name ? [each] : []));
}

describe('cutting plans drawn', () => {
  it('every part of the sideboard is on some page, true to scale, and tells a click which part it is', {
    timeout: 120_000,
  }, () => {
    const drawn = new Map<string, number>();
    planPages(plan).forEach((page, at) => {
      const drawing = planDrawing(sideboard, plan, at + 1);
      const scale = (drawing.paperPerReal ?? 0) * 25.4;
      const pieces = page.flatMap((laid) => laid.pieces);
      const groups = groupsOf(drawing.content, 'piece');
      expect(groups.length).toBe(pieces.length);
      groups.forEach(({ part, children }, turn) => {
        const laid = pieces[turn];
        const area = children.find((child) => child.kind === 'rectangle');
        if (laid === undefined || area?.kind !== 'rectangle') throw new Error('a piece without its area');
        expect(area.box.right - area.box.left).toBeCloseTo(laid.length.approximateInches * scale, 6);
        expect(area.box.bottom - area.box.top).toBeCloseTo(laid.width.approximateInches * scale, 6);
        drawn.set(part?.id ?? '', (drawn.get(part?.id ?? '') ?? 0) + 1);
      });
      expect(toSvg(drawing, { standalone: true })).toContain('<svg');
    });
    for (const { id } of sideboard.parts) expect([id, (drawn.get(id) ?? 0) > 0]).toEqual([id, true]);
  });

  it('the arrow of the grain stands beside the words over a board, however short it is', () => {
    planPages(plan).forEach((_, at) => {
      const { content, width } = planDrawing(sideboard, plan, at + 1);
      for (const { children } of groupsOf(content, 'stock')) {
        const arrow = children.find((each) => each.kind === 'arrow');
        const head = children.find((each) => each.kind === 'text' && each.role === 'name');
        if (arrow?.kind !== 'arrow' || head?.kind !== 'text') throw new Error('a board without arrow or words');
        expect(arrow.from.x).toBeGreaterThan(textBox(head).right + 1);
        expect(arrow.to.x).toBeLessThan(width - 10);
      }
    });
  });

  it('what is drawn stays on its page', () => {
    planPages(plan).forEach((_, at) => {
      const { content, width, height } = planDrawing(sideboard, plan, at + 1);
      for (const each of walk(content)) {
        if (each.kind !== 'rectangle' || each.surface === 'paper') continue;
        expect(each.box.left).toBeGreaterThan(0);
        expect(each.box.right).toBeLessThan(width);
        expect(each.box.bottom).toBeLessThan(height);
      }
    });
  });

  it('every cut is numbered where it is, or listed beside the stock, and so is every size and every name', () => {
    const cuts = cutSequence(plan);
    planPages(plan).forEach((page, at) => {
      const { content } = planDrawing(sideboard, plan, at + 1);
      const words = [...walk(content)].flatMap((each) => (each.kind === 'text' ? [each.text] : []));
      const listed = groupsOf(content, 'beside').flatMap(({ children }) =>
        children.flatMap((each) => (each.kind === 'text' ? [each.text] : [])),
      );
      const isListed = (number: number) =>
        listed.some((line) => {
          const [, first, joint, last] = /^(\d+)(?:( to |, )(\d+))? {2}/.exec(line) ?? [];
          if (first === undefined) return false;
          return joint === undefined ? number === Number(first) : number >= Number(first) && number <= Number(last);
        });
      const own = cuts.filter(({ from }) => page.some((stock) => stock.number === from.number));
      expect(own.length).toBeGreaterThan(0);
      for (const { number } of own)
        expect([number, words.includes(`${number}`) || isListed(number)]).toEqual([number, true]);
      for (const { number, cut } of own) {
        const isCutFurther = page.some(({ parted }) => parted.some(({ name }) => name === cut.gives));
        if (isCutFurther)
          expect([cut.gives, words.includes(cut.gives ?? '') || isListed(number)]).toEqual([cut.gives, true]);
      }
      for (const { mark } of page.flatMap(({ pieces }) => pieces.map(({ piece }) => piece))) {
        expect([mark, words.some((line) => line.startsWith(mark))]).toEqual([mark, true]);
      }
    });
  });

  it('no lettering of the example plans stands in another', { timeout: 120_000 }, async () => {
    for (const name of ['sideboard', 'linen-press', 'chest']) {
      for (const piece of await piecesOfExample(name)) {
        const own = planned(piece);
        planPages(own).forEach((_, at) => {
          const texts = [...walk(planDrawing(piece, own, at + 1).content)].flatMap((each) =>
            each.kind === 'text' ? [each] : [],
          );
          const boxes = texts.map(textBox);
          const met = boxes.flatMap((a, one) =>
            boxes.slice(one + 1).flatMap((b, other) => {
              const inside = { left: b.left + 0.2, right: b.right - 0.2, top: b.top + 0.8, bottom: b.bottom - 0.8 };
              return boxesOverlap(a, inside) ? [[texts[one]?.text, texts[one + 1 + other]?.text]] : [];
            }),
          );
          expect([name, at + 1, met]).toEqual([name, at + 1, []]);
        });
      }
    }
  });

  it('fronts that follow one another are drawn round as one, and said beside the stock in their order', async () => {
    const piece = await pieceOfText(`units inches to 1/32
sheet "ply" actual 3/4, 96 long, 48 wide
piece "box" {
  size 30 wide, 26 high, 18 deep
  case { sides "ply" thick 3/4   bottom "ply" thick 3/4, between sides }
  face inset { stack { drawer "upper" share 1   drawer "lower" share 1 }   fronts "ply" thick 3/4 }
  sequence "tall" { "upper", "lower" }
}`);
    const own = planned(piece);
    const { content } = planDrawing(piece, own, 1);
    const [run] = laidOut(own).flatMap(({ runs }) => runs);
    const outlines = [...walk(content)].flatMap((each) =>
      each.kind === 'group' && each.id.startsWith('run-') ? [each.name] : [],
    );
    expect(outlines).toEqual(['sequence "tall", 2 in their order']);
    const marks = ['upper', 'lower'].map(
      (name) => piece.parts.find(({ label }) => label === `drawer front "${name}"`)?.mark,
    );
    const words = [...walk(content)].flatMap((each) => (each.kind === 'text' ? [each.text.trim()] : []));
    expect(words).toContain(`${run?.name}  sequence "tall": ${marks.join(', ')}`);
    const { columns, rows } = cuttingTable(piece, own);
    const gives = rows.map(({ cells }) => cells[columns.indexOf('Gives')]);
    expect(gives).toContain(`${run?.name}: sequence "tall"`);
    // The fronts are then cut from it, by the same name.
    expect(rows.some(({ cells }) => cells[columns.indexOf('From')] === run?.name)).toBe(true);
  });

  it('a piece without parts has a page that says so', async () => {
    const piece = await pieceOfText('piece "nothing" {\n}');
    const drawing = planDrawing(piece, planned(piece));
    expect(JSON.stringify(drawing.content)).toContain('nothing is planned');
  });
});

describe('tables of what to buy and how to cut', () => {
  it('the shopping list tells how good each plan is, what the piece weighs, and what it took for granted', {
    timeout: 120_000,
  }, () => {
    const { columns, rows } = shoppingTable(sideboard, plan);
    for (const { cells } of rows) expect(cells).toHaveLength(columns.length);
    const find = (buy: string) => rows.find(({ cells }) => cells[0] === buy)?.cells ?? [];
    expect(find('ash panel')[columns.indexOf('Notes')]).toMatch(/^\d+ % waste; proved least$/);
    expect(find('Weight')[columns.indexOf('Quantity')]).toMatch(/^1\d\d lb$/);
    expect(find('Weight')[columns.indexOf('Notes')]).toContain('ash as white ash');
    expect(find('Kerf')[columns.indexOf('Notes')]).toContain('assumed');
  });

  it('what is in no plan stands in the list with its reason', async () => {
    const piece = await pieceOfText(`units inches to 1/32
sheet "ply" actual 3/4, 30 long, 20 wide
piece "box" { size 30 wide, 36 high, 12 deep   case { sides "ply" thick 3/4   bottom "ply" thick 3/4, between sides } }`);
    const { rows } = shoppingTable(piece, planned(piece));
    const heading = rows.findIndex(({ kind, cells }) => kind === 'heading' && cells[0]?.startsWith('Not in the plan'));
    expect(rows.slice(heading + 1, heading + 3).map(({ cells }) => [cells[0], cells.at(-1)])).toEqual([
      ['left side, mark A1', 'larger than every sheet'],
      ['right side, mark A2', 'larger than every sheet'],
    ]);
    expect(rows[heading + 3]?.kind).toBe('heading');
  });

  it('what is not bought for sure stands below the total, under words of its own', () => {
    const { columns, rows } = shoppingTable(sideboard, plan);
    const headings = rows.flatMap(({ kind, cells }) => (kind === 'heading' ? [cells[0]?.split(/[:,]/)[0]] : []));
    expect(headings).toEqual(['Spare wood', 'Left over and worth keeping', 'What the list rests on']);
    const total = rows.findIndex(({ kind }) => kind === 'total');
    expect(rows.findIndex(({ kind }) => kind === 'heading')).toBe(total + 1);
    // What is above the total makes it up, and nothing below it stands in the column of costs.
    const costs = rows.map(({ cells }) => cells[columns.indexOf('Cost')] ?? '');
    const sum = costs.slice(0, total).reduce((cents, cost) => cents + Math.round(Number(cost) * 100), 0);
    expect((sum / 100).toFixed(2)).toBe(costs[total]);
    expect(costs.slice(total + 1).filter(Boolean)).toEqual([]);
    expect(rows.find(({ cells }) => cells[0] === 'Tallied')?.cells.at(-1)).toContain('board feet as a hardwood yard');
  });

  it('edging is bought by how long it is in all, and its longest strip is told', () => {
    const { columns, rows } = shoppingTable(sideboard, plan);
    const edging = rows.find(({ cells }) => cells[0] === 'Edging: ash')?.cells ?? [];
    expect(edging[columns.indexOf('Quantity')]).toBe('32');
    expect(edging[columns.indexOf('Length')]).toBe('500-3/16"');
    // As long as they are in the end, on a door that is 28-7/16" high.
    expect(edging.at(-1)).toBe('length of all 32 strips, the longest 28-7/16"; ripped from the boards above');
  });

  it('what cannot be made again has a mark at each cut, and its words once for each stock', () => {
    const { columns, rows } = cuttingTable(sideboard, plan);
    const [stock, once, notes] = ['Stock', 'Only once', 'Notes'].map((column) => columns.indexOf(column));
    const marked = rows.filter(({ cells }) => cells[once ?? -1] === 'once');
    expect(marked).toHaveLength(cutSequence(plan).filter(({ isWithoutWayBack }) => isWithoutWayBack).length);
    expect(rows[0]?.cells[notes ?? -1]).toMatch(/^codes: 1b is the second piece cut from sheet or board 1/);
    const told = rows.filter(({ cells }) => cells[notes ?? -1]?.includes('from here on'));
    expect(told.length).toBeLessThan(marked.length / 4);
    for (const row of told) expect(row.cells[once ?? -1]).toBe('once');
    const stocks = new Set(marked.map(({ cells }) => cells[stock ?? -1]));
    expect(new Set(told.map(({ cells }) => cells[stock ?? -1]))).toEqual(stocks);
  });

  it('each cut says what goes to the saw: the stock itself, or what is there by then', () => {
    const { columns, rows } = cuttingTable(sideboard, plan);
    const from = columns.indexOf('From');
    expect(from).toBe(columns.indexOf('Fence or stop') - 1);
    const sequence = cutSequence(plan);
    const there = new Set<string>();
    const kinds = { stock: 0, piece: 0 };
    sequence.forEach(({ from: laid, cut }, at) => {
      const words = rows[at]?.cells[from];
      if (cut.of === `${laid.number}`) {
        expect(words).toBe(`${laid.kind} ${laid.number}`);
        kinds.stock += 1;
      } else {
        expect(words).toBe(cut.of);
        kinds.piece += 1;
        // What is left when nothing more is cut off has a name too, and no cut that gives it.
        const area = laid.parted.find(({ name }) => name === cut.of);
        expect(there.has(`${laid.number} ${cut.of}`) || area !== undefined, `cut ${at + 1} from ${cut.of}`).toBe(true);
        if (area !== undefined) {
          const [start, size] = cut.direction === 'rip' ? [area.across, area.width] : [area.along, area.length];
          expect(cut.at.compare(start) > 0 && cut.at.compare(start.plus(size)) < 0, `cut ${at + 1}`).toBe(true);
        }
      }
      if (cut.gives !== undefined) there.add(`${laid.number} ${cut.gives}`);
    });
    expect(kinds.stock).toBeGreaterThan(0);
    expect(kinds.piece).toBeGreaterThan(kinds.stock);
  });

  it('the cuts of the table are those of the sequence, in their order', () => {
    const { rows } = cuttingTable(sideboard, plan);
    expect(rows.map(({ cells }) => Number(cells[0]))).toEqual(cutSequence(plan).map(({ number }) => number));
    expect(cutListCsv(cuttingTable(sideboard, plan)).split('\r\n')).toHaveLength(rows.length + 2);
    const known = new Set(sideboard.parts.map(({ id }) => id));
    expect(rows.flatMap(({ parts }) => parts).filter((id) => !known.has(id))).toEqual([]);
    expect(laidOut(plan).length).toBeGreaterThan(5);
  });
});
