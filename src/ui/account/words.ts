/** Words of the own sign-in. */
import { words } from '#messages/en/pages/account.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../messages/${tag}/pages/account.ts`));
