import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import {
  eveningOf,
  firstMonday,
  instantOn,
  judgedMorning,
  knee,
  lastSession,
  morning,
  noonOf,
  record,
  session,
  trainingDays,
  version,
  withMorning,
  withSession,
} from './small-record.ts';

const both = [version(), version({ id: 'arm-1', itemId: 'arm', joints: ['right-shoulder'] })];
const kneeFacts = (of: PatientRecord, at = noonOf(judgedMorning)) => factsFor(of, knee, at);
const daysBefore = (days: number) => addDays(judgedMorning, -days);

describe('facts of a joint from its history', () => {
  it('a quiet history gives quiet facts, and they progress', () => {
    const facts = kneeFacts(record());
    expect(facts).toMatchObject({
      painBefore: 1,
      painDuring: 2,
      painNextMorning: 1,
      usualPain: 1,
      usualPainTop: 1,
      morningPainMean7: 1,
      swelling: 'none',
      effusion: 'not-applicable',
      redFlags: [],
      repetitionsDonePercent: 100,
      sessionsOnTarget: 4,
      missedSessions14: 0,
      plannedSessions14: 6,
      gapDays: 2,
    });
    expect(decide(facts)).toMatchObject({ decision: 'progress', largestStep: 'load', reasons: [] });
  });

  it('on the evening of a session the next morning is still to come, and the dose is held', () => {
    const facts = kneeFacts(record(), eveningOf(lastSession));
    expect(facts.painNextMorning).toBeNull();
    expect(decide(facts).decision).toBe('hold');
  });

  it('without any session nothing is known and the dose is held', () => {
    const facts = kneeFacts(record({ sessions: [] }));
    expect([facts.painBefore, facts.repetitionsDonePercent, facts.redFlags]).toEqual([null, null, null]);
    expect(decide(facts).decision).toBe('hold');
  });

  it('a score given before 04:00 or from 14:00 on is not the next morning', () => {
    const at = (localMinute: number) =>
      kneeFacts(
        withMorning(record(), morning(judgedMorning, { pain: 3 }, { localMinute })),
        eveningOf(judgedMorning),
      ).painNextMorning;
    expect([239, 240, 839, 840].map(at)).toEqual([null, 3, 3, null]);
  });

  it('an entry with a doubtful clock is missing, and its red flag is not', () => {
    const doubtful = { clockDoubtful: true, recordedAt: instantOn(lastSession, 18) };
    const facts = kneeFacts(withSession(record(), session(lastSession, doubtful, { painDuring: 9 }, both)));
    expect([facts.painDuring, facts.repetitionsDonePercent, facts.sessionsOnTarget]).toEqual([null, null, 0]);
    const flagged = { ...doubtful, redFlags: ['chest-pain'] };
    expect(kneeFacts(withSession(record(), session(lastSession, flagged, {}, both))).redFlags).toEqual([
      'chest-pain',
    ]);
    const morningOff = {
      clockDoubtful: true,
      redFlags: ['dark-urine'],
      recordedAt: instantOn(judgedMorning, 8),
    };
    const far = morning('2031-01-01', {}, morningOff);
    expect(kneeFacts(record({ mornings: [...record().mornings, far] })).redFlags).toEqual(['dark-urine']);
  });

  it('an entry recorded later is not known earlier, and is known from then on', () => {
    const late = withMorning(
      record(),
      morning(judgedMorning, { pain: 4 }, { recordedAt: instantOn(judgedMorning, 15) }),
    );
    expect(kneeFacts(late).painNextMorning).toBeNull();
    expect(kneeFacts(late, eveningOf(judgedMorning)).painNextMorning).toBe(4);
  });

  it('the mean needs four mornings of the last seven', () => {
    const only = (count: number) => record({ mornings: record().mornings.slice(-count) });
    expect([3, 4, 5].map((count) => kneeFacts(only(count)).morningPainMean7)).toEqual([null, 1, 1]);
    const older = withMorning(record(), morning(daysBefore(7), { pain: 8 }));
    const within = withMorning(record(), morning(daysBefore(6), { pain: 8 }));
    expect([older, within].map((of) => kneeFacts(of).morningPainMean7)).toEqual([1, 2]);
  });

  it('the morning before counts over the top, the one before that does not', () => {
    expect(kneeFacts(withMorning(record(), morning(daysBefore(1), { pain: 1 }))).previousMorningOverTop).toBe(
      false,
    );
    expect(kneeFacts(withMorning(record(), morning(daysBefore(1), { pain: 2 }))).previousMorningOverTop).toBe(
      true,
    );
    expect(kneeFacts(withMorning(record(), morning(daysBefore(2), { pain: 2 }))).previousMorningOverTop).toBe(
      false,
    );
  });

  it('severe pain of the session before is remembered, from any of its scores', () => {
    const earlier = trainingDays.at(-2)!;
    const at = (pain: number) =>
      kneeFacts(withSession(record(), session(earlier, {}, { painAfter: pain }, both))).previousPeakEight;
    expect([7, 8, 9].map(at)).toEqual([false, true, true]);
    expect(
      kneeFacts(withMorning(record(), morning(addDays(earlier, 1), { pain: 8 }))).previousPeakEight,
    ).toBe(true);
  });
});

describe('flares and the state of the joint', () => {
  const flaring = (from: number, to: number): PatientRecord =>
    Array.from({ length: from - to + 1 }, (_, place) => daysBefore(from - place)).reduce(
      (of, day) => withMorning(of, morning(day, { flare: true })),
      record(),
    );

  it('a flare counts its days and ends with an answer of no', () => {
    expect(kneeFacts(flaring(0, 0)).flareDays).toBe(1);
    expect(kneeFacts(flaring(7, 0)).flareDays).toBe(8);
    expect(kneeFacts(flaring(4, 1)).flareDays).toBe(0);
  });

  it('silence neither ends a flare nor lengthens it', () => {
    const silent = withMorning(flaring(3, 1), morning(judgedMorning, { flare: null }));
    expect(kneeFacts(silent).flareDays).toBe(3);
    const bridged = withMorning(flaring(4, 0), morning(daysBefore(2), { flare: null }));
    expect(kneeFacts(bridged).flareDays).toBe(5);
  });

  it('a flare question left open counts as red flag questions not answered', () => {
    const open = withMorning(record(), morning(judgedMorning, { flare: null }));
    expect(kneeFacts(open).redFlags).toBeNull();
    expect(decide(kneeFacts(open)).decision).toBe('hold');
  });

  it('another joint in flare is counted, this one is not', () => {
    const other = morning(judgedMorning);
    const joints = other.joints.map((one) => (one.joint === knee ? one : { ...one, flare: true }));
    const facts = kneeFacts(withMorning(record(), { ...other, joints }));
    expect([facts.otherJointsFlared, facts.flareDays]).toEqual([1, 0]);
  });

  it('swelling told before the session only warns; told after it, it speaks', () => {
    const at = (day: string, swelling: 'none' | 'clear') =>
      kneeFacts(withMorning(record(), morning(day, { swelling })), eveningOf(lastSession)).swelling;
    expect([at(lastSession, 'none'), at(lastSession, 'clear')]).toEqual([null, 'clear']);
    expect(kneeFacts(record()).swelling).toBe('none');
  });

  it('effusion tests in a row at 2+ are counted to the latest', () => {
    const grades = (...list: ('zero' | '2+' | '3+')[]) =>
      kneeFacts(
        record({
          effusions: list.map((grade, place) => ({
            joint: knee,
            day: addDays(firstMonday, place + 10),
            grade,
          })),
        }),
      );
    expect([grades('2+').effusionRun, grades('2+', '2+').effusionRun]).toEqual([1, 2]);
    expect([grades('2+', 'zero', '2+').effusionRun, grades('2+', 'zero').effusionRun]).toEqual([1, 0]);
    expect(grades('2+', 'zero').effusion).toBe('zero');
  });
});
