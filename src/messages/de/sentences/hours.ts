/** The hours in which the clinic reads what is sent. */
import type { hours as english } from '#messages/en/sentences/hours.ts';
import type { Same } from '#messages/sentence.ts';

export const hours = {
  Mon: 'Montag',
  Tue: 'Dienstag',
  Wed: 'Mittwoch',
  Thu: 'Donnerstag',
  Fri: 'Freitag',
  Sat: 'Samstag',
  Sun: 'Sonntag',
  span: '{first} bis {last}',
  hours: '{days}, {from} bis {to} Uhr',
} as const satisfies Same<typeof english>;
