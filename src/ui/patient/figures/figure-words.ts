/** Words of the drawings: fetched with them in English, with the day in another language. */
import { words } from '#messages/en/pages/figures.ts';
import { addEnglish } from '#ui/language/words.ts';

addEnglish(words);
