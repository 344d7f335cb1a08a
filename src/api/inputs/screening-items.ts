/** Answers name items of the sheet, each once. */
import type { Refusal } from '#core/outcome.ts';
import { screeningItem } from '#core/screening/items.ts';

export const unknownItems = (answers: readonly { readonly item: string }[]): readonly Refusal[] => {
  const unknown = answers.filter((answer) => !screeningItem(answer.item));
  const ids = answers.map((answer) => answer.item);
  const twice = ids.filter((id, place) => ids.indexOf(id) !== place);
  return [
    ...unknown.map(
      (): Refusal => ({
        field: 'input.answers',
        code: 'not-listed',
        reason: 'An answer names an item that is not on the sheet. Load the page again.',
      }),
    ),
    ...twice.map(
      (): Refusal => ({
        field: 'input.answers',
        code: 'inconsistent',
        reason: 'An item is answered twice. Answer each once.',
      }),
    ),
  ];
};
