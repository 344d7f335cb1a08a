/** The two forms an invented person hands in, whichever model made the person: answers in, records out. */
import type { JointMorningAnswers, MorningRecord, SessionRecord, SetRecord } from '#core/record/record.ts';
import { dayFromNumber } from '#core/time/day.ts';
import { dayMilliseconds, joint } from './start.ts';

const hourMilliseconds = 3_600_000;

export type MorningAnswers = Pick<JointMorningAnswers, 'pain' | 'stiffnessMinutes' | 'swelling' | 'flare'>;

export const morningForm = (day: number, answers: MorningAnswers): MorningRecord => ({
  id: `morning-${day}`,
  day: dayFromNumber(day),
  recordedAt: day * dayMilliseconds + 8 * hourMilliseconds,
  joints: [{ joint, ...answers, swellingQuestion: 'more-than-usual' }],
  redFlags: [],
  extraPainRelief: false,
  fatigue: 'not-applicable',
  clockDoubtful: false,
});

export interface SessionAnswers {
  readonly isEasier: boolean;
  readonly didExtra: boolean;
  readonly sets: readonly Omit<SetRecord, 'itemId' | 'set'>[];
  readonly painBefore: number | null;
  readonly painDuring: number | null;
  readonly painAfter: number | null;
}

export const sessionForm = (
  day: number,
  { isEasier, didExtra, sets, ...pain }: SessionAnswers,
): SessionRecord => ({
  id: `session-${day}`,
  beganAt: day * dayMilliseconds + 17 * hourMilliseconds,
  recordedAt: day * dayMilliseconds + 18 * hourMilliseconds,
  day: dayFromNumber(day),
  kind: isEasier ? 'bad-day' : 'full',
  sets: sets.map((set, place) => ({ itemId: 'line', set: place + 1, ...set })),
  redFlags: [],
  extraPainRelief: false,
  didExtra,
  joints: [{ joint, ...pain, painTwoHours: 'not-applicable', gaveWay: false }],
  clockDoubtful: false,
});
