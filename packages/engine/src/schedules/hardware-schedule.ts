import type { Evaluation } from '../evaluation.ts';
import { groupAlike } from '../grouping.ts';
import type { HardwareKind, PlacedHardware } from '../hardware/placed-hardware.ts';

/** All hardware of one kind and one shop entry, and each way in which some of it is set. */
export interface ScheduledHardware {
  readonly kind: HardwareKind;
  /** The name of its shop entry; absent for hardware that no shop file describes. */
  readonly entry?: string;
  readonly count: number;
  readonly settings: readonly HardwareSetting[];
}

/** What is set alike: the same distances from the same datums. */
export interface HardwareSetting {
  readonly set: PlacedHardware['set'];
  readonly all: readonly [PlacedHardware, ...PlacedHardware[]];
}

/** In the order in which they were first placed. */
export function hardwareSchedule({ hardware }: Pick<Evaluation, 'hardware'>): readonly ScheduledHardware[] {
  return groupAlike(hardware, ({ kind, entry }) => [kind, entry ?? '']).map((same) => {
    const [{ kind, entry }] = same;
    return {
      kind,
      ...(entry === undefined ? {} : { entry }),
      count: same.length,
      settings: groupAlike(same, ({ set }) => [
        set.map(({ words, figure }) => `${words} ${figure.length.exactInches}`).join('; '),
      ]).map((all) => ({ set: all[0].set, all })),
    };
  });
}
