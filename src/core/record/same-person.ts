/** Signs that a patient to be added is on record already. They are a reason to ask, never to refuse. */
import type { Day } from '../time/day.ts';

export interface Known {
  readonly givenName: string;
  readonly familyName: string;
  readonly birthDay: Day;
  readonly phone?: string | null;
  readonly email?: string | null;
  readonly patientNumber?: string | null;
}

export type SameSign = 'birth-and-name' | 'phone' | 'email' | 'patient-number';

const letters = (name: string): string =>
  name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}]/gu, '');

/** One letter more, fewer, another, or two neighbours exchanged. */
const isWithinOneEdit = (one: string, other: string): boolean => {
  const shorter = Math.min(one.length, other.length);
  let head = 0;
  while (head < shorter && one[head] === other[head]) head += 1;
  let tail = 0;
  while (tail < shorter - head && one.at(-1 - tail) === other.at(-1 - tail)) tail += 1;
  const left = one.slice(head, one.length - tail);
  const right = other.slice(head, other.length - tail);
  if (left.length <= 1 && right.length <= 1) return true;
  return left.length === 2 && right.length === 2 && left[0] === right[1] && left[1] === right[0];
};

/** Both names together are at most one edit away, also with given and family name exchanged. */
const isSimilarName = (one: Known, other: Known): boolean => {
  const [given, family] = [letters(one.givenName), letters(one.familyName)];
  const [otherGiven, otherFamily] = [letters(other.givenName), letters(other.familyName)];
  const pairs = [
    [otherGiven, otherFamily],
    [otherFamily, otherGiven],
  ] as const;
  return pairs.some(
    ([first, last]) =>
      (given === first && isWithinOneEdit(family, last)) ||
      (family === last && isWithinOneEdit(given, first)),
  );
};

/** Country code and trunk zero stand before the last nine digits (common practice, no source). */
const comparedDigits = 9;

const phoneKey = (phone: string | null | undefined): string =>
  (phone ?? '').replace(/\D/g, '').replace(/^0+/, '').slice(-comparedDigits);

const textKey = (text: string | null | undefined): string => (text ?? '').replace(/\s/g, '').toLowerCase();

const isSame = (one: string, other: string): boolean => one !== '' && one === other;

export const sameSigns = (one: Known, other: Known): readonly SameSign[] => [
  ...(one.birthDay === other.birthDay && isSimilarName(one, other) ? (['birth-and-name'] as const) : []),
  ...(isSame(phoneKey(one.phone), phoneKey(other.phone)) ? (['phone'] as const) : []),
  ...(isSame(textKey(one.email), textKey(other.email)) ? (['email'] as const) : []),
  ...(isSame(textKey(one.patientNumber), textKey(other.patientNumber)) ? (['patient-number'] as const) : []),
];
