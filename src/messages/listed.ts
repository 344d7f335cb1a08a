/** A list as it is said: "Monday, Wednesday and Friday". */
export const listed = (parts: readonly string[], locale: string): string =>
  new Intl.ListFormat(locale, { type: 'conjunction' }).format(parts);
