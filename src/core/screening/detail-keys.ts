/** What can be ticked under a screening question, as "heart-condition.unstable": the item, then the detail. */
import type { bloodAndVesselItems } from './items/blood-and-vessels.ts';
import type { generalHealthItems } from './items/general-health.ts';
import type { heartAndPressureItems } from './items/heart-and-pressure.ts';
import type { limbAndJointItems } from './items/limbs-and-joints.ts';

type Item = (
  | typeof heartAndPressureItems
  | typeof bloodAndVesselItems
  | typeof generalHealthItems
  | typeof limbAndJointItems
)[number];

type DetailsOf<I> = I extends {
  readonly id: infer ItemId extends string;
  readonly asks: { readonly details: readonly (infer DetailId extends string)[] };
}
  ? `${ItemId}.${DetailId}`
  : never;

export type ScreeningDetailKey = DetailsOf<Item>;
