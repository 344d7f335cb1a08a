import type { pages as english } from '#messages/en/pages.ts';
import type { Same } from '#messages/sentence.ts';
import { words as accessLog } from './pages/access-log.ts';
import { words as account } from './pages/account.ts';
import { words as broken } from './pages/broken.ts';
import { words as consents } from './pages/consents.ts';
import { words as day } from './pages/day.ts';
import { words as enrol } from './pages/enrol.ts';
import { words as frame } from './pages/frame.ts';
import { words as handout } from './pages/handout.ts';
import { words as history } from './pages/history.ts';
import { words as leaving } from './pages/leaving.ts';
import { words as ownPhones } from './pages/own-phones.ts';
import { words as preVisit } from './pages/pre-visit.ts';
import { words as signIn } from './pages/sign-in.ts';
import { words as write } from './pages/write.ts';

/** Every word of every page, for whoever reads them all; a page fetches its own. */
export const pages = {
  ...day,
  ...frame,
  ...accessLog,
  ...account,
  ...broken,
  ...consents,
  ...enrol,
  ...handout,
  ...history,
  ...leaving,
  ...ownPhones,
  ...preVisit,
  ...signIn,
  ...write,
} as const satisfies Same<typeof english>;
