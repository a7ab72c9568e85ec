import type { Finding } from '@fettle/findings';
import { drawerFindings } from './checks/drawers.ts';
import { hardwareFindings } from './checks/hardware/hardware-findings.ts';
import { joineryFindings } from './checks/joinery/joinery-findings.ts';
import { lapFindings } from './checks/laps.ts';
import { negativeFindings } from './checks/negative-sizes.ts';
import { positiveCarcase, positiveFace, positiveParts } from './checks/positive-sizes.ts';
import { revealFindings } from './checks/reveals.ts';
import { sumFindings } from './checks/sums.ts';
import { absurdFindings, designFindings, tradeFindings } from './checks/trade/trade-findings.ts';
import type { PieceDesign } from './design/design.ts';
import type { ShopOffer } from './design/shop.ts';
import type { CarcaseLayout, Evaluation, Layout } from './evaluation.ts';
import { fitHardware } from './hardware/fit-hardware.ts';
import { withFeatures } from './joinery/cut-parts.ts';
import { joinParts } from './joinery/join-parts.ts';
import { layOutCarcase } from './layout/carcase.ts';
import { type FaceLayout, layOutFace } from './layout/lay-out-face.ts';
import { Length } from './length/length.ts';
import { carcaseParts } from './parts/carcase-parts.ts';
import { faceParts } from './parts/face-parts.ts';
import { frontsInSequence, laidSequences } from './parts/front-sequences.ts';
import { laidDrawers } from './parts/laid-drawers.ts';
import { markParts } from './parts/marks.ts';
import { pairsInOne } from './parts/pairs-in-one.ts';
import { isSound } from './parts/slab.ts';

export type { ShopOffer } from './design/shop.ts';

const emptyShop: ShopOffer = { slides: [] };

/**
 * Everything the engine can say about one piece. Never throws for any design: half a design gives half a layout, what
 * cannot be known is absent, and what is wrong is in the findings.
 */
export function evaluatePiece(design: PieceDesign, shop: ShopOffer = emptyShop): Evaluation {
  const negative = negativeFindings(design);
  const written = [...negative, ...designFindings(design)];
  const absurd = absurdFindings(design);
  const carcase = layOutCarcase(design);
  if (carcase === undefined)
    return { design, layout: {}, parts: [], joints: [], hardware: [], findings: [...absurd, ...written] };

  const unsound: Finding[] = [...positiveCarcase(design, carcase)];
  const face = design.face === undefined || unsound.length > 0 ? undefined : layOutFace(design.face, carcase);
  if (face !== undefined)
    unsound.push(...sumFindings(face, Length.of(design.units.ruler, design.units.unit)), ...positiveFace(face));
  const boxes =
    design.face === undefined || face === undefined
      ? []
      : [
          ...lapFindings(design.face, carcase),
          ...revealFindings(design.face, carcase),
          ...drawerFindings(design, design.face, carcase, face.face, shop.slides),
        ];

  const sequences =
    design.face === undefined || face === undefined
      ? []
      : laidSequences(design.sequences ?? [], design.face, face.face);
  const seen = [
    ...carcaseParts(design, carcase, face?.face),
    ...(design.face === undefined || face === undefined
      ? []
      : faceParts(
          design.face,
          carcase,
          face.face,
          new Map([...pairsInOne(design.face, face.face), ...frontsInSequence(sequences, design.face)]),
        )),
  ];
  // A part without a size has its cause in what was already found; it is a finding of its own only where nothing was.
  if (unsound.length === 0 && boxes.length === 0) unsound.push(...positiveParts(seen));

  const joined = joinParts(design, seen.filter(isSound), shop);
  const cut = joined.parts.filter(isSound);
  const hardware = fitHardware({
    design,
    layout: carcase,
    parts: cut,
    ...(face === undefined ? {} : { face: face.face }),
  });
  const sound = withFeatures([...cut, ...(hardware.parts ?? []).filter(isSound)], hardware.features);
  const mark = Length.of(design.units.ruler, design.units.unit);
  const fromTrade =
    unsound.length > 0 || absurd.length > 0 || negative.length > 0
      ? []
      : [
          ...joineryFindings(design, { unit: carcase.unit, mark, shop, parts: sound, joints: joined.joints }),
          ...hardwareFindings({
            mark,
            unit: carcase.unit,
            shop,
            layout: carcase,
            parts: sound,
            joints: joined.joints,
            placed: hardware.placed,
            drawers:
              design.face === undefined || face === undefined ? [] : laidDrawers(design.face, carcase, face.face),
          }),
          ...tradeFindings({
            design,
            shop,
            layout: carcase,
            parts: sound,
            joints: joined.joints,
            ...(design.face === undefined || face === undefined
              ? {}
              : { face: { design: design.face, root: face.face, sequences } }),
          }),
        ];
  // One cause, one finding: what a slip of the unit breaks is not reported beside it, and then the slip is the error.
  const followed = [...unsound, ...boxes];
  const isCause = absurd.length > 0 && followed.some(({ severity }) => severity === 'error');
  return {
    design,
    layout: layoutOf(carcase, face),
    parts: markParts(sound),
    joints: joined.joints,
    hardware: hardware.placed,
    machines: shop.machines ?? [],
    screws: shop.screws ?? [],
    findings: [
      ...(isCause ? absurd.map((finding) => ({ ...finding, severity: 'error' as const })) : [...absurd, ...followed]),
      ...written,
      ...fromTrade,
    ],
  };
}

function layoutOf(carcase: CarcaseLayout, face: FaceLayout | undefined): Layout {
  return face === undefined ? { carcase } : { carcase, face: face.face };
}
