/** Words for setting up a phone, and for its PIN. */
import { words } from '#messages/en/pages/enrol.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/enrol.ts`));
