/** What is wrong with a field, each by its label, its bound and the way out. */
import type { Field, NumberField } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/clinic.ts';
import { boundsInWords, labelOf } from './field-words.ts';

export const askedFor = (field: Field): string => {
  const label = `“${labelOf(field)}”`;
  return field.kind === 'enum' || field.kind === 'flag'
    ? say('choose-an-answer', { label })
    : say('enter', { label });
};

export const noSuchDay = (field: Field): string => say('no-such-day', { field: labelOf(field) });

export const noSuchTime = (field: Field): string =>
  say(field.kind === 'date-time' && field.mayLackTime ? 'no-such-day-or-time' : 'no-such-time', {
    field: labelOf(field),
  });

export const numberAskedFor = (field: Field): string =>
  say(field.kind === 'integer' ? 'type-integer' : 'type-number', { field: labelOf(field) });

/** Said before it is sent, so that nothing has to be typed twice. */
export const tooLong = (label: string, count: number, most: number): string =>
  say('too-long', { field: label, count, most });

export const typeWithin = (field: NumberField): string =>
  say('type-within', { field: labelOf(field), bounds: boundsInWords(field) });
