import type { EdgeName, EdgingDesign } from '../design/construction-design.ts';
import { derive, plus } from '../design/derive.ts';
import type { Figure, Operand } from '../design/figure.ts';
import { axisOf, type FaceOfPart } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import { boxOf, prismOf } from '../solids/makers.ts';
import { type Axis, axesAcross, type Interval, type Solid } from '../solids/solid.ts';
import type { Block, EdgingStrip } from './part.ts';

/**
 * The strips on the edges of a panel, as volumes in its blank. Strips along its length run through; those across it
 * stand between them, or all are mitred. Knows nothing of which part it is.
 */

const faceOfEdge: Readonly<Record<EdgeName, FaceOfPart>> = {
  left: '-x',
  right: '+x',
  bottom: '-y',
  top: '+y',
  front: '-z',
  back: '+z',
};

/** An edge that is a face of this part has no strip. */
export function edgingStrips(
  edging: EdgingDesign,
  thin: Axis,
  grain: Axis | 'none',
  blank: Block,
): readonly EdgingStrip[] {
  const faces = [...new Set(edging.edges.map((edge) => faceOfEdge[edge]))].filter((face) => axisOf(face) !== thin);
  const strip = edging.thickness.length;
  const along = grain === 'none' ? longerAxis(thin, blank) : grain;
  return faces.map((at): EdgingStrip => {
    const across = axisOf(at);
    const runs = axesAcross(thin).find((axis) => axis !== across) ?? across;
    const meets = (['-', '+'] as const).map((end) => faces.includes(`${end}${runs}`)) as [boolean, boolean];
    const butts = edging.corners === 'butted' && runs !== along ? meets : ([false, false] as [boolean, boolean]);
    return {
      at,
      thickness: edging.thickness,
      ...(edging.stock === undefined ? {} : { stock: edging.stock }),
      corners: edging.corners,
      veneer: edging.veneer,
      solid: stripSolid(blank, thin, at, runs, strip, edging.corners === 'mitred' ? meets : [false, false], butts),
      length: stripLength(blank[runs].size, edging.thickness, butts),
      origin: edging.origin,
    };
  });
}

function longerAxis(thin: Axis, blank: Block): Axis {
  const [one, other] = axesAcross(thin);
  return blank[one].size.length.compare(blank[other].size.length) >= 0 ? one : other;
}

function stripLength(edge: Figure, strip: Figure, butts: readonly [boolean, boolean]): Figure {
  const count = butts.filter(Boolean).length;
  if (count === 0) return edge;
  const taken: Operand = { sign: '-', label: 'thickness of the strips it stands between', figure: strip, times: count };
  return derive('length of the strip', [plus('the edge', edge), taken]);
}

function stripSolid(
  blank: Block,
  thin: Axis,
  at: FaceOfPart,
  runs: Axis,
  strip: Length,
  mitres: readonly [boolean, boolean],
  butts: readonly [boolean, boolean],
): Solid {
  const across = axisOf(at);
  const atStart = at.startsWith('-');
  const outer = atStart ? blank[across].start.length : blank[across].end.length;
  const inner = atStart ? outer.plus(strip) : outer.minus(strip);
  const [from, to] = [blank[runs].start.length, blank[runs].end.length];
  const whole: Interval = { from: blank[thin].start.length, to: blank[thin].end.length };
  if (!mitres[0] && !mitres[1]) {
    const lies: Record<Axis, Interval> = { x: whole, y: whole, z: whole };
    lies[across] = { from: outer.min(inner), to: outer.max(inner) };
    lies[runs] = { from: butts[0] ? from.plus(strip) : from, to: butts[1] ? to.minus(strip) : to };
    return boxOf(lies.x, lies.y, lies.z);
  }
  const [first] = axesAcross(thin);
  const corner = (place: Length, depth: Length): readonly [Length, Length] =>
    first === runs ? [place, depth] : [depth, place];
  return prismOf(thin, whole, [
    corner(from, outer),
    corner(to, outer),
    corner(mitres[1] ? to.minus(strip) : to, inner),
    corner(mitres[0] ? from.plus(strip) : from, inner),
  ]);
}
