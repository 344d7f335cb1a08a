import './words.ts';
import { t } from '#ui/language/words.ts';

/** "Firefox on Linux", from what a browser says of itself. A guess, shown to help a person recognise it. */

const browsers: readonly (readonly [RegExp, string])[] = [
  [/Edg\//, 'Edge'],
  [/Firefox\//, 'Firefox'],
  [/(Chrome|Chromium|CriOS)\//, 'Chrome'],
  [/Safari\//, 'Safari'],
];

const systems: readonly (readonly [RegExp, string])[] = [
  [/Android/, 'Android'],
  [/iPhone|iPad/, 'iOS'],
  [/Windows/, 'Windows'],
  [/Mac\sOS\sX/, 'Mac'],
  [/Linux/, 'Linux'],
];

const first = (list: readonly (readonly [RegExp, string])[], text: string): string | null =>
  list.find(([pattern]) => pattern.test(text))?.[1] ?? null;

export const browserInWords = (userAgent: string | null, isPhone: boolean): string => {
  const browser = first(browsers, userAgent ?? '') ?? t('account.browser');
  const found = first(systems, userAgent ?? '');
  const system = found === 'iOS' ? t('account.iphone') : found;
  const where = system ? t('account.browser-on', { browser, system }) : browser;
  return isPhone ? t('account.with-pin', { where }) : where;
};
