/** Words of the page that says who opened the record. */
import { words } from '#messages/en/pages/access-log.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/access-log.ts`));
