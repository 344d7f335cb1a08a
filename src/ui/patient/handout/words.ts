/** Words of the plan on one page. */
import { words } from '#messages/en/pages/handout.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/handout.ts`));
