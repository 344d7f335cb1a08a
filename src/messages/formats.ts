/**
 * The platform's formatters, each made once and kept. Making one costs some hundred times what it costs to
 * write a figure with it, and a page writes hundreds. Languages, clinics’ zones and our own options are few.
 */

const keptBy = <Options, Made>(
  make: (locale: string, options: Options) => Made,
): ((locale: string, options: Options) => Made) => {
  const kept = new Map<string, Made>();
  return (locale, options) => {
    const key = locale + JSON.stringify(options);
    const found = kept.get(key) ?? make(locale, options);
    kept.set(key, found);
    return found;
  };
};

/** Its zone is named: what follows the zone of a phone is made anew, since the phone may travel. */
export const dateFormat = keptBy(
  (locale, options: Intl.DateTimeFormatOptions & { readonly timeZone: string }) =>
    new Intl.DateTimeFormat(locale, options),
);

export const numberFormat = keptBy(
  (locale, options: Intl.NumberFormatOptions) => new Intl.NumberFormat(locale, options),
);

export const pluralRules = keptBy(
  (locale, options: Intl.PluralRulesOptions) => new Intl.PluralRules(locale, options),
);

const listFormat = keptBy((locale, options: Intl.ListFormatOptions) => new Intl.ListFormat(locale, options));

/** A list as it is said: "Monday, Wednesday and Friday". */
export const listed = (parts: readonly string[], locale: string): string =>
  listFormat(locale, { type: 'conjunction' }).format(parts);
