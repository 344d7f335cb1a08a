/** The words of a calendar in every language. */
import type { sentences } from './en/language.ts';
import { textOf } from './every-language.ts';
import type { Text } from './text.ts';

export const calendarText = (key: keyof (typeof sentences)['calendar']): Text => textOf('calendar', key);
