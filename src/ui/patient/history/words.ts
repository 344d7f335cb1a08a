/** Words of the history. */
import { words } from '#messages/en/pages/history.ts';
import { provide } from '#ui/language/speak.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/history.ts`));
