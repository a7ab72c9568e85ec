import { byEachOther, type CutListRow, cutList, type Evaluation, type FaceOfPart, type Units } from '@fettle/engine';
import Papa from 'papaparse';
import { cleanName } from './lettering.ts';
import { materialWords } from './material-words.ts';
import { shown, unitWords } from './shown-lengths.ts';

/** The cut list as a table for people, and as CSV for whatever reads tables. Knows nothing of how it is shown. */

export interface Table {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
}

export interface TableRow {
  /** What is no row like the others: words over those that follow, in its first cell, or what they come to. */
  readonly kind?: 'heading' | 'total';
  /** Ids of the parts this row stands for, first the one a click should find. */
  readonly parts: readonly string[];
  /** As many as there are columns. */
  readonly cells: readonly string[];
}

const COLUMNS = [
  'Mark',
  'Part',
  'Quantity',
  'Thickness',
  'Width',
  'Length',
  'Material',
  'Grain',
  'Cut first to',
  'Edges',
  'Notes',
] as const;

export function cutListTable(evaluation: Evaluation): Table {
  const { design, parts } = evaluation;
  return {
    title: `Cut list of ${cleanName(design.name)}, finished sizes in ${unitWords(design.units)}`,
    columns: COLUMNS,
    rows: cutList(parts, design.units.unit).map((row) => ({
      parts: row.parts,
      cells: [
        row.marks.map(cleanName).join(', '),
        row.labels.map(cleanName).join('; '),
        `${row.quantity}`,
        shown(row.thickness.length, design.units),
        shown(row.width.length, design.units),
        shown(row.length.length, design.units),
        materialWords(row.role, row.stock) ?? '',
        grainWords(row),
        blankWords(row, design.units),
        edgeWords(row, design.units),
        notesOf(row, evaluation),
      ],
    })),
  };
}

function grainWords({ role, grain }: CutListRow): string {
  if (role === 'pane') return '';
  return grain === 'none' ? 'any way' : 'length';
}

function sizeWords({ length, width }: NonNullable<CutListRow['core']>, units: Units): string {
  return byEachOther(shown(width.length, units), shown(length.length, units));
}

/** What it is sawn out as before it has its finished size; nothing where that is the size itself. */
function blankWords(row: CutListRow, units: Units): string {
  const core = row.core === undefined ? '' : `core ${sizeWords(row.core, units)}`;
  const rough = roughWords(row, units);
  return [core, rough === '' ? '' : `rough ${rough}`].filter(Boolean).join('; ');
}

/** A sheet is cut to the size of its core, or of the part: then there is nothing to say. */
function roughWords({ rough, stock, length }: CutListRow, units: Units): string {
  if (rough === undefined || stock === undefined || rough.length.length.compare(length.length) <= 0) return '';
  const size = sizeWords(rough, units);
  return rough.nominal === undefined ? size : `${rough.nominal} × ${size}`;
}

const edgeNames: Readonly<Record<FaceOfPart, string>> = {
  '-x': 'left',
  '+x': 'right',
  '-y': 'bottom',
  '+y': 'top',
  '-z': 'front',
  '+z': 'back',
};

/** 'front, back: ash 1/4", mitred, before veneer' */
function edgeWords({ edging }: CutListRow, units: Units): string {
  const [first] = edging;
  if (first === undefined) return '';
  const edges = edging.length === 4 ? 'all round' : edging.map(({ at }) => edgeNames[at]).join(', ');
  const material = [first.stock === undefined ? '' : cleanName(first.stock.name), shown(first.thickness.length, units)];
  const corners = edging.length > 1 ? `, ${first.corners}` : '';
  return `${edges}: ${material.join(' ').trim()}${corners}, ${first.veneer} veneer`;
}

/** What is cut into it and what goes into others, and how a top is held. */
function jointNotes({ features, parts, role }: CutListRow, { design, joints }: Evaluation): readonly string[] {
  const { units } = design;
  const counted = new Map<string, number>();
  for (const { kind, measures } of features) {
    if (kind === 'tenon-shoulder' || kind === 'tongue-shoulder' || kind === 'tail-cheek') continue;
    const words = kind.replace('-', ' ');
    const deep = measures.depth === undefined ? words : `${words} ${shown(measures.depth.length, units)} deep`;
    counted.set(deep, (counted.get(deep) ?? 0) + 1);
  }
  const own = parts[0];
  const held = joints
    .filter((joint) => joint.held === own && joint.kind !== 'butt')
    .map(({ kind }) => kind.replaceAll('-', ' '));
  const fixing = role === 'top' ? design.carcase.top?.fixing : undefined;
  return [
    ...[...counted].map(([words, count]) => (count === 1 ? words : `${count} × ${words}`)),
    ...(held.length === 0 ? [] : [`held by ${[...new Set(held)].join(', ')}`]),
    ...(fixing?.kind === 'slotted' ? [`screwed through slots ${fixing.where}, free to move`] : []),
    ...(fixing?.kind === 'glued' ? ['glued down'] : []),
  ];
}

/** Its size is that before the bevel: the edge is planed when the door hangs. */
function bevelNotes(row: CutListRow, { parts, design }: Evaluation): readonly string[] {
  const bevel = parts.find(({ id }) => id === row.parts[0])?.features.find(({ kind }) => kind === 'bevel');
  const off = bevel?.measures.depth;
  return off === undefined ? [] : [`closing edge bevelled ${shown(off.length, design.units)} at the back`];
}

/** Its width is that of the leaf: the panel is as wide as both, with what lies between them. */
function splitNotes(row: CutListRow, { parts, design }: Evaluation): readonly string[] {
  const own = parts.find(({ id }) => id === row.parts[0]);
  if (own?.run?.isSplit === undefined) return [];
  const pair = parts.filter(({ run }) => run?.id === own.run?.id);
  const other = pair.find(({ id }) => id !== own.id);
  if (other === undefined) return [];
  const [from, to] = [own, other].map(({ box }) => box.x).sort((a, b) => a.start.length.compare(b.start.length));
  if (from === undefined || to === undefined) return [];
  const size = (length: Parameters<typeof shown>[0]): string => shown(length, design.units);
  const between = to.start.length.minus(from.end.length);
  return [
    `made as one with ${cleanName(other.mark)}, ${size(to.end.length.minus(from.start.length))} wide, and then cut through: ${size(between)} between them`,
  ];
}

function notesOf(row: CutListRow, evaluation: Evaluation): string {
  const notes: string[] = [
    ...jointNotes(row, evaluation),
    ...bevelNotes(row, evaluation),
    ...splitNotes(row, evaluation),
  ];
  if (materialWords(row.role, row.stock) === undefined) notes.push('material not chosen');
  for (const figure of [row.length, row.width, row.thickness]) {
    if (!figure.length.isPositive()) notes.push('size is not more than nothing');
    if (figure.reason.kind === 'assumed') notes.push(`assumed: ${figure.reason.because}`);
    if (figure.reason.kind === 'measured') notes.push('as measured');
  }
  return [...new Set(notes)].join('; ');
}

/**
 * Comma-separated, with a heading row, lines ended by CR LF (RFC 4180). A cell that a spreadsheet would take for a
 * formula gets an apostrophe before it.
 */
export function cutListCsv(table: Table): string {
  const csv = Papa.unparse(
    { fields: [...table.columns], data: table.rows.map((row) => [...row.cells]) },
    { newline: '\r\n', escapeFormulae: true },
  );
  return `${csv}\r\n`;
}
