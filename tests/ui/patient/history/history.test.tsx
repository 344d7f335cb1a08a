/** How it went, as the patient reads it: what was answered is shown, and nothing is said that was not. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import type { HistoryDay } from '#api/patient/history-view.ts';
import { asTyped } from '#messages/text.ts';
import { speak } from '#ui/language/speak.ts';
import { setLanguage } from '#ui/language/words.ts';
import { HistoryPage } from '#ui/patient/history/history-page.tsx';
import { ownCourse } from '#ui/patient/history/own-course.ts';
import { answeredMorning } from '../views.ts';

afterEach(() => setLanguage());

type Morning = typeof answeredMorning;

const on = (day: string, mornings: readonly Partial<Morning>[], sessions = 0): HistoryDay => ({
  day,
  sessions: Array.from({ length: sessions }, () => ({
    kind: 'full' as const,
    exercises: [
      {
        exerciseId: 'clam',
        title: asTyped('Clam'),
        sets: [15, null].map((repetitions) => ({ repetitions, loadKg: null })),
      },
    ],
    joints: [],
  })),
  mornings: mornings.map((more) => ({
    joints: [{ ...answeredMorning, ...more }],
    fatigue: 'not-applicable' as const,
  })),
  decisions: [],
});

const page = (...days: readonly HistoryDay[]): string =>
  renderToStaticMarkup(<HistoryPage view={{ today: '2026-03-08', days, earlierThan: null }} />)
    .replace(/<svg.*?<\/svg>/gs, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
const morning = (more: Partial<Morning>) => page(on('2026-03-02', [more]));

describe('the page', () => {
  it('says of which day it is, since without signal it is the last one kept', () =>
    expect(page()).toContain('As it stood on 8 Mar 2026.'));
});

describe('a morning on the page', () => {
  it.each([
    [{}, 'Stiffness in the morning 10 minutes'],
    [{ stiffnessMinutes: 1 }, 'Stiffness in the morning 1 minute '],
    [{ stiffnessMinutes: 0 }, 'Stiffness in the morning Not stiff'],
    [{ stiffnessMinutes: null }, 'Stiffness in the morning not answered'],
    [{}, 'Swelling in the morning A little more than usual'],
    [{ swelling: 'none' }, 'Swelling in the morning No more than usual'],
    [{ swelling: 'severe' }, 'Swelling in the morning Far more than usual'],
    [{ swelling: null }, 'Swelling in the morning not answered'],
    [{ swelling: 'slight', swellingQuestion: 'absolute' }, 'Swelling in the morning Slight'],
  ] as const)('with %j says “%s”', (more, words) => expect(morning(more)).toContain(words));

  it('has no line for what was not asked', () => {
    const text = morning({ stiffnessMinutes: 'not-applicable', swelling: 'not-applicable' });
    expect(text).toContain('Pain in the morning');
    expect(text).not.toMatch(/Stiffness|Swelling/);
  });
});

describe('a week on the page', () => {
  const first = (text: string) => text.slice(text.indexOf('Week by week'));

  it('is one line of its days and its sessions', () => {
    const html = renderToStaticMarkup(
      <HistoryPage
        view={{
          today: '2026-03-08',
          days: [on('2026-03-03', [{}], 2), on('2026-02-24', [], 1), on('2026-02-17', [{}])],
          earlierThan: null,
        }}
      />,
    );
    expect([...html.matchAll(/<summary>(.*?)<\/summary>/g)].map(([, text]) => text)).toEqual([
      'From 2 Mar: 2 sessions',
      'From 23 Feb: one session',
      'From 16 Feb: no session',
    ]);
  });

  it('gives a span where its pains differ, one figure where they are equal, and none where none was said', () => {
    const week = (...pains: readonly (number | null)[]) =>
      first(page(...pains.map((pain, place) => on(`2026-03-0${7 - place}`, [{ pain }]))));
    expect(week(2, 4)).toContain('Morning check answered 2 times. Pain in the morning: 2 to 4.');
    expect(week(2, 2)).toContain('Pain in the morning: 2. ');
    expect(week(3)).toContain('Morning check answered once. Pain in the morning: 3. ');
    expect(week(null)).toContain('Morning check answered once. ');
    expect(week(null)).not.toContain('Pain in the morning:');
  });

  it('says what was counted in a set, and that a count was lost', () => {
    expect(page(on('2026-03-02', [], 1))).toContain('Repetitions: 15, not counted');
  });

  it('says holds as holds, and draws no line of their number, which starts again as each gets longer', () => {
    const [session] = on('2026-03-02', [], 1).sessions;
    const exercise = {
      exerciseId: 'thumb-out-hold',
      title: asTyped('Thumb'),
      isHeld: true as const,
      sets: [6, 5].map((repetitions) => ({ repetitions, loadKg: 0 })),
    };
    const day = { ...on('2026-03-02', []), sessions: [{ ...session!, exercises: [exercise] }] };
    expect(page(day)).toContain('Holds: 6, 5');
    expect(ownCourse({ today: '2026-03-08', days: [day], earlierThan: null })?.work).toBeNull();
  });

  it('draws of several joints the two that hurt most, and says a range as one', () => {
    const hurting = [
      ['left-hand', 1],
      ['left-knee', 4],
      ['right-wrist', 6],
    ] as const;
    const days = [
      on(
        '2026-03-03',
        hurting.map(([joint, pain]) => ({ joint, pain })),
      ),
      on('2026-03-02', [{ joint: 'right-wrist', pain: 2 }]),
    ];
    const course = ownCourse({ today: '2026-03-08', days, earlierThan: null });
    expect(course?.mornings.map(({ joint }) => joint)).toEqual(['right-wrist', 'left-knee']);
    expect(page(...days)).toContain('Pain in the morning in your right wrist: between 2 and 6.');
  });

  it('is said in German as it is said aloud', async () => {
    await speak('de');
    const text = page(on('2026-03-03', [{}], 2), on('2026-02-24', [{ pain: 4 }], 1));
    expect(text).toContain('Ab 2. März: 2-mal trainiert');
    expect(text).toContain('Ab 23. Feb.: einmal trainiert');
    expect(text).toContain('Morgenfragen einmal beantwortet. Schmerz am Morgen: 2.');
    expect(text).toContain('3-mal trainiert seit Dienstag, 24. Februar.');
    expect(text).toContain('Schwellung am Morgen Ein wenig stärker als sonst');
  });
});
