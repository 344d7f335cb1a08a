/** Words of signing out, fetched when somebody does: the English at once, another language if one is spoken. */
import { words } from '#messages/en/pages/leaving.ts';
import { addEnglish, setLanguage, spokenLanguage } from '#ui/language/words.ts';

export const haveWords = async (): Promise<void> => {
  addEnglish(words);
  const spoken = spokenLanguage();
  if (spoken.tag === 'en') return;
  try {
    const more = await import(`../../../messages/${spoken.tag}/pages/leaving.ts`);
    setLanguage({ ...spoken, words: { ...spoken.words, ...more.words } });
  } catch {
    // Said in English where they cannot be had: signing out must always be possible.
  }
};
