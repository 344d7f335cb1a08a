/** Words of what is closed at first: fetched with it in English, with the day in another language. */
import { words } from '#messages/en/pages/seldom.ts';
import { addEnglish } from '#ui/language/words.ts';

addEnglish(words);
