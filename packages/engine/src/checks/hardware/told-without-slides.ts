import { detailWithoutJoint, type Finding, type Origin } from '@fettle/findings';
import type { DrawerDesign } from '../../design/design.ts';
import { groupAlike } from '../../grouping.ts';
import type { LaidDrawer } from '../../parts/laid-drawers.ts';

/** What is said of the slides of drawers that have none. Nothing is told while one of the drawers it is said of has some. */
export function toldWithoutSlides(drawers: readonly LaidDrawer[]): readonly Finding[] {
  const told = drawers.flatMap(({ drawer }) => toldOfSlides(drawer).map((each) => ({ ...each, drawer })));
  return groupAlike(told, ({ origin }) => origin).flatMap((group): readonly Finding[] => {
    const [{ words, of, origin, statement }] = group;
    if (group.some(({ drawer }) => hasSlides(drawer))) return [];
    return [
      detailWithoutJoint.at(
        origin,
        { words, of },
        { mends: [{ how: 'remove', values: {}, changes: [{ kind: 'remove', at: statement }] }] },
      ),
    ];
  });
}

interface Told {
  readonly words: string;
  readonly of: string;
  readonly origin: Origin;
  readonly statement: Origin;
}

function toldOfSlides({ packers, compared }: DrawerDesign): readonly Told[] {
  return [
    ...(packers === undefined ? [] : [{ ...packers, words: "'packers'", of: 'slides beside the box' }]),
    ...(compared === undefined ? [] : [{ ...compared, words: "'compare'", of: 'slides that are chosen' }]),
  ];
}

/** Whether any are named, even if their shop data cannot be read. */
function hasSlides({ slides, slidesOrigin }: DrawerDesign): boolean {
  return slides !== undefined || slidesOrigin !== undefined;
}
