/**
 * A key on paper: sixteen digits to a line, each line with four check digits of its own, so that a slip is found in
 * the line it was made in. Read back from what somebody types.
 */
import { createHash } from 'node:crypto';

export const keyNames = ['audit', 'encryption', 'backup'] as const;
export type KeyName = (typeof keyNames)[number];

const digitsInLine = 16;
const lines = 4;

/** Over the name and the place of the line too: one of another key or another place does not pass. */
const checkOf = (name: KeyName, place: number, digits: string): string =>
  createHash('sha256').update(`${name} key, line ${place}: ${digits}`).digest('hex').slice(0, 4);

const inFours = (text: string): string => text.match(/.{1,4}/g)?.join(' ') ?? '';

export const linesOfKey = (name: KeyName, key: Uint8Array): readonly string[] => {
  const text = Buffer.from(key).toString('hex');
  return Array.from({ length: lines }, (_, n) => {
    const digits = text.slice(n * digitsInLine, (n + 1) * digitsInLine);
    return `${n + 1}.  ${inFours(digits)}   ${checkOf(name, n + 1, digits)}`;
  });
};

export interface KeyOnPage {
  readonly name: KeyName;
  /** What is lost with it, in words. */
  readonly without: string;
  readonly key: Uint8Array;
}

export const keyPage = (keys: readonly KeyOnPage[], file: string, day: string): string =>
  [
    `KEYS OF ${file}, printed on ${day}`,
    '',
    'Whoever holds this page and a backup can read every record. Keep it sealed, apart from the machine and its',
    'backups, where two people of the clinic can find it. Without these keys:',
    '',
    ...keys.map(({ name, without }) => `- the ${name} key: ${without};`),
    '',
    ...keys.flatMap(({ name, key }) => [
      `${name.toUpperCase()} KEY`,
      ...linesOfKey(name, key),
      `Typed back by: npm run keys -- --type-back ${name} --to FILE`,
      '',
    ]),
    'Only the digits 0 to 9 and the letters a to f occur. The last four digits of a line check it.',
  ].join('\n');

export type TypedKey =
  | { readonly ok: true; readonly key: Uint8Array }
  | { readonly ok: false; readonly problems: readonly string[] };

/** What is taken for a digit it looks like. */
const lookAlike: Readonly<Record<string, string>> = { o: '0', l: '1', i: '1' };

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[\s-]/g, '')
    .replace(/[oli]/g, (letter) => lookAlike[letter] ?? letter);

const lineTyped = (name: KeyName, place: number, text: string | undefined): string | { problem: string } => {
  if (text === undefined) return { problem: `Line ${place} is missing.` };
  const all = plain(text);
  if (!/^[0-9a-f]*$/.test(all))
    return { problem: `Line ${place} holds something other than 0 to 9 and a to f.` };
  if (all.length !== digitsInLine + 4) {
    return { problem: `Line ${place} has ${all.length} digits instead of ${digitsInLine + 4}.` };
  }
  const digits = all.slice(0, digitsInLine);
  return checkOf(name, place, digits) === all.slice(digitsInLine)
    ? digits
    : {
        problem: `Line ${place} does not fit its check digits: a digit is wrong, or it is a line of another key.`,
      };
};

/** Takes the four lines of one key, each with its number in front, in any order and with any spaces. */
export const keyFromTyped = (name: KeyName, text: string): TypedKey => {
  const typed = new Map<number, string>();
  for (const line of text.split('\n')) {
    const [, place, rest] = /^\s*([1-4])\s*[.)]\s*(\S.*)$/.exec(line) ?? [];
    if (place && rest) typed.set(Number(place), rest);
  }
  const read = Array.from({ length: lines }, (_, n) => lineTyped(name, n + 1, typed.get(n + 1)));
  const problems = read.flatMap((one) => (typeof one === 'string' ? [] : [one.problem]));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, key: Buffer.from(read.join(''), 'hex') };
};
