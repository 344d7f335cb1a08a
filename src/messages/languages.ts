/** The languages a patient can choose. Another one is a line here and a folder beside. */
export const languages = [
  { tag: 'en', locale: 'en-GB', name: 'English', direction: 'ltr' },
  { tag: 'de', locale: 'de-DE', name: 'Deutsch', direction: 'ltr' },
] as const;
export type LanguageTag = (typeof languages)[number]['tag'];
