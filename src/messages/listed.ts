import { listFormat } from './formats.ts';

/** A list as it is said: "Monday, Wednesday and Friday". */
export const listed = (parts: readonly string[], locale: string): string =>
  listFormat(locale, { type: 'conjunction' }).format(parts);
