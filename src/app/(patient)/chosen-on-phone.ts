/** Language and unit chosen on this phone, from its cookies. */
import 'server-only';
import type { Metadata } from 'next';
import { cookies } from 'next/headers';
import { type Chosen, chosenFrom } from '#ui/patient/preferences/chosen.ts';
// A title may stand among the words that only its page carries.
import '#ui/words/every-word.ts';
import { wordsIn } from '#ui/words/in-language.ts';
import { t, type WordKey } from '#ui/words.ts';

export const chosenOnPhone = async (): Promise<Chosen> => {
  const kept = await cookies();
  return chosenFrom((name) => kept.get(name)?.value);
};

/** The title of a patient's page, in the language of whoever asks for it. */
export const titled = (key: WordKey) => async (): Promise<Metadata> => {
  const { language } = await chosenOnPhone();
  // Looked up and never spoken: this process speaks to many people.
  return { title: (await wordsIn(language)).words[key] ?? t(key) };
};
