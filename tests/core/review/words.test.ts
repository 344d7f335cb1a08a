/** Series, and the sentences a careful colleague would write beside them. */
import { describe, expect, it } from 'vitest';
import { reviewWords } from '#core/review/words.ts';
import { answeredSessions, baseline, decision, morning, series, session, version } from './builders.ts';

const noEnd = ['No baseline is set for the left knee.', 'No decision was made.'];

interface Case {
  readonly title: string;
  readonly series: ReturnType<typeof series>;
  readonly words: readonly string[];
}

const cases: readonly Case[] = [
  {
    title: 'nothing logged is said, and nothing is made of it',
    series: series({}),
    words: [
      'From 1 Mar to 31 Mar 2026: no session of this exercise was logged.',
      'No morning answer for the left knee was due or given.',
      ...noEnd,
    ],
  },
  {
    title: 'a steady load with every answer given',
    series: series(answeredSessions(['2026-03-24', '2026-03-26', '2026-03-28'], 2)),
    words: [
      'From 1 Mar to 31 Mar 2026: 3 sessions of this exercise.',
      'Load stayed at 4 kg in full sessions.',
      'Morning pain of the left knee was given on 3 mornings: 2, middle value 2.',
      'Highest pain reported in a session was 3 over 3 sessions.',
      ...noEnd,
    ],
  },
  {
    title: 'steps up and down are counted, an easier session apart',
    series: series({
      sessions: [
        session('2026-03-24', { kg: 4 }),
        session('2026-03-26', { kg: 5 }),
        session('2026-03-27', { kg: 2, kind: 'bad-day' }),
        session('2026-03-28', { kg: 6 }),
        session('2026-03-30', { kg: 5.5 }),
      ],
      mornings: [
        morning('2026-03-25', 2),
        morning('2026-03-27', 4),
        morning('2026-03-28', 3),
        morning('2026-03-29', 2),
        morning('2026-03-31', 1),
      ],
      baselines: [baseline],
    }),
    words: [
      'From 1 Mar to 31 Mar 2026: 5 sessions of this exercise, 1 of them the easier session.',
      'Load in full sessions went from 4 kg on 24 Mar to 5.5 kg on 30 Mar: 2 steps up, 1 down.',
      'Morning pain of the left knee was given on 5 mornings: 1 to 4, middle value 2.',
      'It lay over the top of usual pain on 1 morning (27 Mar).',
      'Highest pain reported in a session was 3 over 5 sessions.',
      'Thresholds in force: top of usual pain 3, acceptable pain limit 5, set by R. Clinician.',
      'No decision was made.',
    ],
  },
  {
    title: 'missing answers and an unknown load stand as missing, never as nothing',
    series: series({
      sessions: [
        session('2026-03-24', { kg: null }),
        session('2026-03-26', { during: null }),
        session('2026-03-28'),
      ],
      mornings: [morning('2026-03-25', null), morning('2026-03-29', 2)],
    }),
    words: [
      'From 1 Mar to 31 Mar 2026: 3 sessions of this exercise.',
      'Load stayed at 4 kg in full sessions.',
      'Load cannot be told for 1 session (24 Mar): a count or a load was not given.',
      'Morning pain of the left knee was given on 1 morning: 2, middle value 2.',
      'It is missing on 2 mornings (25 Mar and 27 Mar).',
      'Highest pain reported in a session was 2 to 3 over 3 sessions.',
      'At least one pain answer is missing in 1 session.',
      ...noEnd,
    ],
  },
  {
    title: 'a gap, a flare, pain over the limit and the decisions that followed',
    series: series(
      {
        sessions: [
          session('2026-03-02'),
          session('2026-03-14', { during: 6 }),
          session('2026-03-20', { kg: 3 }),
        ],
        mornings: [
          morning('2026-03-03', 2),
          morning('2026-03-15', 6, { flare: true }),
          morning('2026-03-21', 3),
        ],
        baselines: [baseline],
      },
      {
        decisions: [
          decision('2026-03-03', 'progress'),
          decision('2026-03-14', 'ease-back', 'session'),
          decision('2026-03-15', 'ease-back'),
          decision('2026-03-21', 'hold'),
        ],
      },
    ),
    words: [
      'From 1 Mar to 31 Mar 2026: 3 sessions of this exercise.',
      'Load in full sessions went from 4 kg on 2 Mar to 3 kg on 20 Mar: 0 steps up, 1 down.',
      'Gaps between sessions: 12 days from 2 Mar to 14 Mar and 11 days since 20 Mar.',
      'Morning pain of the left knee was given on 3 mornings: 2 to 6, middle value 3.',
      'It lay over the top of usual pain on 1 morning (15 Mar).',
      'A flare was reported on 1 morning (15 Mar).',
      'Highest pain reported in a session was 3 to 6 over 3 sessions; over the acceptable pain limit in 1 (14 Mar).',
      'Thresholds in force: top of usual pain 3, acceptable pain limit 5, set by R. Clinician.',
      'Decisions: progress 1, hold 1, ease-back 2. The newest, on 21 Mar, is hold.',
    ],
  },
  {
    title: 'one known session is not a trend',
    series: series(answeredSessions(['2026-03-29'], 0)),
    words: [
      'From 1 Mar to 31 Mar 2026: 1 session of this exercise.',
      'Load is known for one full session: 4 kg on 29 Mar.',
      'Morning pain of the left knee was given on 1 morning: 0, middle value 0.',
      'Highest pain reported in a session was 3 over 1 session.',
      ...noEnd,
    ],
  },
  {
    title: 'another measure is named with its own unit',
    series: series(
      { ...answeredSessions(['2026-03-28', '2026-03-30'], 2), prescriptions: [version(1)] },
      { measure: 'volume' },
    ),
    words: [
      'From 1 Mar to 31 Mar 2026: 2 sessions of this exercise.',
      'Load × repetitions stayed at 160 kg in full sessions.',
      'Morning pain of the left knee was given on 2 mornings: 2, middle value 2.',
      'Highest pain reported in a session was 3 over 2 sessions.',
      ...noEnd,
    ],
  },
];

describe('the words beside the picture', () => {
  it.each(cases)('$title', ({ series: seen, words }) => {
    expect(reviewWords(seen)).toEqual(words);
  });

  it('names the days of a long list until it would hide the sentence, then counts the rest', () => {
    const days = ['2026-03-10', '2026-03-12', '2026-03-14', '2026-03-16', '2026-03-18', '2026-03-20'];
    const words = reviewWords(series({ sessions: days.map((day) => session(day)) }));
    expect(words).toContain('It is missing on 6 mornings (11 Mar, 13 Mar, 15 Mar, 17 Mar and 2 more).');
  });
});
