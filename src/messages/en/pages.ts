import { accountWords } from './pages/account.ts';
import { beforeVisitWords } from './pages/before-visit.ts';
import { careWords } from './pages/care.ts';
import { handoutWords } from './pages/handout.ts';
import { historyWords } from './pages/history.ts';
import { morningWords } from './pages/morning.ts';
import { ownPageWords } from './pages/own-page.ts';
import { questionWords } from './pages/questions.ts';
import { savingWords } from './pages/saving.ts';
import { seldomWords } from './pages/seldom.ts';
import { sessionWords } from './pages/session.ts';
import { signInWords } from './pages/sign-in.ts';
import { todayWords } from './pages/today.ts';
import { writeWords } from './pages/write.ts';

/** Every word of every page, for whoever reads them all; a page fetches its own. */
export const pages = {
  ...accountWords,
  ...beforeVisitWords,
  ...careWords,
  ...handoutWords,
  ...historyWords,
  ...morningWords,
  ...ownPageWords,
  ...questionWords,
  ...savingWords,
  ...seldomWords,
  ...sessionWords,
  ...signInWords,
  ...todayWords,
  ...writeWords,
} as const;
