/** The patient's day, one document on the phone: all that it says. In English it comes in pieces, another language in one. */
import { words as care } from './care.ts';
import { words as dose } from './dose.ts';
import { words as figures } from './figures.ts';
import { words as morning } from './morning.ts';
import { words as questions } from './questions.ts';
import { words as saving } from './saving.ts';
import { words as seldom } from './seldom.ts';
import { words as session } from './session.ts';
import { words as today } from './today.ts';
import { words as warningSigns } from './warning-signs.ts';

export const words = {
  ...today,
  ...dose,
  ...figures,
  ...questions,
  ...session,
  ...morning,
  ...care,
  ...warningSigns,
  ...saving,
  ...seldom,
} as const;
