import type { words as english } from '#messages/en/pages/handout.ts';
import type { Same } from '#messages/sentence.ts';
import { words as dose } from './dose.ts';
import { words as figures } from './figures.ts';
import { words as warningSigns } from './warning-signs.ts';

/** The plan on one page, to read or to print, in German. */
export const words = {
  ...dose,
  ...figures,
  ...warningSigns,
  'handout.title': 'Mein Plan auf einer Seite',
  'handout.for': '{name}, Stand {date}',
  'handout.print': 'Diese Seite drucken',
  'handout.none': 'Es sind noch keine Übungen für Sie festgelegt.',
  'handout.days': 'Am {days}.',
  'handout.every-day': 'An jedem Tag möglich. Es sind keine Tage festgelegt.',
  'handout.no-days': 'Zurzeit an keinem Tag.',
  'handout.easier': 'Leichteres Training, für einen schlechten Tag: {dose}.',
  'handout.resting': 'Lassen Sie diese Übung vorerst aus. Die Seite für heute sagt, wann sie wiederkommt.',
  'handout.keep': 'Denken Sie daran',
  'handout.stop': 'Aufhören und anrufen, wenn eines davon auftritt',
  'handout.stop-call': 'Hören Sie sofort auf. Im Notfall rufen Sie {emergency} an, sonst {clinic}: {phone}.',
} as const satisfies Same<typeof english>;
