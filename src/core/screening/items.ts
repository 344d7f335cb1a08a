/**
 * The screening sheet: items, each answered yes, no or not known.
 *
 * No agreed, exhaustive list of stops for occlusion work exists; this sheet claims none. Items whose
 * ground was only remembered carry the mark "memory" and say so to the clinician.
 */

import { isAskedAt, type ScreeningItem } from './item.ts';
import { bloodAndVesselItems } from './items/blood-and-vessels.ts';
import { generalHealthItems } from './items/general-health.ts';
import { heartAndPressureItems } from './items/heart-and-pressure.ts';
import { limbAndJointItems } from './items/limbs-and-joints.ts';

/** Changes whenever a question, its effects or its minimum set changes. */
export const screeningSheetVersion = '2';

const items = [
  ...heartAndPressureItems,
  ...bloodAndVesselItems,
  ...generalHealthItems,
  ...limbAndJointItems,
] as const;

export type ScreeningItemId = (typeof items)[number]['id'];

/** An item that stands on the sheet. */
export interface SheetItem extends ScreeningItem {
  readonly id: ScreeningItemId;
}

export const screeningItems: readonly SheetItem[] = items;

/** The items people of this age are asked, in the order of the sheet. */
export const itemsAskedAt = (ageYears: number): readonly SheetItem[] =>
  screeningItems.filter((item) => isAskedAt(item, ageYears));

const byId = new Map<string, ScreeningItem>(screeningItems.map((item) => [item.id, item]));

export const screeningItem = (id: string): ScreeningItem | null => byId.get(id) ?? null;

/** Items asked again before each occlusion session. */
export const itemsBeforeOcclusion: readonly ScreeningItem[] = screeningItems.filter(
  (item) => item.askBeforeOcclusion,
);
