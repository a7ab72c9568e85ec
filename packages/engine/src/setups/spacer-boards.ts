import { derive, less, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { Evaluation } from '../evaluation.ts';
import { groupAlike } from '../grouping.ts';
import { ABOVE_BOTTOM } from '../hardware/drawer-slides.ts';
import type { PlacedHardware } from '../hardware/placed-hardware.ts';

/**
 * What slides are held on while they are screwed to the case: either one board that stands on the bottom and is cut down
 * from the highest setting to the lowest, both sides of the case at each, or blocks that are piled up. Either way each
 * slide is measured from the bottom, and left and right cannot differ.
 */
export interface SpacerPlan {
  /** The highest first. */
  readonly settings: readonly SpacerSetting[];
  /** The lowest first: each lies on those before it. */
  readonly blocks: readonly SpacerBlock[];
}

export interface SpacerSetting {
  /** From the bottom of the case to the lower edges of the slides: how wide the board is cut. */
  readonly height: Figure;
  /** The cells of the drawers whose slides are screwed on at it. */
  readonly cells: readonly string[];
  /** In the maker's words: 'left slide of "cards"'. */
  readonly slides: readonly string[];
  /** The parts that they are screwed to. */
  readonly parts: readonly string[];
}

export interface SpacerBlock {
  readonly height: Figure;
  /** The height of the pile with it. */
  readonly reaches: Figure;
}

/** Undefined where no slide lies above the bottom. */
export function spacersOf({ hardware }: Pick<Evaluation, 'hardware'>): SpacerPlan | undefined {
  const slides = hardware.flatMap((slide) => {
    const height = slide.kind === 'slide' ? heightOf(slide) : undefined;
    return height?.length.isPositive() ? [{ slide, height }] : [];
  });
  const settings = groupAlike(slides, ({ height }) => height.length.exactInches)
    .map(
      (group): SpacerSetting => ({
        height: group[0].height,
        cells: distinct(group.flatMap(({ slide }) => slide.cell ?? [])),
        slides: group.map(({ slide }) => slide.label),
        parts: distinct(group.flatMap(({ slide }) => slide.on)),
      }),
    )
    .sort((a, b) => b.height.length.compare(a.height.length));
  return settings.length === 0 ? undefined : { settings, blocks: piled(settings) };
}

function heightOf({ set }: PlacedHardware): Figure | undefined {
  return set.find(({ words }) => words === ABOVE_BOTTOM)?.figure;
}

function piled(settings: readonly SpacerSetting[]): readonly SpacerBlock[] {
  const upwards = settings.map(({ height }) => height).reverse();
  return upwards.map((reaches, index) => {
    const below = upwards[index - 1];
    const height =
      below === undefined
        ? reaches
        : derive('what the block adds', [plus('height of this setting', reaches), less('of the one below', below)]);
    return { height, reaches };
  });
}

function distinct(words: readonly string[]): readonly string[] {
  return [...new Set(words)];
}
