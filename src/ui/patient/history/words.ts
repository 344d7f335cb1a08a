/** Words of the history. */
import { words } from '#messages/en/pages/history.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/history.ts`));
