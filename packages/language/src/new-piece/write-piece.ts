import { exactSource, Length } from '@fettle/engine';
import {
  type Content,
  downTo,
  type Household,
  half,
  type Ruler,
  type System,
  systemOf,
  wholeNumberOf,
} from './answers.ts';
import { columnsFor, hasDrawers, type Kind, type Place, plinthHeight, widestThatGoesIn } from './place.ts';
import { hingeNames, type StockNames, slideFor, stockNames } from './starter-shop.ts';

/** Writes the first design of a piece as its maker would: short, every number chosen, nothing computed that follows. */

export interface FirstDesign {
  readonly name: string;
  readonly ruler: Ruler;
  readonly holds: readonly Content[];
  readonly people: Household;
  /** Where it stands. */
  readonly place: Place;
  readonly size: Place;
}

interface Writing {
  readonly system: System;
  readonly stock: StockNames;
  readonly design: FirstDesign;
  readonly inset: boolean;
  /** Height of the face: between bottom and top. */
  readonly face: Length;
  readonly hanging: Hanging;
}

/** How its doors hang, where more than one way does. */
export interface Hanging {
  /** Hinges to each door; absent: as many as its height and weight ask for. */
  readonly count?: number;
}

/** The usual one first. Others move the hinges between the ends, where they would meet what the partition holds. */
export const hangings: readonly Hanging[] = [{}, { count: 2 }, { count: 4 }, { count: 3 }, { count: 5 }];

/** `shop` is the file it uses, as the text names it. */
export function writePiece(design: FirstDesign, shop: string, hanging: Hanging = {}): string {
  const system = systemOf(design.ruler);
  const stock = stockNames(system);
  const face = design.size.height.minus(plinthHeight(system)).minus(stock.panelThickness.times(2));
  // Beside an open shelf a front looks right flush with the case; without one it is simpler to lay it on.
  const writing = { system, stock, design, face, inset: design.holds.includes('books'), hanging };
  const { place, size } = design;
  const lines = [
    ...remarks(writing),
    `use "${shop}"`,
    '',
    `piece "${design.name}" {`,
    `  units ${system.unitsWords}`,
    `  size ${wide(writing, size.width)}, ${high(writing, size.height)}, ${said(writing, size.depth)} deep`,
    '',
    '  site {',
    `    alcove ${wide(writing, place.width)}, ${high(writing, place.height)}, ${said(writing, place.depth)} deep`,
    '  }',
    '',
    ...caseLines(writing),
    '',
    ...faceLines(writing),
    '}',
  ];
  return `${lines.join('\n')}\n`;
}

/** What the maker has to know and no statement says yet. */
export function cautions({ holds, people, place, ruler, size }: FirstDesign): readonly string[] {
  const told: string[] = [];
  const system = systemOf(ruler);
  if (people === 'children') {
    told.push('Fasten it to the wall through its back before anything goes in: small children live with it.');
    // 16 CFR 1261.2 with ASTM F2057-23: free-standing clothing storage of 27" (686 mm) and more.
    if (holds.includes('clothes') && size.height.compare(system.of(Length.inches(27), 686)) >= 0) {
      told.push(
        'Sold in the USA, free-standing clothing storage this high has to pass the tip-over tests of 16 CFR 1261.',
      );
    }
  }
  if (size.width.compare(widestThatGoesIn(system, place.width)) < 0) {
    told.push('One sheet makes the back; to fill the place, put a second piece beside this one.');
  }
  if (people === 'seated') told.push('Reached by somebody seated: no shelf or drawer stands higher than 48 inches.');
  return told;
}

function remarks(writing: Writing): readonly string[] {
  return [
    '// A first design: change whatever you like, the rest follows.',
    ...cautions(writing.design).map((each) => `// ${each}`),
  ];
}

function said({ system }: Writing, length: Length): string {
  return exactSource(length, system.unit).replace(/("|mm)$/, '');
}
function wide(writing: Writing, length: Length): string {
  return `${said(writing, length)} wide`;
}
function high(writing: Writing, length: Length): string {
  return `${said(writing, length)} high`;
}

function caseLines(writing: Writing): readonly string[] {
  const { design, stock, system } = writing;
  const inches = system.unit === 'in';
  // A back of that thickness can be fastened to the wall anywhere, without a strip behind it (Architectural Woodwork
  // Standards 2009, 10-4.4.18: none is needed where the back is 1/2" or more).
  const back =
    design.people === 'children'
      ? `back "${stock.backing}" in rabbet ${inches ? '1/4' : '8'} deep`
      : `back "${stock.thin}" in groove ${inches ? '1/4' : '6'} deep, ${inches ? '1/2' : '15'} in from back edge`;
  return [
    '  case {',
    `    top "${stock.panel}" between sides`,
    `    plinth ${high(writing, plinthHeight(system))}, set back ${inches ? '2' : '50'}, of "${stock.panel}"`,
    `    sides "${stock.panel}"`,
    `    bottom "${stock.panel}" between sides`,
    `    ${back}`,
    `    join dado ${inches ? '1/4' : '6'} deep`,
    '  }',
  ];
}

function faceLines(writing: Writing): readonly string[] {
  const { design, inset, stock, system } = writing;
  const inches = system.unit === 'in';
  const columns = columnsFor(system, design.size, design.holds);
  const fit = inset ? `inset, gap ${inches ? '3/32' : '2'}` : `overlay full, gap ${inches ? '1/8' : '3'}`;
  const placed = columns.map((kinds, index) => columnLines(writing, kinds, index, columns.length));
  const upright = `partition "${stock.panel}", ${inset ? 'shown' : 'behind fronts'}`;
  const cells =
    placed.length === 1
      ? (placed[0] ?? [])
      : ['row {', ...indented(placed.flatMap((lines, index) => (index === 0 ? lines : [upright, ...lines]))), '}'];
  const hasFronts = columns.some((kinds) => kinds.some((kind) => kind !== 'shelves'));
  const common = [
    ...(hasFronts ? [`fronts "${stock.panel}"`] : []),
    ...(hasDrawers(design.holds)
      ? [
          'drawers {',
          `  sides "${stock.box}"`,
          `  bottom "${stock.thin}"`,
          '  corners rabbet',
          `  slides "${slideFor(system, design.size.depth).name}"`,
          '}',
        ]
      : []),
    ...(hasFronts ? [`pulls "${stock.pull}"`] : []),
  ];
  return [`  face ${fit} {`, ...indented(indented([...cells, ...common])), '  }'];
}

function indented(lines: readonly string[]): readonly string[] {
  return lines.map((line) => `  ${line}`);
}

/** Where a column stands, as one would say it. */
function columnName(index: number, count: number): string {
  if (count === 1) return '';
  if (count === 2) return index === 0 ? 'left ' : 'right ';
  if (count === 3) return ['left ', 'middle ', 'right '][index] ?? '';
  return `column ${index + 1} `;
}

function columnLines(writing: Writing, kinds: readonly Kind[], index: number, count: number): readonly string[] {
  const where = columnName(index, count);
  const share = count === 1 ? '' : ' share 1';
  const [only] = kinds;
  if (kinds.length === 1 && only !== 'drawers') {
    return only === undefined ? [] : spaceLines(writing, only, where, share, writing.face, index, count);
  }
  if (kinds.length === 1) return [`stack${share} {`, ...indented(drawerStack(writing, where)), '}'];

  // Drawers below have their own heights; what is above them shares the rest.
  const { stock, inset } = writing;
  const drawers = kinds.includes('drawers') ? lowDrawers(writing, kinds.length) : [];
  const others = kinds.filter((kind) => kind !== 'drawers');
  const left = writing.face.minus(Length.sum(drawers));
  const between = `divider panel of "${stock.panel}", ${inset ? 'shown' : 'behind fronts'}`;
  const zones = others.map((kind) =>
    spaceLines(
      writing,
      kind,
      where,
      others.length === 1 ? ' rest' : ' share 1',
      left.dividedBy(others.length),
      index,
      count,
    ),
  );
  if (drawers.length > 0) {
    zones.push(drawers.map((front, at) => `drawer "${where}drawer ${at + 1}" front ${high(writing, front)}`));
  }
  return [`stack${share} {`, ...indented(zones.flatMap((lines, at) => (at === 0 ? lines : [between, ...lines]))), '}'];
}

/** A space of about this height, with as many shelves as leave a foot between them. */
function spaceLines(
  writing: Writing,
  kind: Kind,
  where: string,
  size: string,
  height: Length,
  index: number,
  columns: number,
): readonly string[] {
  const { design, stock, system } = writing;
  const shelves = wholeNumberOf(height, system.of(Length.inches(13), 330));
  const inside = shelves === 0 ? '' : `shelves ${shelves} adjustable of "${stock.panel}"`;
  const body = (words: string) => (words === '' ? '' : ` { ${words} }`);
  if (kind === 'shelves') return [`open "${where}shelves"${size}${body(inside)}`];
  // One door wider than this swings far into the room and pulls hard at its hinges; wider than high, it sags.
  const widestDoor = system.of(Length.inches(22), 560).min(height.minus(system.of(Length.inches(1), 25)));
  const isPair = design.size.width.dividedBy(columns).compare(widestDoor) > 0;
  // A single door hangs on the side of the case, away from what stands beside its column.
  const hanging = index === columns - 1 && columns > 1 ? 'right' : 'left';
  const head = isPair ? `doors "${where}doors"${size}` : `door "${where}door"${size} hinged ${hanging}`;
  const within = [
    ...(isPair ? ['pair'] : []),
    hingeWords(writing, index, columns, isPair ? 'both' : hanging),
    ...(inside === '' ? [] : [inside]),
  ];
  return [`${head} {`, ...indented(within), '}'];
}

/** A door laps a side of the case by nearly all of it, and a partition that the next front shares by less than half. */
function hingeWords(
  { hanging, inset }: Writing,
  index: number,
  columns: number,
  on: 'left' | 'right' | 'both',
): string {
  const left = index === 0 ? hingeNames.side : hingeNames.partition;
  const right = index === columns - 1 ? hingeNames.side : hingeNames.partition;
  const one = on === 'left' ? left : right;
  const names = inset
    ? `"${hingeNames.inset}"`
    : on === 'both' && left !== right
      ? `"${right}", "${left}" at left`
      : `"${one}"`;
  const count = hanging.count === undefined ? '' : `, ${hanging.count} to each door`;
  return `hinges ${names}${count}`;
}

/** About how high a front is for what goes behind it. */
function frontHeight({ design, system }: Writing): Length {
  const small = design.holds.includes('papers');
  const large = design.holds.includes('clothes');
  if (small && large) return system.of(Length.inches(7), 180);
  return small ? system.of(Length.inches(5), 130) : system.of(Length.inches(9), 230);
}

function step({ system }: Writing): Length {
  return system.of(Length.inches(1, 2), 12);
}

function drawerCount(writing: Writing): number {
  return Math.min(9, Math.max(1, wholeNumberOf(writing.face, frontHeight(writing))));
}

/** Drawers from top to bottom of a column; the last takes the rest, so that all of them add up whatever changes. */
function drawerStack(writing: Writing, where: string): readonly string[] {
  const { design, face, system } = writing;
  const count = drawerCount(writing);
  const grown = design.holds.includes('clothes') ? step(writing) : Length.zero;
  const first = downTo(system.grid, face.dividedBy(count).minus(grown.times(count - 1).times(half)));
  return Array.from({ length: count }, (_, index) => {
    const size = index === count - 1 ? 'rest' : `front ${high(writing, first.plus(grown.times(index)))}`;
    return `drawer "${where}drawer ${index + 1}" ${size}`;
  });
}

/** Drawers below something else: about a third of the height, each half an inch higher than the one above it. */
function lowDrawers(writing: Writing, kinds: number): readonly Length[] {
  const { face, system } = writing;
  const room = face.dividedBy(kinds).min(system.of(Length.inches(30), 760));
  const wanted = frontHeight(writing);
  const count = Math.min(5, Math.max(1, wholeNumberOf(room, wanted)));
  const least = wanted.min(room.times(half).max(system.of(Length.inches(4), 100)));
  const start =
    count === 1
      ? least
      : wanted.minus(
          step(writing)
            .times(count - 1)
            .times(half),
        );
  const onGrid = downTo(system.grid, start);
  return Array.from({ length: count }, (_, index) => onGrid.plus(step(writing).times(index)));
}
