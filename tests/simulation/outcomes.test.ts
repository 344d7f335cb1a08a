/** What is counted of a course, on courses written by hand. Thresholds are the trial's own definitions. */
import { describe, expect, it } from 'vitest';
import { type Acts, noActs } from '#simulation/trial/arm.ts';
import type { DayOfCourse } from '#simulation/trial/course.ts';
import { meanOutcomes, outcomesOf } from '#simulation/trial/outcomes.ts';

const day = (over: Partial<DayOfCourse> = {}, acts: Partial<Acts> = {}): DayOfCourse => ({
  rise: 0,
  level: 0,
  irritation: 0,
  isFlare: false,
  session: null,
  doseShare: 1,
  strength: 1,
  ...over,
  acts: { ...noActs, ...acts },
});

describe('outcomes of a course', () => {
  it('count a day as bad from 2 points over the start', () => {
    expect(outcomesOf([day({ rise: 1.99 }), day({ rise: 2 }), day({ rise: 2.01 })]).badDays).toBe(2);
  });

  it('count a day as caused by load from 1 point of irritation, outside a flare', () => {
    const days = [
      day({ irritation: 0.99 }),
      day({ irritation: 1 }),
      day({ irritation: 1.01 }),
      day({ irritation: 3, isFlare: true }),
    ];
    expect(outcomesOf(days)).toMatchObject({ loadCausedBadDays: 2, flareDays: 1, badDays: 0 });
  });

  it('call a cut false where the joint was at most 0.75 over its start, scatter aside', () => {
    const days = [0.74, 0.75, 0.76].map((level) => day({ level, rise: 5 }, { cuts: 1 }));
    expect(outcomesOf(days)).toMatchObject({ cuts: 3, falseCuts: 2 });
  });

  it('tell raises on a day truly bad from 1.5 over the start, scatter aside', () => {
    const days = [1.49, 1.5, 1.51].map((level) => day({ level, rise: 0 }, { raises: 1 }));
    expect(outcomesOf(days)).toMatchObject({ raises: 3, raisesOnBadDays: 2 });
  });

  it('read strength and dose from the last day', () => {
    const days = [day({ strength: 1.3, doseShare: 2 }), day({ strength: 1.1, doseShare: 0.9 })];
    expect(outcomesOf(days).strengthPercent).toBeCloseTo(10, 10);
    expect(outcomesOf(days).finalDose).toBe(0.9);
  });

  it('tell sessions done, eased and stopped apart; a day without one is none of them', () => {
    const days = (['full', 'full', 'easier', 'stopped', null] as const).map((session) => day({ session }));
    expect(outcomesOf(days)).toMatchObject({ sessions: 3, easierSessions: 1, stoppedSessions: 1 });
  });

  it('sum what the clinic did', () => {
    const acts = { signed: 1, contacts: 2, sameDay: 1, baselines: 1, clinicianActions: 4 };
    expect(outcomesOf([day({}, acts), day({}, acts)])).toMatchObject({
      signed: 2,
      contacts: 4,
      sameDayContacts: 2,
      baselines: 2,
      clinicianActions: 8,
    });
  });

  it('count decisions in a flare on flare days only', () => {
    const acts = { decisions: 1, progress: 1 };
    expect(outcomesOf([day({}, acts), day({ isFlare: true }, acts)])).toMatchObject({
      decisionsInFlare: 1,
      progressInFlare: 1,
    });
  });

  it('average by person', () => {
    const one = outcomesOf([day({ rise: 3, doseShare: 1 })]);
    const other = outcomesOf([day({ rise: 0, doseShare: 2 })]);
    expect(meanOutcomes([one, other])).toMatchObject({ badDays: 0.5, finalDose: 1.5 });
    expect(() => meanOutcomes([])).toThrow(RangeError);
  });
});
