import { cutList, type Evaluation, type LaidCell, type Part, type Span, type Units } from '@fettle/engine';
import { assumedValues } from './assumed-values.ts';
import type { CarcaseJson, CellJson, CutListRowJson, EvaluationJson, PartJson, SizeJson } from './evaluation-json.ts';
import type { FindingJson } from './finding-json.ts';
import { type BoxJson, boxJson, lengthJson, rectangleJson } from './length-json.ts';

/** Writes down what the engine worked out for one piece, in the words of evaluation-json.ts. Works out nothing itself. */
export function evaluationOfPiece(
  evaluation: Evaluation,
  file: string,
  findings: readonly FindingJson[],
): EvaluationJson {
  const { design, layout, parts } = evaluation;
  const { units } = design;
  return {
    format: 'fettle-evaluation',
    version: 1,
    piece: design.name,
    file,
    sound: findings.every((finding) => finding.severity !== 'error'),
    units: { unit: units.unit, ruler: units.ruler.toString() },
    size: sizeJson(evaluation),
    ...(layout.carcase === undefined ? {} : { carcase: carcaseJson(layout.carcase, units) }),
    ...(layout.face === undefined ? {} : { face: cellJson(layout.face, boxesOfDrawers(parts, units), units) }),
    parts: parts.map((part) => partJson(part, units)),
    cutList: cutListJson(evaluation),
    findings,
    assumed: assumedValues(parts, units),
  };
}

function sizeJson({ design: { size, units } }: Evaluation): SizeJson {
  return {
    ...(size.width === undefined ? {} : { width: lengthJson(size.width.length, units) }),
    ...(size.height === undefined ? {} : { height: lengthJson(size.height.length, units) }),
    ...(size.depth === undefined ? {} : { depth: lengthJson(size.depth.length, units) }),
  };
}

function carcaseJson(carcase: NonNullable<Evaluation['layout']['carcase']>, units: Units): CarcaseJson {
  const { z } = carcase.inside;
  return {
    body: boxJson(carcase.body, units),
    face: rectangleJson(carcase.face, units),
    inside: {
      depth: lengthJson(z.size.length, units),
      front: lengthJson(z.start.length, units),
      back: lengthJson(z.end.length, units),
    },
  };
}

function cellJson(laid: LaidCell, boxes: ReadonlyMap<string, BoxJson>, units: Units): CellJson {
  const { cell } = laid;
  const box = boxes.get(cell.id);
  return {
    id: cell.id,
    ...(cell.name === undefined ? {} : { name: cell.name }),
    kind: cell.kind === 'front' ? cell.what : cell.kind,
    opening: rectangleJson(laid.opening, units),
    ...(laid.front === undefined ? {} : { front: rectangleJson(laid.front, units) }),
    leaves: laid.leaves.map((leaf) => rectangleJson(leaf, units)),
    ...(box === undefined ? {} : { box }),
    cells: laid.cells.map((inner) => cellJson(inner, boxes, units)),
    dividers: laid.dividers.flatMap(({ divider, at }) =>
      divider.form === 'none'
        ? []
        : [{ id: divider.id, form: divider.form, mode: divider.mode, at: rectangleJson(at, units) }],
    ),
  };
}

/** By cell. A box reaches from the outside of one of its sides to the outside of the other. */
function boxesOfDrawers(parts: readonly Part[], units: Units): ReadonlyMap<string, BoxJson> {
  const sides = new Map<string, Part[]>();
  for (const part of parts) {
    if (part.role !== 'drawer-side' || part.cell === undefined) continue;
    const ofCell = sides.get(part.cell);
    if (ofCell === undefined) sides.set(part.cell, [part]);
    else ofCell.push(part);
  }
  const boxes = new Map<string, BoxJson>();
  for (const [cell, [one, other]] of sides) {
    if (one === undefined || other === undefined) continue;
    const [left, right] = one.box.x.start.length.compare(other.box.x.start.length) <= 0 ? [one, other] : [other, one];
    boxes.set(cell, boxJson({ ...left.box, x: across(left.box.x, right.box.x) }, units));
  }
  return boxes;
}

function across(left: Span, right: Span): Span {
  const length = right.end.length.minus(left.start.length);
  return { start: left.start, end: right.end, size: { ...left.size, length } };
}

const grainWords = { x: 'left-to-right', y: 'upright', z: 'front-to-back', none: 'none' } as const;

function partJson(part: Part, units: Units): PartJson {
  return {
    id: part.id,
    mark: part.mark,
    label: part.label,
    role: part.role,
    ...(part.stock === undefined ? {} : { stock: part.stock.name }),
    length: lengthJson(part.length.length, units),
    width: lengthJson(part.width.length, units),
    thickness: lengthJson(part.thickness.length, units),
    grain: grainWords[part.grain],
    position: boxJson(part.box, units),
    ...(part.cell === undefined ? {} : { cell: part.cell }),
  };
}

function cutListJson({ design: { units }, parts }: Evaluation): readonly CutListRowJson[] {
  return cutList(parts, units.unit).map((row) => ({
    quantity: row.quantity,
    marks: row.marks,
    parts: row.parts,
    labels: row.labels,
    ...(row.stock === undefined ? {} : { stock: row.stock }),
    length: lengthJson(row.length.length, units),
    width: lengthJson(row.width.length, units),
    thickness: lengthJson(row.thickness.length, units),
    grain: row.grain,
  }));
}
