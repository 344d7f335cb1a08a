/** Facts and their values in words and figures, as a clinician would say them. */
import { signInWords } from '#core/danger/sign-words.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { OtherAnswer, OtherValues } from '#core/decision/what-would-change.ts';
import { say, words } from '#messages/en/staff/review/what-would-change.ts';
import { capital } from '../capital.ts';
import { factInWords } from '../words.ts';

const worded: Readonly<Record<string, string>> = words;

export const factTitle = ({ fact }: Pick<OtherAnswer, 'fact'>): string => capital(factInWords(fact));

const signs = (list: readonly string[]): string =>
  list.length === 0 ? say('none') : list.map((sign) => signInWords[sign as RedFlag]).join(', ');

/** One of the list more or less than told, or one alone. */
const otherSigns = (told: readonly string[], list: readonly string[]): string => {
  const added = list.filter((sign) => !told.includes(sign));
  const left = told.filter((sign) => !list.includes(sign));
  if (list.length === 0 || told.length === 0) return signs(list);
  if (left.length === 0) return say('sign-also', { sign: signs(added) });
  return added.length === 0
    ? say('sign-not', { sign: signs(left) })
    : say('sign-alone', { sign: signs(list) });
};

const rounded = (value: number): string => String(Math.round(value * 100) / 100);

const wordOf = ({ fact, from }: OtherAnswer, value: unknown): string => {
  // Of a fact that is no answer, silence means something of its own.
  if (value === null) return worded[`absent.${fact}`] ?? say('not-answered');
  if (value === true) return 'yes';
  if (value === false) return 'no';
  if (typeof value === 'number') return rounded(value);
  if (Array.isArray(value)) return otherSigns(Array.isArray(from) ? from : [], value);
  return String(value).replace(/-/g, ' ');
};

export const toldInWords = (line: OtherAnswer): string =>
  Array.isArray(line.from) ? signs(line.from) : wordOf(line, line.from);

const rangeInWords = ({ low, high }: Extract<OtherValues, { low: unknown }>): string => {
  if (low === null || high === null) {
    return low === null
      ? say('or-less', { high: rounded(high ?? 0) })
      : say('or-more', { low: rounded(low) });
  }
  const ends = { low: rounded(low), high: rounded(high) };
  if (low === high) return ends.low;
  return high === low + 1 ? say('either-of', ends) : say('range', ends);
};

export const otherValuesInWords = (line: OtherAnswer): string =>
  'anyOf' in line.to ? line.to.anyOf.map((value) => wordOf(line, value)).join('; ') : rangeInWords(line.to);
