/** Questions about health as the patient reads them. */
import type { ScreeningDetailKey } from '#core/screening/detail-keys.ts';
import type { ScreeningItemId } from '#core/screening/items.ts';
import { textOf } from './every-language.ts';
import type { Text } from './text.ts';

export const questionText = (item: ScreeningItemId): Text => textOf('screening-questions', item);

/** `key` is the item, then what can be ticked under it: "heart-condition.unstable". */
export const detailText = (key: ScreeningDetailKey): Text => textOf('screening-details', key);
