/** A form of descriptor fields as the route for forms that the browser sends itself takes it. */
import type { PostedForm, PostedTexts } from '#api/inputs/posted-form.ts';
import type { Field } from '#core/calculations/describe.ts';
import { dateTimeFrom } from '#ui/design-system/day/date-time-parts.ts';
import { dayOfParts } from '#ui/design-system/day/day-parts.ts';
import { refusedBy } from '../submit-problems.ts';
import { readTyped } from '../typed.ts';
import type { Client, SentForm } from './sent-form.ts';

const textAt = (field: Field, name: string, sent: URLSearchParams): string => {
  if (field.kind === 'day' && field.isBirth) {
    const part = (one: string) => sent.get(`${name}-${one}`) ?? '';
    return dayOfParts({ day: part('day'), month: part('month'), year: part('year') });
  }
  if (field.kind === 'date-time') {
    const [day, time] = [sent.get(name) ?? '', sent.get(`${name}-time`) ?? ''];
    return dateTimeFrom({ day, time });
  }
  // Several ticked boxes come one by one.
  return sent.getAll(name).join('\n');
};

const typedIn = (fields: readonly Field[], prefix: string, sent: URLSearchParams, path = ''): PostedTexts =>
  Object.fromEntries(
    fields.flatMap((field) => {
      const at = `${path}${field.name}`;
      return field.kind === 'record'
        ? Object.entries(typedIn(field.fields, prefix, sent, `${at}.`))
        : [[at, textAt(field, `${prefix}${at}`, sent)] as const];
    }),
  );

export const postedFrom = (form: SentForm): PostedForm => ({
  about: form.about,
  page: form.page,
  typedIn: (sent, about) => typedIn(form.fields(about), form.prefix(about), sent),
  send: async ({ client }, { about, typed, isConfirmed }) => {
    const prefix = form.prefix(about);
    const fields = form.fields(about);
    const { value, problems } = readTyped(fields, typed);
    if (problems.length > 0)
      return { problems: problems.map(({ field, text }) => ({ field: `${prefix}${field}`, text })) };
    try {
      const answer = await form.send(client as Client, { about, value, isConfirmed });
      return form.next ? { page: form.next(answer as never, about) } : { done: form.taken };
    } catch (error) {
      // A fault of ours is the route's to tell.
      if (!(error as { data?: unknown }).data) throw error;
      return refusedBy(error, prefix, `${prefix}send`, fields);
    }
  },
});
