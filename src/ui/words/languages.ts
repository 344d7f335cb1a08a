/** The languages the patient's own pages are written in, each under the name its speakers call it by. */
export const languages = [
  { tag: 'en', locale: 'en-GB', name: 'English', direction: 'ltr' },
  { tag: 'de', locale: 'de-DE', name: 'Deutsch', direction: 'ltr' },
] as const;
export type LanguageTag = (typeof languages)[number]['tag'];
