/** German, whole: every sentence of the patient's own pages. Read by nobody yet; a clinic reviews it before use. */
import { accountGerman } from './german/account.ts';
import { beforeVisitGerman } from './german/before-visit.ts';
import { careGerman } from './german/care.ts';
import { handoutGerman } from './german/handout.ts';
import { historyGerman } from './german/history.ts';
import { morningGerman } from './german/morning.ts';
import { ownPageGerman } from './german/own-page.ts';
import { questionGerman } from './german/questions.ts';
import { savingGerman } from './german/saving.ts';
import { seldomGerman } from './german/seldom.ts';
import { germanSentences } from './german/sentences.ts';
import { sessionGerman } from './german/session.ts';
import { signInGerman } from './german/sign-in.ts';
import { todayGerman } from './german/today.ts';
import { writeGerman } from './german/write.ts';
import { translatorOf } from './telling.ts';

export const german = {
  ...todayGerman,
  ...ownPageGerman,
  ...questionGerman,
  ...sessionGerman,
  ...seldomGerman,
  ...careGerman,
  ...morningGerman,
  ...savingGerman,
  ...signInGerman,
  ...historyGerman,
  ...writeGerman,
  ...handoutGerman,
  ...accountGerman,
  ...beforeVisitGerman,
} as const;

/** The sentences that the core makes, in German. */
export const translateToGerman = translatorOf(germanSentences, ',');
