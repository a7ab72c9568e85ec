import type { Origin } from '@fettle/findings';
import type { HeldDesign } from './contents-design.ts';
import type { Material } from './design.ts';
import type { Figure } from './figure.ts';

/** Partitions in a drawer box, as the maker wrote them. */
export interface CompartmentsDesign {
  readonly origin: Origin;
  /** `across`: side by side, with partitions from the front to the back. `behind`: one behind the other. */
  readonly way: 'across' | 'behind';
  readonly material: Material;
  /** Of the partitions; as high as the sides where it is absent. */
  readonly height?: Figure;
  /** How deep each end lies in the wall that takes it. */
  readonly dado: Figure;
  /** From the left, or from the front; two at least. */
  readonly each: readonly CompartmentDesign[];
}

export interface CompartmentDesign {
  readonly origin: Origin;
  /** Clear between partitions; a share of what is left where it is absent. */
  readonly size?: Figure;
  readonly holds?: readonly HeldDesign[];
}
