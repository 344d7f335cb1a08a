/** What the page of a group hour asks about once more, says at a press, and in whose language. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { isCountFarOver, isLoadFarOver } from '#core/record/far-over.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { PainRow } from '#ui/clinician/groups/before-part.tsx';
import { MovedSessions } from '#ui/clinician/groups/sent-part.tsx';
import { familyLines, signOptions, signQuestion } from '#ui/clinician/groups/sign-questions.ts';
import { SignsPart } from '#ui/clinician/groups/signs-part.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { dose, exercise, person } from './person-of-hour.ts';

const nothing = () => undefined;

describe('a number far over the plan is asked about once more', () => {
  it.each([
    [20, false],
    [40, false],
    [41, true],
    [400, true],
  ])('%i repetitions where 15 to 20 are prescribed: %s', (count, isAsked) => {
    expect(isCountFarOver(dose, 1, count)).toBe(isAsked);
  });

  it.each([
    [5, 15, false],
    [5, 16, true],
  ])('of few repetitions the bound is ten more: %i to %i, %s', (high, count, isAsked) => {
    expect(isCountFarOver({ ...dose, repetitions: { low: 3, high } }, 1, count)).toBe(isAsked);
  });

  it.each([
    [4, false],
    [4.4, false],
    [4.5, true],
    [40, true],
  ])('%f kg where 4 kg are prescribed: %s', (loadKg, isAsked) => {
    expect(isLoadFarOver(loadKg, 4)).toBe(isAsked);
  });

  it('“no” is the filled button and stands first', () => {
    const html = renderToStaticMarkup(
      <ConfirmQuestion question="Sure?" yes="Yes" no="No" onYes={nothing} onNo={nothing} isNoFirst />,
    );
    const buttons = [...html.matchAll(/<button[^>]*class="([^"]*)"[^>]*>(\w+)</g)].map(([, look, text]) => [
      text,
      look?.includes('button-plain') ?? false,
    ]);
    expect(buttons).toEqual([
      ['No', false],
      ['Yes', true],
    ]);
  });
});

describe('a pain over the limit of the person', () => {
  const row = (when: 'before' | 'during' | 'after', score: string) =>
    renderToStaticMarkup(
      <PainRow
        person={person()}
        typed={{ [`${when}:right-knee`]: score }}
        press={nothing}
        when={when}
        joint="right-knee"
      />,
    );
  it.each([
    ['5', false],
    ['6', true],
  ])('of 5 is said at the press of %s: %s', (score, isSaid) => {
    for (const when of ['during', 'after'] as const)
      expect(row(when, score).includes('Over the limit of 5')).toBe(isSaid);
  });

  it('before the work is read from the table that takes away, and a pain not said is over nothing', () => {
    expect(row('before', '9')).not.toContain('Over the limit');
    expect(row('during', 'not-said')).not.toContain('Over the limit');
  });
});

describe('warning signs', () => {
  it.each([
    ['en', 'Do you have any of these today?'],
    ['de', 'Haben Sie heute etwas davon?'],
  ] as const)('are asked in %s in the words of the phone, every one of them', (tag, question) => {
    expect(signQuestion(tag, 'flags.before')).toBe(question);
    for (const hasCuff of [false, true]) {
      const labels = (of: LanguageTag) => signOptions(hasCuff, of);
      expect(labels(tag).map(({ value }) => value)).toEqual(labels('en').map(({ value }) => value));
      expect(labels(tag).every(({ label }) => label.length > 3)).toBe(true);
      expect(familyLines(hasCuff, tag)).toHaveLength(familyLines(hasCuff, 'en').length);
    }
    expect(signOptions(true, 'de')).not.toEqual(signOptions(true, 'en'));
  });

  it('can be asked in another language from the question itself', () => {
    const html = renderToStaticMarkup(
      <SignsPart
        person={person()}
        typed={{}}
        press={nothing}
        name="signs"
        question="flags.before"
        isShort={false}
        onReport={nothing}
      />,
    );
    expect(html).toMatch(/Ask in.*English.*Deutsch/s);
  });
});

describe('a session of a day from which the hour was moved', () => {
  it('is shown with its day and sets', () => {
    const { prescriptionId, itemId, joints, badDay } = exercise;
    const set = { prescriptionId, itemId, set: 1, repetitions: 18, loadKg: 4, reserve: 2 };
    const sessions = [
      {
        day: '2026-02-23',
        entry: { sets: [{ ...set, stopReason: 'none' }] },
        exercises: [{ prescriptionId, itemId, joints, dose, badDay, signedName: '', cautions: [] }],
      },
    ] as unknown as Parameters<typeof MovedSessions>[0]['sessions'];
    const html = renderToStaticMarkup(<MovedSessions sessions={sessions} patientId="p1" />);
    expect(html).toContain('23 February 2026');
    expect(html).toContain('18 (+2)');
    expect(html).toContain('before this hour was moved');
  });
});
