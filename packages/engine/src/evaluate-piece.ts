import type { Finding } from '@fettle/findings';
import { drawerFindings } from './checks/drawers.ts';
import { lapFindings } from './checks/laps.ts';
import { positiveCarcase, positiveFace, positiveParts } from './checks/positive-sizes.ts';
import { sumFindings } from './checks/sums.ts';
import type { PieceDesign } from './design/design.ts';
import type { SlideEntry } from './design/shop.ts';
import type { CarcaseLayout, Evaluation, Layout } from './evaluation.ts';
import { layOutCarcase } from './layout/carcase.ts';
import { type FaceLayout, layOutFace } from './layout/lay-out-face.ts';
import { carcaseParts } from './parts/carcase-parts.ts';
import { faceParts } from './parts/face-parts.ts';
import { markParts } from './parts/marks.ts';
import { isSound } from './parts/slab.ts';

/** What the shop has besides what the design chose: mends pick from it. */
export interface ShopOffer {
  readonly slides: readonly SlideEntry[];
}

const emptyShop: ShopOffer = { slides: [] };

/**
 * Everything the engine can say about one piece. Never throws for any design: half a design gives half a layout, what
 * cannot be known is absent, and what is wrong is in the findings.
 */
export function evaluatePiece(design: PieceDesign, shop: ShopOffer = emptyShop): Evaluation {
  const carcase = layOutCarcase(design);
  if (carcase === undefined) return { design, layout: {}, parts: [], findings: [] };

  const findings: Finding[] = [...positiveCarcase(design, carcase)];
  const face = design.face === undefined || findings.length > 0 ? undefined : layOutFace(design.face, carcase);
  if (design.face !== undefined && face !== undefined) {
    findings.push(...sumFindings(face));
    findings.push(...positiveFace(face));
    findings.push(...lapFindings(design.face, carcase));
    findings.push(...drawerFindings(design, design.face, carcase, face.face, shop.slides));
  }

  const parts = [
    ...carcaseParts(design, carcase),
    ...(design.face === undefined || face === undefined ? [] : faceParts(design.face, carcase, face.face)),
  ];
  // A part without a size has its cause in what was already found; it is a finding of its own only where nothing was.
  if (findings.length === 0) findings.push(...positiveParts(parts));
  return { design, layout: layoutOf(carcase, face), parts: markParts(parts.filter(isSound)), findings };
}

function layoutOf(carcase: CarcaseLayout, face: FaceLayout | undefined): Layout {
  return face === undefined ? { carcase } : { carcase, face: face.face };
}
