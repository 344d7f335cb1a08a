/** German, whole: every sentence of the patient's own pages. Read by nobody yet; a clinic reviews it before use. */
import { accountGerman } from '#messages/de/pages/account.ts';
import { beforeVisitGerman } from '#messages/de/pages/before-visit.ts';
import { careGerman } from '#messages/de/pages/care.ts';
import { handoutGerman } from '#messages/de/pages/handout.ts';
import { historyGerman } from '#messages/de/pages/history.ts';
import { morningGerman } from '#messages/de/pages/morning.ts';
import { ownPageGerman } from '#messages/de/pages/own-page.ts';
import { questionGerman } from '#messages/de/pages/questions.ts';
import { savingGerman } from '#messages/de/pages/saving.ts';
import { seldomGerman } from '#messages/de/pages/seldom.ts';
import { sessionGerman } from '#messages/de/pages/session.ts';
import { signInGerman } from '#messages/de/pages/sign-in.ts';
import { todayGerman } from '#messages/de/pages/today.ts';
import { writeGerman } from '#messages/de/pages/write.ts';
import { germanSentences } from './sentences.ts';
import { translatorOf } from './translator.ts';

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
