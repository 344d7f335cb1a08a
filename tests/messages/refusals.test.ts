/** What the server answers a patient who signs in, or changes something, is said in every language. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Problem } from '#api/errors.ts';
import { guessedFirst } from '#data/accounts/guessable-passphrase.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { refusalText } from '#messages/refusals.ts';
import { refusal } from '#server/http/requests.ts';

/** Files that answer a patient. */
const files = [
  'src/api/account/account.ts',
  'src/api/errors.ts',
  'src/api/fresh-sign-in.ts',
  'src/api/inputs/readable.ts',
  'src/api/patient/consents.ts',
  'src/api/patient/entries.ts',
  'src/api/patient/messages.ts',
  'src/api/patient/phones.ts',
  'src/api/papers/exports.ts',
  'src/api/trpc.ts',
  'src/server/sign-in/phone-sign-in.ts',
  'src/server/http/requests.ts',
  'src/server/http/trpc-handler.ts',
  'src/server/sign-in/sign-in-handler.ts',
  'src/data/accounts/guessable-passphrase.ts',
  'src/ui/account/call.ts',
];

/** Said to staff, or to a program that is no page of ours. */
const notForPatients = [
  'Ask for less at once.',
  'First choose your own passphrase. You signed in with the one you were given.',
  'Enter your passphrase again to do this. What you entered is still on this page.',
  'It has already been removed.',
  'Send this as JSON.',
  'The calendar address has ended already. Load the page again.',
  'First set up one-time codes or sign in with a passkey. Your clinic requires it.',
  'That address and passphrase do not belong together.',
  'That is more than one form can hold.',
  'This code is not right, has run out, or was used already. Wait for the next one.',
  'This page is for the clinic’s clinicians.',
  'This page is for the clinic’s clinicians and administrators.',
  'This page is for the clinic’s administrators.',
  'Only the care team can open this record. You can open it if you give a reason; the team is told.',
  'Too many requests. Wait {wait} seconds.',
  'Your clinic requires codes for staff, so they stay on.',
];

const sources = files.map((file) => readFileSync(file, 'utf8'));

const sentencesIn = (source: string): readonly string[] =>
  [...source.matchAll(/'([A-Z][^'\n]*\.)'|`([A-Z][^`\n]*\.)`/g)].map(([, plain, filled]) =>
    (plain ?? filled ?? '').replaceAll('${', '{'),
  );

describe('a refusal', () => {
  it('is written in no file that answers a patient, but for what staff alone is told', () => {
    expect([...new Set(sources.flatMap(sentencesIn))].sort()).toEqual([...notForPatients].sort());
  });

  it('of each key is given somewhere', () => {
    const all = sources.join('\n');
    const unused = Object.keys(everyLanguage.en.sentences.refusals).filter(
      (key) => !all.includes(`'${key}'`) && !all.includes(`'${key.replace(/^passphrase-/, '')}'`),
    );
    expect(unused).toEqual([]);
  });

  it('of a passphrase guessed first says why', () => {
    const reasons = ['anna clinic lane', 'aaaabbbbaaaabbbb', 'qwertyuiop12', 'password1234'].map((typed) =>
      guessedFirst(typed, ['anna']),
    );
    expect(reasons).toEqual(['has-name', 'repeats', 'of-rows', 'one-word']);
    for (const reason of reasons) expect(refusalText(`passphrase-${reason!}`).en).toMatch(/^Choose one /);
  });

  it('reaches the page in every language, with English as its message', async () => {
    const text = refusalText('wait-seconds', { seconds: 45 });
    const problem = new Problem('too-often', text);
    expect([problem.message, problem.text]).toEqual([text.en, text]);
    const answer = refusal(429, 'too-often', text);
    expect(await answer.json()).toEqual({ problem: 'too-often', message: text.en, text });
  });

  it('of staff has English alone', async () => {
    expect(new Problem('refused', 'Send this as JSON.').text).toBeNull();
    const answer = refusal(415, 'refused', 'Send this as JSON.');
    expect(await answer.json()).toEqual({ problem: 'refused', message: 'Send this as JSON.' });
  });
});
