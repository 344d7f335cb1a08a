/** Words of the page of consents. */
import { words } from '#messages/en/pages/consents.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/consents.ts`));
