/** Words of the questions before a visit. */
import { words } from '#messages/en/pages/pre-visit.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../../messages/${tag}/pages/pre-visit.ts`));
