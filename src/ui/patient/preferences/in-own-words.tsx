'use client';
/**
 * Shows the page in the chosen language and unit. English and kilograms are there at once; another
 * language is fetched (or taken from the phone) first. The server writes nothing in another language:
 * it speaks to many people at a time.
 */
import { Fragment, type ReactNode, useEffect, useState } from 'react';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { weighIn } from '#ui/language/weight-text.ts';
import { type Chosen, chosenHere } from './chosen.ts';

const isPlain = ({ language, unit }: Chosen): boolean => language === 'en' && unit === 'kg';

/** Who reads English does without what fetches another language. */
const spokenNow = (language: LanguageTag): Promise<LanguageTag> =>
  import('#ui/language/speak.ts').then(({ speak }) => speak(language)).catch(() => 'en' as const);

const put = async ({ language, unit }: Chosen): Promise<void> => {
  // Words that cannot be had leave the page in English, and the marks of language and direction with it.
  const spoken = language === 'en' ? language : await spokenNow(language);
  document.documentElement.lang = spoken;
  document.documentElement.dir = languages.find(({ tag }) => tag === spoken)?.direction ?? 'ltr';
  weighIn(unit);
};

export interface InOwnWordsProps {
  /** What the server read from the request. */
  readonly chosen: Chosen;
  readonly children: ReactNode;
}

export const InOwnWords = ({ chosen, children }: InOwnWordsProps) => {
  const [shown, setShown] = useState<number | null>(isPlain(chosen) ? 0 : null);
  useEffect(() => {
    // A page kept for days without signal was written before the last choice.
    const now = chosenHere();
    if (isPlain(now) && isPlain(chosen)) return;
    void put(now).then(() => setShown(1));
  }, [chosen]);
  return shown === null ? (
    <>
      <main id="main" className="frame-main" aria-busy="true" />
      {/* Where no scripts run no other language can be fetched: English is better than an empty page. */}
      <noscript>{children}</noscript>
    </>
  ) : (
    <Fragment key={shown}>{children}</Fragment>
  );
};
