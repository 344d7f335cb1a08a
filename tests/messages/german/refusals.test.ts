/** What the server answers a patient who signs in, or changes the own sign-in, is told in German. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { guessedFirst } from '#data/accounts/guessable-passphrase.ts';
import { translateToGerman } from '#ui/language/bridge/german.ts';
import { refusalSentences } from '#ui/language/bridge/sentences/refusals.ts';
import { wrongWith } from './left-in-english.ts';

/** Files whose sentences reach a patient. */
const files = [
  'src/api/account/account.ts',
  'src/api/fresh-sign-in.ts',
  'src/api/patient/consents.ts',
  'src/api/patient/entries.ts',
  'src/api/patient/messages.ts',
  'src/api/trpc.ts',
  'src/server/sign-in/phone-sign-in.ts',
  'src/server/http/requests.ts',
  'src/server/sign-in/sign-in-handler.ts',
  'src/data/accounts/guessable-passphrase.ts',
  'src/ui/account/call.ts',
];

/** Said to staff, or to a program that is no page of ours. */
const notForPatients = [
  'First choose your own passphrase. You signed in with the one you were given.',
  'Enter your passphrase again to do this. What you entered is still on this page.',
  'It has already been removed.',
  'Send this as JSON.',
  'First set up one-time codes or sign in with a passkey. Your clinic requires it.',
  'That address and passphrase do not belong together.',
  'There is no such patient in your clinic.',
  'This code is not right, has run out, or was used already. Wait for the next one.',
  'This page is for the clinic’s clinicians.',
  'This page is for the clinic’s staff.',
  'This page is for the clinic’s administrators.',
  'Only the care team can open this record. You can open it if you give a reason; the team is told.',
  'Your clinic requires codes for staff, so they stay on.',
];

/** Quoted sentences of a file; a value in the middle stands as a figure. */
const sentencesOf = (file: string): readonly string[] =>
  [...readFileSync(file, 'utf8').matchAll(/'([A-Z][^'\n]*\.)'|`([A-Z][^`\n]*\.)`/g)].map(
    ([, plain, filled]) =>
      plain ?? (filled ?? '').replace(/\$\{left\} \$\{[^}]*\}/, '3 tries').replace(/\$\{[^}]*\}/g, '12'),
  );

const said = [...new Set(files.flatMap(sentencesOf))].filter((text) => !notForPatients.includes(text));

describe('a refusal', () => {
  it('every sentence of the files that answer a patient is told in German', () => {
    expect(said.length).toBeGreaterThan(20);
    expect(said.map((text) => wrongWith(text, translateToGerman(text))).filter(Boolean)).toEqual([]);
  });

  it('names the tries and the seconds that are left', () => {
    expect(translateToGerman('That is not the PIN of this phone. 1 try left.')).toMatch(/Noch 1 Versuch\.$/);
    expect(translateToGerman('That is not the PIN of this phone. 4 tries left.')).toMatch(
      /Noch 4 Versuche\.$/,
    );
    expect(translateToGerman('Too many tries. Wait 45 seconds, then try again.')).toMatch(/45 Sekunden/);
  });

  it('of a passphrase guessed first says why', () => {
    for (const typed of ['anna clinic lane', 'aaaabbbbaaaabbbb', 'qwertyuiop12', 'password1234']) {
      const reason = guessedFirst(typed, ['anna']) ?? '';
      expect(reason).not.toBe('');
      expect(wrongWith(reason, translateToGerman(reason))).toBeNull();
    }
  });

  it('nothing stale stands in the file', () => {
    const sources = files.map((file) => readFileSync(file, 'utf8')).join('\n');
    const stale = Object.keys(refusalSentences).filter((text) => {
      const longest = text
        .split(/\{#[a-z]+\}(?: try left| tries left)?/)
        .sort((a, b) => b.length - a.length)[0];
      return !sources.includes((longest ?? '').trim());
    });
    expect(stale).toEqual([]);
  });
});
