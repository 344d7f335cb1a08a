/** Language and unit chosen on this phone, from its cookies; before a choice, the language its browser asks for. */
import 'server-only';
import type { Metadata } from 'next';
import { cookies, headers } from 'next/headers';
import { pageWord } from '#messages/page-words.ts';
import type { PlainWordKey } from '#ui/language/words.ts';
import { type Chosen, chosenFrom, languagesAsked } from '#ui/patient/preferences/chosen.ts';

export const chosenOnPhone = async (): Promise<Chosen> => {
  const kept = await cookies();
  const asked = languagesAsked((await headers()).get('accept-language') ?? '');
  return chosenFrom((name) => kept.get(name)?.value, asked);
};

/** The title of a patient's page, in the language of whoever asks for it. */
export const titled = (key: PlainWordKey) => async (): Promise<Metadata> => {
  const { language } = await chosenOnPhone();
  // Looked up and never spoken: this process speaks to many people.
  return { title: pageWord(language, key) };
};
