import type { PieceDesign } from '../design/design.ts';
import { type UnmarkedPart, withBlank } from '../parts/slab.ts';
import { backGrooves } from './back-grooves.ts';
import { blankOf, type Growth } from './blanks.ts';
import type { Feature } from './feature.ts';
import { joinFrames } from './frame-joints.ts';
import type { Joint } from './joint.ts';
import { joinPanels } from './panel-joints.ts';

/**
 * Joins the parts of a piece: says how each holds to its neighbours, lengthens what goes into a joint and cuts what
 * takes it. Parts come in as one sees them, from shoulder to shoulder, and go out as they are cut.
 */
export interface JoinedParts {
  readonly parts: readonly UnmarkedPart[];
  readonly joints: readonly Joint[];
}

/** What one kind of joinery asks for; several are put together by `joinParts`. */
export interface Joinery {
  readonly joints: readonly Joint[];
  /** By the id of the part. */
  readonly growth: readonly Growth[];
  readonly features: readonly Feature[];
}

export function joinParts(design: PieceDesign, parts: readonly UnmarkedPart[]): JoinedParts {
  const panels = joinPanels(design.carcase, parts);
  const frames = joinFrames(design, parts);
  const grown = grow(parts, [...frames.growth, ...panels.growth]);
  const back = backGrooves(design.carcase, grown);
  const features = new Map<string, Feature[]>();
  for (const feature of [...panels.features, ...back.features, ...frames.cut(grown)]) {
    const cut = features.get(feature.part);
    if (cut === undefined) features.set(feature.part, [feature]);
    else cut.push(feature);
  }
  return {
    parts: grown.map((part) => {
      const cut = features.get(part.id);
      return cut === undefined ? part : { ...part, features: cut };
    }),
    joints: [...panels.joints, ...back.joints, ...frames.joints],
  };
}

function grow(parts: readonly UnmarkedPart[], growth: readonly Growth[]): readonly UnmarkedPart[] {
  if (growth.length === 0) return parts;
  const byPart = new Map<string, Growth[]>();
  for (const each of growth) {
    const known = byPart.get(each.part);
    if (known === undefined) byPart.set(each.part, [each]);
    else known.push(each);
  }
  return parts.map((part) => {
    const own = byPart.get(part.id);
    return own === undefined ? part : withBlank(part, blankOf(part.box, own));
  });
}
