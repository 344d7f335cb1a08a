/** Words for signing in. */
import { words } from '#messages/en/pages/sign-in.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/sign-in.ts`));
