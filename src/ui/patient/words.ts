/** Words of the patient’s day. */
import { words } from '#messages/en/pages/day.ts';
import { provide } from '#ui/language/words.ts';

provide(words, (tag) => import(`../../messages/${tag}/pages/day.ts`));

export { t, translate } from '#ui/language/words.ts';
