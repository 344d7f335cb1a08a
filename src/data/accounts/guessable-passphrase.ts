/**
 * Passphrases long enough and guessed first all the same: rows of keys, a piece said again and again,
 * one well-known word with something behind it, the own name or the clinic's. No list of leaked
 * passphrases is compared: none is at hand, and nothing is asked of another machine.
 */

/** As keys lie and letters follow each other; each is looked for in both directions. */
const rows = [
  '1234567890',
  'abcdefghijklmnopqrstuvwxyz',
  'qwertyuiop',
  'asdfghjkl',
  'zxcvbnm',
  'qwertzuiop',
  'yxcvbnm',
];

const wellKnown = [
  'password',
  'passwort',
  'passphrase',
  'passwordpassword',
  'letmein',
  'welcome',
  'willkommen',
  'iloveyou',
  'administrator',
  'admin',
  'changeme',
  'trustno',
  'secret',
  'geheim',
  'physiotherapist',
  'physiotherapy',
  'physio',
  'clinic',
  'loadgate',
];

const reversed = (text: string): string => [...text].reverse().join('');

/** Longest stretch at the beginning that follows a row, going round at its end. */
const rowAtStart = (text: string): number => {
  const lines = rows.flatMap((row) => [row, reversed(row)]).map((row) => row.repeat(4));
  let length = 0;
  while (length < text.length && lines.some((line) => line.includes(text.slice(0, length + 1)))) length += 1;
  return length;
};

/** True when it falls into few such stretches: "qwertyuiop12", "abcdef123456". */
const isOfRows = (text: string): boolean => {
  let [rest, pieces] = [text, 0];
  while (rest !== '' && pieces < 4) {
    const length = rowAtStart(rest);
    if (length < 3 && rest.length >= 3) return false;
    rest = rest.slice(Math.max(length, 1));
    pieces += 1;
  }
  return rest === '';
};

const isRepeated = (text: string): boolean => /^(.{1,8}?)\1+(.{0,7})$/.test(text) && new Set(text).size < 9;

export type GuessedFirst = 'has-name' | 'repeats' | 'of-rows' | 'one-word';

/** What is guessed first about it; null when nothing of this kind was found. */
export const guessedFirst = (passphrase: string, own: readonly string[]): GuessedFirst | null => {
  const text = passphrase.toLowerCase();
  const letters = text.replace(/[\s._-]/g, '');
  if (own.some((word) => word.trim().length > 3 && text.includes(word.trim().toLowerCase()))) {
    return 'has-name';
  }
  if (new Set(letters).size < 5 || isRepeated(letters)) return 'repeats';
  if (isOfRows(letters)) return 'of-rows';
  const word = letters.replace(/[^\p{L}]+$/u, '').replace(/^[^\p{L}]+/u, '');
  if (wellKnown.includes(word)) return 'one-word';
  return null;
};
