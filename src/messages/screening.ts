/** Questions about health as the patient reads them. */
import { limbs, sides } from '#core/exercises/joints.ts';
import type { ScreeningDetailKey } from '#core/screening/detail-keys.ts';
import type { ScreeningItemId, SheetItem } from '#core/screening/items.ts';
import { everyLanguage, textOf } from './every-language.ts';
import type { SidedLimb } from './sentence.ts';
import { type Text, textBy } from './text.ts';

export const questionText = (item: ScreeningItemId): Text => textOf('screening-questions', item);

/** `key` is the item, then what can be ticked under it: "heart-condition.unstable". */
export const detailText = (key: ScreeningDetailKey): Text => textOf('screening-details', key);

/** An item as it is asked; no details where nothing can be ticked. */
export const asked = ({ id, asks }: SheetItem) => ({
  id,
  question: questionText(id),
  asks: {
    limbs: asks.limbs ?? false,
    joints: asks.joints ?? false,
    day: asks.lastDay !== undefined,
    notApplicable: asks.notApplicable ?? false,
    details: (asks.details ?? []).map((detail) => ({
      id: detail,
      label: detailText(`${id}.${detail}` as ScreeningDetailKey),
    })),
  },
});

const limbText = (limb: SidedLimb): Text =>
  textBy((tag) => everyLanguage[tag].forms.limb?.(limb, '') ?? limb);

/** Arms and legs to choose from: "left arm". */
export const limbChoices = limbs.flatMap((limb) =>
  sides.map((side) => ({ id: `${side}-${limb}` as const, name: limbText(`${side}-${limb}`) })),
);
