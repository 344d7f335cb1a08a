'use client';
/**
 * Shows the page in the chosen language and unit. English and kilograms are there at once; another
 * language is fetched (or taken from the phone) first. The server writes nothing in another language:
 * it speaks to many people at a time.
 */
import { Fragment, type ReactNode, useEffect, useState } from 'react';
import { languages } from '#messages/languages.ts';
import { wordsIn } from '#ui/language/in-language.ts';
import { setDayLocale } from '#ui/language/text-of-time.ts';
import { weighIn } from '#ui/language/weight-text.ts';
import { setLanguage } from '#ui/language/words.ts';
import { type Chosen, chosenFrom, cookie } from './chosen.ts';

const isPlain = ({ language, unit }: Chosen): boolean => language === 'en' && unit === 'kg';

const put = async ({ language, unit }: Chosen): Promise<void> => {
  const { tag, locale, direction } = languages.find((one) => one.tag === language) ?? languages[0];
  // Words that cannot be had leave the page in English, and the language mark with it.
  const found = await wordsIn(tag).catch(() => null);
  setLanguage(found ?? {}, found === null ? 'en' : tag);
  setDayLocale(found === null ? languages[0].locale : locale);
  document.documentElement.lang = found === null ? 'en' : tag;
  document.documentElement.dir = direction;
  weighIn(unit);
};

export interface InOwnWordsProps {
  /** What the server read from the cookies. */
  readonly chosen: Chosen;
  readonly children: ReactNode;
}

export const InOwnWords = ({ chosen, children }: InOwnWordsProps) => {
  const [shown, setShown] = useState<number | null>(isPlain(chosen) ? 0 : null);
  useEffect(() => {
    // A page kept for days without signal was written before the last choice.
    const now = chosenFrom(cookie);
    if (isPlain(now) && isPlain(chosen)) return;
    void put(now).then(() => setShown(1));
  }, [chosen]);
  return shown === null ? (
    <main id="main" className="frame-main" aria-busy="true" />
  ) : (
    <Fragment key={shown}>{children}</Fragment>
  );
};
