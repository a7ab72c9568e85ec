import type { Stock } from '../../design/shop.ts';
import { axisOf } from '../../joinery/feature.ts';
import type { Length } from '../../length/length.ts';
import type { EdgingStrip, Part } from '../../parts/part.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import type { Blank } from '../blank.ts';

/** Parts and the strips on their edges, each as the blank it is cut from. */
export interface PieceToCut {
  readonly blank: Blank;
  /** Finished. */
  readonly thickness: Length;
  readonly stock?: Stock;
  /** The part that it is, or on whose edge it goes. */
  readonly part: Part;
  /** The other leaf of a pair that is made as one panel and only cut through when all else is done. */
  readonly otherLeaf?: Part;
  /** On drawings: the part's mark, with an e for the strips of its edges. */
  readonly mark: string;
  readonly label: string;
  readonly what: 'part' | 'edging';
}

/** One for each part, and one for each strip. Sizes are finished ones; what is under edging is smaller by its strips. */
export function piecesToCut(parts: readonly Part[]): readonly PieceToCut[] {
  const first = new Map<string, Part>();
  return parts.flatMap((part) => {
    const strips = part.edging.map((strip) => ofStrip(part, strip));
    if (part.run?.isSplit === undefined) return [ofPart(part), ...strips];
    const leaf = first.get(part.run.id);
    if (leaf !== undefined) return [ofPair(leaf, part, part.run.label), ...strips];
    first.set(part.run.id, part);
    const isAlone = parts.every(({ id, run }) => id === part.id || run?.id !== part.run?.id);
    return isAlone ? [ofPart(part), ...strips] : strips;
  });
}

/** One panel as wide as both leaves and what lies between them. */
function ofPair(one: Part, other: Part, label: string): PieceToCut {
  const [from, to] = [one, other].sort((a, b) => a.box.x.start.length.compare(b.box.x.start.length)) as [Part, Part];
  const between = to.box.x.start.length.minus(from.box.x.end.length);
  const [left, right] = [sizesToCut(from), sizesToCut(to)];
  const single = ofPart(from);
  return {
    ...single,
    blank: {
      ...single.blank,
      parts: [
        {
          part: from.id,
          width: left.width.plus(between).plus(right.width),
          length: left.length.max(right.length),
        },
      ],
    },
    otherLeaf: to,
    mark: `${from.mark} + ${to.mark}`,
    label,
  };
}

function ofPart(part: Part): PieceToCut {
  const { width, length } = sizesToCut(part);
  return {
    blank: {
      id: part.id,
      parts: [{ part: part.id, width, length }],
      order: 'across',
      between: [],
      mayTurn: part.grain === 'none' || part.stock?.grain === 'none',
    },
    thickness: part.thickness.length,
    ...(part.stock === undefined ? {} : { stock: part.stock }),
    part,
    mark: part.mark,
    label: part.label,
    what: 'part',
  };
}

/** Finished less the strips on its edges. Which size a strip adds to depends on the axis that its length lies along. */
export function sizesToCut(part: UnmarkedPart): { readonly width: Length; readonly length: Length } {
  let [width, length] = [part.width.length, part.length.length];
  const along = part.grain === 'none' ? longerAxis(part) : part.grain;
  for (const { at, thickness } of part.edging) {
    if (axisOf(at) === along) length = length.minus(thickness.length);
    else width = width.minus(thickness.length);
  }
  return { width, length };
}

/** Without grain the length is the longest edge. */
function longerAxis({ blank, thin }: UnmarkedPart): 'x' | 'y' | 'z' {
  const axes = (['x', 'y', 'z'] as const).filter((axis) => axis !== thin);
  const [one = 'x', other = 'y'] = axes;
  return blank[one].size.length.compare(blank[other].size.length) >= 0 ? one : other;
}

function ofStrip(part: Part, strip: EdgingStrip): PieceToCut {
  const id = `${part.id} edging ${strip.at}`;
  return {
    blank: {
      id,
      parts: [{ part: id, width: strip.thickness.length, length: strip.length.length }],
      order: 'across',
      between: [],
      mayTurn: false,
    },
    thickness: part.thickness.length,
    ...(strip.stock === undefined ? {} : { stock: strip.stock }),
    part,
    mark: `${part.mark}e`,
    label: `edging of ${part.label}`,
    what: 'edging',
  };
}
