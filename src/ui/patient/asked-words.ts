/** Words of the questions: fetched with their pages in English, with the day in another language. */
import { words } from '#messages/en/pages/asked.ts';
import { addEnglish } from '#ui/language/words.ts';

addEnglish(words);
