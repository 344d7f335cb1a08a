/** Pages about a visit and the own sign-in as they are rendered in German: no word of English, days as Germans write them. */
import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { screeningItems } from '#core/screening/items.ts';
import { asked, limbChoices } from '#messages/screening.ts';
import { AccountScreen } from '#ui/account/account-screen.tsx';
import { speak } from '#ui/language/speak.ts';
import { setLanguage } from '#ui/language/words.ts';
import { AccessLogList } from '#ui/patient/account/access-log-list.tsx';
import { notGiven } from '#ui/patient/pre-visit/visit-answers.ts';
import { VisitQuestion } from '#ui/patient/pre-visit/visit-question.tsx';
import { leftInEnglish } from './left-in-english.ts';

beforeAll(() => speak('de'));
afterAll(() => setLanguage());

const textOf = (page: ReactElement): string =>
  renderToStaticMarkup(page)
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

const nothing = () => undefined;

describe('in German', () => {
  it('every question before a visit, answered with yes, has no English in it or under it', () => {
    const left = screeningItems.flatMap((question, place) => {
      const text = textOf(
        <VisitQuestion
          question={asked(question)}
          limbs={limbChoices}
          given={{ ...notGiven, answer: 'yes' }}
          clinic={{ name: 'Ward', phone: '0711 55', emergencyNumber: '112', urgentNumber: '116 117' }}
          number={place + 1}
          all={screeningItems.length}
          onGive={nothing}
          onNext={nothing}
          onBack={nothing}
        />,
      );
      const word = leftInEnglish(text);
      return word ? [`${question.id}: “${word}” in ${text}`] : [];
    });
    expect(left).toEqual([]);
  });

  it('a sign-in of a patient says where it is open, and since when', () => {
    const text = textOf(
      <AccountScreen
        name="Mira Sol"
        email="m@example.invalid"
        isPatient
        setUp="passphrase"
        hasPassphrase
        hasCodes={false}
        canMakePasskeys={false}
        passkeys={[]}
        zone="Europe/Berlin"
        sessions={[
          {
            id: 's',
            userAgent: 'Mozilla/5.0 (Linux; Android 14) Firefox/130.0',
            isPhone: true,
            createdAt: Date.UTC(2026, 2, 9, 7, 5),
            lastUsedAt: Date.UTC(2026, 2, 10, 17, 42),
          },
        ]}
        sessionId="s"
      />,
    );
    expect(leftInEnglish(text)).toBeNull();
    expect(text).toContain('Firefox, Android, mit PIN (hier)');
    // Berlin is one hour ahead of UTC in March.
    expect(text).toMatch(/Seit dem 9\. März 2026, 08:05; zuletzt benutzt am 10\. März 2026, 18:42/);
  });

  it('who opened the record says the day as Germans write it, the year only where it is another', () => {
    const line = {
      ...{ name: 'Nuala D', isFeed: false, isProgram: false },
      ...{ reads: 2, writes: 1, reasons: [], handedTo: [] },
    };
    const text = textOf(
      <AccessLogList
        day="2026-03-09"
        lines={[
          { ...line, day: '2026-03-08' },
          { ...line, day: '2025-12-31', name: null },
          { ...line, day: '2025-12-30', name: 'Dr. Weber', isProgram: true },
        ]}
      />,
    );
    expect(leftInEnglish(text)).toBeNull();
    expect(text).toContain('8. März : 2-mal angesehen, einmal eingetragen.');
    expect(text).toContain('31. Dezember 2025 : 2-mal angesehen');
    expect(text).toContain('Programm: Dr. Weber');
  });
});
