/** A screening item with the words it is asked in, as staff read them. */
import { ifWhichNotSaid } from '#core/screening/effects-of-answer.ts';
import type { ScreeningItem } from '#core/screening/item.ts';
import type { SheetItem } from '#core/screening/items.ts';
import { asked } from '#messages/screening.ts';

export interface AskedItem extends Pick<ScreeningItem, 'id' | 'clinicianLabel' | 'mark' | 'minimumFor'> {
  /** What the patient is asked, in plain words. */
  readonly question: string;
  readonly asks: Omit<ReturnType<typeof asked>['asks'], 'details'> & {
    readonly details: readonly { readonly id: string; readonly label: string }[];
  };
  /** What counts while a "yes" does not say which; null where it changes nothing. */
  readonly ifWhichNotSaid: string | null;
}

export const inEnglish = (item: SheetItem): AskedItem => {
  const { id, clinicianLabel, mark, minimumFor } = item;
  const { question, asks } = asked(item);
  const details = asks.details.map((detail) => ({ id: detail.id, label: detail.label.en }));
  return {
    id,
    clinicianLabel,
    mark,
    minimumFor,
    question: question.en,
    asks: { ...asks, details },
    ifWhichNotSaid: ifWhichNotSaid(item),
  };
};
