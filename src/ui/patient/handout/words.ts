/** Words of the plan on one page. */
import { words } from '#messages/en/pages/handout.ts';
import { provide } from '#ui/language/speak.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/handout.ts`));
