/** The patient's own phones: each with what is known of it, and ending a lost one told before it is done. */
import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import type { OwnPhone } from '#api/patient/phones.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { withRouter } from '#tests/support/with-router.tsx';
import { FreshSignIn } from '#ui/account/fresh-sign-in.tsx';
import { setLanguage } from '#ui/language/words.ts';
import { EndQuestion } from '#ui/patient/account/lost-phone.tsx';
import { OwnPhones } from '#ui/patient/account/own-phones.tsx';

const drawn = (page: ReactNode) => renderToStaticMarkup(withRouter(page));
afterEach(() => setLanguage());
const speakGerman = () => {
  const { de } = everyLanguage;
  setLanguage({ tag: 'de', locale: de.locale, forms: de.forms, words: de.pages });
};

const nothing = () => undefined;
const textOf = (html: string) => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
const inUse: OwnPhone = {
  id: 'one',
  enrolledAt: Date.UTC(2026, 2, 2, 9, 5),
  lastUsedAt: Date.UTC(2026, 2, 9, 7, 30),
  state: 'in-use',
  ended: null,
};
const at = Date.UTC(2026, 2, 10, 17, 42);
const shown = (phones: readonly OwnPhone[], hereId: string | null = null) =>
  drawn(<OwnPhones {...{ phones, hereId }} zone="Europe/Lisbon" provenBy="pin" />);

describe('each phone says when it was set up and last opened, and no name', () => {
  it.each<[string, Partial<OwnPhone>, string, boolean]>([
    ['in use', {}, 'Last opened with its PIN 9 Mar 2026, 07:30', true],
    ['without a PIN', { lastUsedAt: null, state: 'no-pin-yet' }, 'No PIN has been chosen on it yet', true],
    [
      'with its tries used up',
      { state: 'too-many-tries' },
      'wrong five times and no longer opens anything',
      true,
    ],
    ['ended by the patient', { ended: { at, by: 'patient' } }, 'You signed it out 10 Mar 2026, 17:42', false],
    ['ended by the clinic', { ended: { at, by: 'clinic' } }, 'Your clinic signed it out 10 Mar', false],
  ])('%s', (_, over, words, canBeLost) => {
    const html = shown([{ ...inUse, ...over }]);
    expect(textOf(html)).toContain('Phone set up 2 Mar 2026, 09:05');
    expect(textOf(html)).toContain(words);
    expect(html.includes('I have lost this phone')).toBe(canBeLost);
  });

  it('none is said, and a list of one says nothing of phones set up twice', () => {
    expect(textOf(shown([]))).toContain('No phone has been set up for you.');
    expect(shown([inUse])).not.toContain('more than once');
    expect(shown([inUse, { ...inUse, id: 'two' }])).toContain('more than once');
  });
});

it('the phone in the hand is marked and is not offered as lost; the other is', () => {
  const html = shown([inUse, { ...inUse, id: 'two', enrolledAt: at }], 'one');
  expect(textOf(html)).toContain('Phone set up 2 Mar 2026, 09:05 (this phone)');
  expect(html.match(/I have lost this phone/g)).toHaveLength(1);
  expect(textOf(html)).toContain('I have lost this phone Phone set up 10 Mar 2026, 17:42');
});

describe('before a phone is ended', () => {
  const question = () => textOf(drawn(<EndQuestion onYes={nothing} onNo={nothing} />));

  it('what it does and what it does not is said, and what to do then', () => {
    const text = question();
    for (const words of [
      'Sign this phone out for good? This can’t be undone.',
      'its PIN no longer opens anything',
      'Nothing on the phone is erased',
      'nobody can read them on the phone',
      'Pages kept for days without signal stay on it',
      'ring your clinic',
    ])
      expect(text).toContain(words);
  });

  it('in German as well', () => {
    speakGerman();
    expect(question()).toContain('Auf dem Telefon wird nichts gelöscht');
    expect(textOf(shown([inUse], 'one'))).toMatch(/eingerichtet am 2\. März 2026, 09:05 \(dieses Telefon\)/);
  });
});

it.each([
  ['pin', 'Enter the PIN of this phone again', 'inputMode="numeric"', true],
  ['passphrase', 'Enter your passphrase again', 'inputMode="numeric"', false],
] as const)('what opened the sign-in is asked for again: %s', (by, title, field, has) => {
  const html = drawn(<FreshSignIn by={by} onProved={nothing} onCancel={nothing} />);
  expect(html).toContain(title);
  expect(html.includes(field)).toBe(has);
});
