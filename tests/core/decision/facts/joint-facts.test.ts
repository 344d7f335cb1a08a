/** Facts of one joint where its baseline, its answers or its tests are not there, and at their edges. */
import { describe, expect, it } from 'vitest';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { Baseline, Effusion, JointMorningAnswers, PatientRecord } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
import {
  baseline,
  firstMonday,
  judgedMorning,
  knee,
  lastSession,
  morning,
  noonOf,
  record,
  session,
  shoulder,
  trainingDays,
  withMorning,
  withSession,
} from '../small-record.ts';

const factsAt = (of: PatientRecord, day: Day = judgedMorning, settings = {}) =>
  factsFor(of, knee, noonOf(day), settings);
const back = (days: number): Day => addDays(judgedMorning, -days);

describe('without a baseline', () => {
  it('nothing is usual, and the pain limit is the lowest', () => {
    expect(factsAt(record({ baselines: [] }))).toMatchObject({
      usualPain: null,
      usualPainTop: null,
      painCeiling: 5,
      usualSwelling: 'none',
      usualEffusion: 'zero',
      usualStiffnessMinutes: 0,
      baselineAgeDays: 0,
      baselineLatched: false,
      usualPainProvisional: false,
      usualPainRise: null,
      symptomSignal: false,
    });
    const tired = withMorning(record({ baselines: [] }), morning(judgedMorning, {}, { fatigue: 4 }));
    expect(factsAt(tired).fatigueRise).toBeNull();
  });

  it('mornings count as over usual from 1 on', () => {
    const of = (pain: number) =>
      factsAt(withMorning(record({ baselines: [] }), morning(lastSession, { pain }))).previousMorningOverTop;
    expect([0, 1].map(of)).toEqual([false, true]);
  });
});

it('the usual swelling, effusion and stiffness are those of the baseline', () => {
  const usual = { usualSwelling: 'slight', usualEffusion: 'trace', usualStiffnessMinutes: 30 } as const;
  expect(factsAt(record({ baselines: [baseline(usual)] }))).toMatchObject(usual);
});

describe('the usual band', () => {
  const topOf = (usualPain: number | null, usualPainTop: number | null) =>
    factsAt(record({ baselines: [baseline({ usualPain, usualPainTop })] })).usualPainTop;

  it('ends at usual pain where nobody widened it, at most 2 over it, never under it', () => {
    expect(topOf(3, null)).toBe(3);
    expect([2, 3, 4, 5, 6].map((top) => topOf(3, top))).toEqual([3, 3, 4, 5, 5]);
  });

  it('is not known where usual pain is not', () => {
    expect(topOf(null, 3)).toBeNull();
  });

  it('that is due for review says so', () => {
    const of = (dueForReview: boolean) => factsAt(record({ baselines: [baseline({ dueForReview })] }));
    expect([true, false].map((due) => of(due).baselineLatched)).toEqual([true, false]);
  });
});

describe('pain of the session', () => {
  it('is not known where no session is judged', () => {
    expect(factsAt(record({ sessions: [] }), judgedMorning, { 'later-morning-days': 2 })).toMatchObject({
      painBefore: null,
      painDuring: null,
      painAfter: null,
      painTwoHours: null,
      painNextMorning: null,
      painLaterMorning: 'not-applicable',
      previousPeakEight: false,
      extraPainRelief: false,
      gaveWay: false,
    });
  });

  it('with a doubtful clock is not known; what was not asked then was still not asked', () => {
    const twoHours = (painTwoHours: number | null | 'not-applicable') =>
      factsAt(
        withSession(
          record(),
          session(lastSession, { clockDoubtful: true }, { painTwoHours, painBefore: 6, painAfter: 6 }),
        ),
      );
    expect(twoHours(6)).toMatchObject({ painBefore: null, painAfter: null, painTwoHours: null });
    expect([null, 'not-applicable' as const].map((one) => twoHours(one).painTwoHours)).toEqual([
      null,
      'not-applicable',
    ]);
  });

  it('that was severe two hours after the session before is remembered', () => {
    const earlier = trainingDays.at(-2)!;
    const of = (painTwoHours: number | 'not-applicable', changed = {}) =>
      factsAt(withSession(record(), session(earlier, changed, { painTwoHours }))).previousPeakEight;
    expect([of(7), of(8), of('not-applicable')]).toEqual([false, true, false]);
    const doubtful = { clockDoubtful: true, recordedAt: session(earlier).recordedAt };
    expect(of(8, doubtful)).toBe(false);
  });
});

describe('the state of the joint', () => {
  const told = (answers: Partial<JointMorningAnswers>, day = lastSession) =>
    factsAt({ ...record(), mornings: [morning(day, answers)] });

  it('is not known where no morning told of it, and no flare question is open then', () => {
    expect(factsAt(record({ mornings: [] }))).toMatchObject({
      swelling: null,
      stiffnessMinutes: null,
      usualSwelling: 'none',
      flareDays: 0,
      redFlags: [],
    });
  });

  it('told before the session only warns: clear, severe or not asked, and no minutes of stiffness', () => {
    const swelling = (['none', 'slight', 'clear', 'severe', 'not-applicable', null] as const).map(
      (one) => told({ swelling: one }).swelling,
    );
    expect(swelling).toEqual([null, null, 'clear', 'severe', 'not-applicable', null]);
    const stiffness = ([90, 'not-applicable', null] as const).map(
      (one) => told({ stiffnessMinutes: one }).stiffnessMinutes,
    );
    expect(stiffness).toEqual([null, 'not-applicable', null]);
  });

  it('is read from the only morning there is', () => {
    const alone = told({ swelling: 'slight', stiffnessMinutes: 25, flare: true }, judgedMorning);
    expect(alone).toMatchObject({ swelling: 'slight', stiffnessMinutes: 25, flareDays: 1 });
  });
});

describe('tests of the knee', () => {
  const tested = (...list: readonly (readonly [number, Effusion])[]) =>
    record({
      effusions: list.map(([daysAgo, grade]) => ({ joint: knee, day: back(daysAgo), grade })),
    });

  it('count up to today, and none is no test', () => {
    expect(factsAt(tested())).toMatchObject({ effusion: 'not-applicable', effusionRun: 0 });
    expect(factsAt(tested([-1, '3+']))).toMatchObject({ effusion: 'not-applicable', effusionRun: 0 });
    expect(factsAt(tested([1, '2+'], [-1, 'zero']))).toMatchObject({ effusion: '2+', effusionRun: 1 });
  });

  it('in a row at 2+ or 3+ are counted back to the last smaller one', () => {
    const run = (...grades: readonly Effusion[]) =>
      factsAt(tested(...grades.map((grade, place) => [grades.length - place, grade] as const))).effusionRun;
    expect(run('2+', '3+', '2+')).toBe(3);
    expect(run('2+', '1+', '3+')).toBe(1);
    expect(run('2+', 'trace')).toBe(0);
  });

  it('go on holding where the only swelling told is of their last day', () => {
    const told = (daysAgo: number) =>
      factsAt({ ...tested([15, '2+']), mornings: [morning(back(daysAgo))] }).effusion;
    // The test holds for 14 days: its last day was yesterday.
    expect([0, 1].map(told)).toEqual(['not-applicable', '2+']);
  });

  it('go on holding while what was told since has a doubtful clock or is not known yet', () => {
    const told = (changed: object) =>
      factsAt({ ...tested([15, '2+']), mornings: [morning(judgedMorning, {}, changed)] }).effusion;
    expect(told({ clockDoubtful: true })).toBe('2+');
    const { instant } = noonOf(judgedMorning);
    expect([instant, instant + 1].map((recordedAt) => told({ recordedAt }))).toEqual([
      'not-applicable',
      '2+',
    ]);
  });
});

it('other joints in flare are counted, each once, and the quiet ones are not', () => {
  const others = (joints: readonly ('left-hip' | 'right-shoulder')[]) => {
    const one = morning(judgedMorning, {}, {}, [knee, shoulder, 'left-hip']);
    const flaring = one.joints.map((answers) => ({
      ...answers,
      flare: (joints as readonly string[]).includes(answers.joint),
    }));
    return factsAt(withMorning(record(), { ...one, joints: flaring })).otherJointsFlared;
  };
  expect([
    others([]),
    others([shoulder as 'right-shoulder']),
    others(['left-hip', 'right-shoulder']),
  ]).toEqual([0, 1, 2]);
});

it('the rise is counted from a usual pain a clinician acknowledged, also where a later plan began after it', () => {
  const later = baseline({ usualPain: 5, usualPainTop: 5, setOn: addDays(firstMonday, 5) });
  const of = (changed: Partial<Baseline>) =>
    factsAt({
      ...record({ baselines: [baseline({ usualPain: 2, usualPainTop: 2, ...changed }), later] }),
      planBeganOn: addDays(firstMonday, 6),
    }).usualPainRise;
  expect([of({ riseAcknowledged: true }), of({})]).toEqual([3, 0]);
});
