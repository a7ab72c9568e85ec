import type { Finding } from '@fettle/findings';
import type { CarcaseLayout } from '../../evaluation.ts';
import type { PlacedHardware } from '../../hardware/placed-hardware.ts';
import type { Length } from '../../length/length.ts';
import type { LaidDrawer } from '../../parts/laid-drawers.ts';
import { runsOnTooLong } from '../drawers.ts';
import type { JoinedCase } from '../joinery/joined-case.ts';
import { centreRunnerFindings } from './centre-runners.ts';
import { comparedSlides } from './compared-slides.ts';
import { packerFindings } from './packer-findings.ts';
import { pinnedPanelFindings } from './pinned-panels.ts';
import { runnerGrooveFindings, runnerPlaceFindings, runnersOutOfPlace } from './runner-grooves.ts';
import { screwFindings } from './screw-findings.ts';
import { slideLoadFindings } from './slide-loads.ts';
import { slidePlaceFindings, slidesOutOfPlace } from './slide-places.ts';
import { runnerScrewFindings } from './strip-screws.ts';
import { toldWithoutSlides } from './told-without-slides.ts';

export interface FittedCase extends JoinedCase {
  readonly layout: CarcaseLayout;
  readonly placed: readonly PlacedHardware[];
  readonly drawers: readonly LaidDrawer[];
  /** The finest mark of the ruler of the piece. */
  readonly mark: Length;
}

/** Whether hardware lies where it can work, has wood to hold in, and carries no more than it may. */
export function hardwareFindings(one: FittedCase): readonly Finding[] {
  const { drawers, layout, parts, placed, shop } = one;
  // What stands beside nothing, or reaches out at the back, has no wood behind it either.
  const tooLong = drawers.filter(runsOnTooLong).map(({ cell }) => cell.id);
  const lost = new Set([...slidesOutOfPlace(drawers, layout), ...tooLong]);
  const lostRunners = runnersOutOfPlace(drawers, parts, layout.unit);
  const inPlace = placed.filter(
    ({ kind, cell }) => !(kind === 'slide' && lost.has(cell)) && !(kind === 'runner' && lostRunners.has(cell)),
  );
  return [
    ...slidePlaceFindings(drawers, layout),
    ...packerFindings(placed),
    ...screwFindings(one, inPlace, one.mark),
    ...pinnedPanelFindings(one, inPlace),
    ...slideLoadFindings(drawers, parts, shop.slides),
    ...runnerGrooveFindings(drawers),
    ...runnerPlaceFindings(drawers, parts, layout.unit, one.mark),
    ...runnerScrewFindings(drawers, layout.unit),
    ...centreRunnerFindings(drawers, layout),
    ...comparedSlides(drawers, layout),
    ...toldWithoutSlides(drawers),
  ];
}
