import { type Finding, type Mend, packerDoesNotFit } from '@fettle/findings';
import { groupAlike } from '../../grouping.ts';
import type { Packing, PlacedHardware } from '../../hardware/placed-hardware.ts';
import { Length } from '../../length/length.ts';
import { givenAt } from '../written-sizes.ts';

/** Whether packers fill their gaps, and have any to fill. One finding for each statement that asks for them. */
export function packerFindings(hardware: readonly PlacedHardware[]): readonly Finding[] {
  const packed = hardware.flatMap(({ label, packing }) => (packing === undefined ? [] : [{ label, packing }]));
  return groupAlike(packed, ({ packing }) => packing.origin).flatMap((group): readonly Finding[] => {
    const filling = group.filter(({ packing }) => packing.gap !== undefined);
    const [first] = group;
    if (filling.length === 0) {
      const { thickness, origin } = first.packing;
      return [
        packerDoesNotFit.at(
          origin,
          {
            hardware: first.label,
            thickness: thickness.length,
            gap: Length.zero,
            difference: thickness.length,
            how: 'no-gap',
          },
          {
            mends: [
              { how: 'remove', safe: true, values: {}, changes: [{ kind: 'remove', at: first.packing.statement }] },
            ],
          },
        ),
      ];
    }
    const wrong = filling.find(({ packing }) => !packing.gap?.equals(packing.thickness.length));
    if (wrong?.packing.gap === undefined) return [];
    const { gap, thickness, origin } = wrong.packing;
    const difference = thickness.length.minus(gap);
    return [
      packerDoesNotFit.at(
        origin,
        {
          hardware: wrong.label,
          thickness: thickness.length,
          gap,
          difference: difference.abs(),
          how: difference.isPositive() ? 'too-thick' : 'too-thin',
        },
        { mends: filling.every(({ packing }) => packing.gap?.equals(gap)) ? resized(wrong.packing, gap) : [] },
      ),
    ];
  });
}

function resized({ thickness }: Packing, size: Length): readonly Mend[] {
  const at = givenAt(thickness);
  return at === undefined
    ? []
    : [{ how: 'thickness', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
}
