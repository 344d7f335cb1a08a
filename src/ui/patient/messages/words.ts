/** Words of the page to write on. */
import { words } from '#messages/en/pages/write.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/write.ts`));
