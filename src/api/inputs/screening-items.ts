/** Answers name items of the sheet, each once, and say of an item only what it offers. */
import type { Refusal } from '#core/outcome.ts';
import { screeningItem } from '#core/screening/items.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { type Day, daysBetween, isDay } from '#core/time/day.ts';

const refusal = (code: Refusal['code'], reason: string): Refusal => ({
  field: 'input.answers',
  code,
  reason,
});

type Given = Pick<ScreeningItemAnswer, 'item' | 'answer' | 'details' | 'day'>;

const refusalsOf = ({ item: id, answer, details, day }: Given, today: Day): readonly Refusal[] => {
  const item = screeningItem(id);
  if (!item) {
    return [refusal('not-listed', 'An answer names an item that is not on the sheet. Load the page again.')];
  }
  const label = item.clinicianLabel;
  const offered = item.asks.details ?? [];
  const isWrongDay = day !== undefined && !(isDay(day) && daysBetween(day, today) >= 0);
  return [
    ...(answer === 'not-applicable' && !item.asks.notApplicable
      ? [refusal('not-listed', `${label}: answer yes, no or not known.`)]
      : []),
    ...((details ?? []).some((detail) => !offered.includes(detail))
      ? [refusal('not-listed', `${label}: a choice is not on the sheet. Load the page again.`)]
      : []),
    ...(isWrongDay
      ? [refusal('inconsistent', `${label}: give a day, today or earlier, or leave it out.`)]
      : []),
  ];
};

export const unknownItems = (answers: readonly Given[], today: Day): readonly Refusal[] => {
  const ids = answers.map((answer) => answer.item);
  const isTwice = ids.some((id, place) => ids.indexOf(id) !== place);
  return [
    ...answers.flatMap((answer) => refusalsOf(answer, today)),
    ...(isTwice ? [refusal('inconsistent', 'An item is answered twice. Answer each once.')] : []),
  ];
};
