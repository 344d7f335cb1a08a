import type { pages as english } from '#messages/en/pages.ts';
import type { Same } from '#messages/sentence.ts';
import { accountGerman } from './pages/account.ts';
import { beforeVisitGerman } from './pages/before-visit.ts';
import { careGerman } from './pages/care.ts';
import { handoutGerman } from './pages/handout.ts';
import { historyGerman } from './pages/history.ts';
import { morningGerman } from './pages/morning.ts';
import { ownPageGerman } from './pages/own-page.ts';
import { questionGerman } from './pages/questions.ts';
import { savingGerman } from './pages/saving.ts';
import { seldomGerman } from './pages/seldom.ts';
import { sessionGerman } from './pages/session.ts';
import { signInGerman } from './pages/sign-in.ts';
import { todayGerman } from './pages/today.ts';
import { writeGerman } from './pages/write.ts';

/** Every word of every page, for whoever reads them all; a page fetches its own. */
export const pages = {
  ...accountGerman,
  ...beforeVisitGerman,
  ...careGerman,
  ...handoutGerman,
  ...historyGerman,
  ...morningGerman,
  ...ownPageGerman,
  ...questionGerman,
  ...savingGerman,
  ...seldomGerman,
  ...sessionGerman,
  ...signInGerman,
  ...todayGerman,
  ...writeGerman,
} as const satisfies Same<typeof english>;
