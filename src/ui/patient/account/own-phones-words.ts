/** Words of a patient's own phones. */
import { words } from '#messages/en/pages/own-phones.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/own-phones.ts`));
