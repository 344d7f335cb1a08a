/** Each arm follows its rule as described: 7.5 % a week, a fifth off, an engine on the product's own functions. */
import { describe, expect, it } from 'vitest';
import { engineDefaults } from '#core/decision/settings.ts';
import type { MorningRecord, SessionRecord } from '#core/record/record.ts';
import { dayFromNumber } from '#core/time/day.ts';
import type { Acts, Arm, Treatment, TrueJoint } from '#simulation/trial/arm.ts';
import {
  type ByHandRule,
  byHand,
  byHandHold,
  byHandMayCut,
  usualByHand,
} from '#simulation/trial/arms/by-hand.ts';
import { engineArms } from '#simulation/trial/arms/engine.ts';
import { bestTolerated, frontier, oracle } from '#simulation/trial/arms/oracle.ts';
import { fixedRise, sameDose } from '#simulation/trial/arms/unattended.ts';
import { followCourse } from '#simulation/trial/course.ts';
import { personTypes } from '#simulation/trial/person-types.ts';
import { firstDay, isLookDay } from '#simulation/trial/start.ts';
import { peopleOf } from '#simulation/trial/trial.ts';

const hour = 3_600_000;
const joint = 'left-knee';

const morning = (day: number, pain: number): MorningRecord => ({
  id: `morning-${day}`,
  day: dayFromNumber(day),
  recordedAt: (day * 24 + 8) * hour,
  joints: [{ joint, pain, stiffnessMinutes: 10, swelling: 'none', flare: false }],
  redFlags: [],
  extraPainRelief: false,
  fatigue: 'not-applicable',
  clockDoubtful: false,
});

interface Done {
  readonly during: number | null;
  readonly repetitions?: number;
  readonly kind?: SessionRecord['kind'];
}

const session = (day: number, treatment: Treatment, done: Done): SessionRecord => {
  const { loadKg, sets, repetitions } = treatment.dose();
  return {
    id: `session-${day}`,
    beganAt: (day * 24 + 17) * hour,
    recordedAt: (day * 24 + 18) * hour,
    day: dayFromNumber(day),
    kind: done.kind ?? 'full',
    sets: Array.from({ length: sets }, (_, place) => ({
      itemId: 'line',
      prescriptionId: 'line-1',
      set: place + 1,
      repetitions: done.repetitions ?? repetitions.low,
      loadKg,
      reserve: 2,
      stopReason: 'none',
    })),
    redFlags: [],
    extraPainRelief: false,
    didExtra: false,
    joints: [
      {
        joint,
        painBefore: 1,
        painDuring: done.during,
        painAfter: 1,
        painTwoHours: 'not-applicable',
        gaveWay: false,
      },
    ],
    clockDoubtful: false,
  };
};

interface Week {
  readonly sessions: readonly Done[];
  /** Tuesday to Monday. */
  readonly mornings: readonly (number | null)[];
}

const calm: Week = {
  sessions: [{ during: 2 }, { during: 2 }, { during: 2 }],
  mornings: [2, 2, 2, 2, 2, 2, 2],
};

/** The load after each week, for a person whose usual pain is 2. */
const loadsAfter = (arm: Arm, weeks: readonly Week[]): readonly number[] => {
  const treatment = arm.treat({ usualPain: 2, inflammatory: false });
  return weeks.map(({ sessions, mornings }, week) => {
    const monday = firstDay + 7 * week;
    for (let place = 0; place < 7; place++) {
      const done = place % 2 === 0 ? sessions[place / 2] : undefined;
      if (done) treatment.session(monday + place, session(monday + place, treatment, done));
      const pain = mornings[place] ?? null;
      treatment.morning(monday + place + 1, pain === null ? null : morning(monday + place + 1, pain));
    }
    treatment.look(monday + 7);
    return treatment.dose().loadKg;
  });
};

const during = (pain: number | null): Week => ({
  ...calm,
  sessions: [...calm.sessions.slice(1), { during: pain }],
});

describe('the arm by hand', () => {
  it('adds 7.5 % after each calm week, on the nearest load at home', () => {
    // 10 × 1.075 = 10.75, 11.56, 12.42: between two loads the lighter.
    expect(loadsAfter(byHandHold, [calm, calm, calm])).toEqual([10.5, 11.5, 12.5]);
  });

  it('takes pain of 5 in the session, not of 6', () => {
    expect(loadsAfter(byHandHold, [during(4)])).toEqual([10.5]);
    expect(loadsAfter(byHandHold, [during(5)])).toEqual([10.5]);
    expect(loadsAfter(byHandHold, [during(6)])).toEqual([10]);
  });

  it('holds where the last morning is over usual, and where earlier ones were alone it does not', () => {
    expect(loadsAfter(byHandHold, [{ ...calm, mornings: [2, 2, 2, 2, 2, 2, 3] }])).toEqual([10]);
    expect(loadsAfter(byHandHold, [{ ...calm, mornings: [3, 3, 3, 3, 3, 3, 2] }])).toEqual([10.5]);
  });

  it('holds without an answer or a session to go by', () => {
    expect(loadsAfter(byHandHold, [during(null)])).toEqual([10]);
    expect(loadsAfter(byHandHold, [{ ...calm, sessions: [] }])).toEqual([10]);
    expect(loadsAfter(byHandHold, [{ ...calm, mornings: [] }])).toEqual([10]);
  });

  it('takes a fifth off after two bad answers in a week, where it may cut', () => {
    const two: Week = { sessions: [{ during: 6 }, { during: 6 }, { during: 2 }], mornings: calm.mornings };
    expect(loadsAfter(byHandMayCut, [two])).toEqual([8]);
    expect(loadsAfter(byHandHold, [two])).toEqual([10]);
    expect(loadsAfter(byHandMayCut, [during(6)])).toEqual([10]);
  });

  it('calls a morning after a session bad from 2 over usual', () => {
    const mornings = (pain: number): Week => ({ ...calm, mornings: [pain, 2, pain, 2, 2, 2, 2] });
    expect([3, 4, 5].map((pain) => loadsAfter(byHandMayCut, [mornings(pain)])[0])).toEqual([10.5, 8, 8]);
    expect(loadsAfter(byHandMayCut, [{ ...calm, mornings: [2, 4, 2, 4, 2, 2, 2] }])).toEqual([10.5]);
  });

  it('costs a look each Monday and usual values every six weeks; signed are its increases', () => {
    const drawn = peopleOf(personTypes[2]!, { people: 1, weeks: [12], seed: 1 })[0]!;
    const acts = followCourse(drawn, byHandMayCut, { law: 'first', slope: 1 }).map((day) => day.acts);
    const sum = (name: Exclude<keyof Acts, 'talkedAboutOverdoing'>): number =>
      acts.reduce((total, one) => total + one[name], 0);
    expect([sum('contacts'), sum('baselines'), sum('clinicianActions')]).toEqual([11, 1, 12]);
    expect(sum('cuts')).toBeGreaterThan(0);
    expect(sum('signed')).toBe(sum('raises'));
  });
});

describe('by hand with a clinic’s own figures', () => {
  const own = (figures: Partial<ByHandRule>) => byHand('own', 'Own', { ...usualByHand, ...figures });
  const badTwice: Week = { ...during(2), mornings: [4, 2, 4, 2, 2, 2, 2] };

  it('raises and cuts by its own shares', () => {
    expect(loadsAfter(own({ weeklyRisePercent: 20 }), [calm])).toEqual([12]);
    expect(loadsAfter(own({ cutPercent: 50 }), [badTwice])).toEqual([5]);
  });

  it('takes pain up to its own limit', () => {
    expect([3, 4].map((pain) => loadsAfter(own({ mostPain: 3 }), [during(pain)])[0])).toEqual([10.5, 10]);
  });

  it('cuts after its own number of bad answers, and never at 0', () => {
    const after = (badAnswersForCut: number) => loadsAfter(own({ badAnswersForCut }), [badTwice])[0];
    expect([0, 1, 2, 3].map(after)).toEqual([10.5, 8, 8, 10.5]);
  });

  it('calls a morning bad from its own distance over usual', () => {
    expect([1, 2, 3].map((badMorning) => loadsAfter(own({ badMorning }), [badTwice])[0])).toEqual([
      8, 8, 10.5,
    ]);
  });

  it('sets usual values as often as it says', () => {
    const drawn = peopleOf(personTypes[2]!, { people: 1, weeks: [12], seed: 1 })[0]!;
    const baselines = [4, 6, 12].map((usualSetEveryWeeks) =>
      followCourse(drawn, own({ usualSetEveryWeeks }), { law: 'first', slope: 1 }).reduce(
        (sum, { acts }) => sum + acts.baselines,
        0,
      ),
    );
    expect(baselines).toEqual([2, 1, 0]);
  });
});

describe('the arms nobody looks after', () => {
  const bad: Week = { sessions: calm.sessions.map(() => ({ during: 10 })), mornings: [9, 9, 9, 9, 9, 9, 9] };
  const short: Week = { ...calm, sessions: [...calm.sessions.slice(1), { during: 2, repetitions: 14 }] };
  const eased: Week = { ...calm, sessions: [...calm.sessions.slice(1), { during: 2, kind: 'bad-day' }] };

  it('the same dose stays whatever is answered', () => {
    expect(loadsAfter(sameDose, [calm, bad, short])).toEqual([10, 10, 10]);
  });

  it('the fixed rise adds 7.5 % whenever the week was completed, whatever is answered', () => {
    expect(loadsAfter(fixedRise, [bad, calm])).toEqual([10.5, 11.5]);
    expect(loadsAfter(fixedRise, [short])).toEqual([10]);
    expect(loadsAfter(fixedRise, [eased])).toEqual([10]);
    expect(loadsAfter(fixedRise, [{ ...calm, sessions: [] }])).toEqual([10]);
  });
});

describe('the oracle', () => {
  const jointTaking = (mostKg: number): TrueJoint => ({
    outlook: ({ loadKg, repetitions }) => ({
      stimulus: loadKg * repetitions.low,
      overload: Math.max(0, loadKg - mostKg),
    }),
  });

  it('takes the dose that gives most of those the joint takes without answering', () => {
    expect(bestTolerated(jointTaking(12))).toMatchObject({ loadKg: 12, repetitions: { low: 25 } });
  });

  it('takes the one that irritates least where the joint takes none', () => {
    expect(bestTolerated(jointTaking(1))).toMatchObject({ loadKg: 5, repetitions: { low: 25 } });
  });

  it('of equal ones takes the one of least volume, and a set more where that gives more', () => {
    const flat: TrueJoint = { outlook: () => ({ stimulus: 1, overload: 0 }) };
    expect(bestTolerated(flat)).toMatchObject({ loadKg: 5, sets: 3, repetitions: { low: 5 } });
    const bySets: TrueJoint = { outlook: ({ sets }) => ({ stimulus: sets, overload: 0 }) };
    expect(bestTolerated(bySets)).toMatchObject({ loadKg: 5, sets: 4, repetitions: { low: 5 } });
  });

  const pain: TrueJoint = {
    outlook: ({ loadKg }) => ({ stimulus: loadKg, overload: Math.max(0, loadKg - 12) / 4 }),
  };

  it('that allows some answer takes the best dose up to it, at it included, and the least beyond where none stays', () => {
    expect([0, 0.25, 0.5, 1].map((allowed) => bestTolerated(pain, allowed).loadKg)).toEqual([12, 13, 14, 16]);
    expect(bestTolerated(jointTaking(1), 0.01).loadKg).toBe(5);
  });

  it('is the first of a line of such, each allowing more', () => {
    const told = { usualPain: 2, inflammatory: false };
    const loads = frontier.map((arm) => arm.treat(told).work(firstDay, 2, pain)!.dose.loadKg);
    expect(loads).toEqual([12, 13, 14, 16]);
    expect(frontier[0]).toBe(oracle);
  });

  it('asks the joint anew each time', () => {
    const treatment = oracle.treat({ usualPain: 2, inflammatory: false });
    const loads = [12, 6, 12].map((kg) => treatment.work(firstDay, 2, jointTaking(kg))!.dose.loadKg);
    expect(loads).toEqual([12, 6, 12]);
  });
});

describe.each(engineArms(engineDefaults))('the arm $id', (arm) => {
  const courses = personTypes.map((type) =>
    followCourse(peopleOf(type, { people: 1, weeks: [12], seed: 5 })[0]!, arm, {
      law: 'first',
      slope: 1,
    }),
  );

  const raisesOf = (days: (typeof courses)[number]) =>
    days.flatMap(({ acts }, place) => (acts.raises > 0 ? [{ acts, place }] : []));

  it('raises what a clinician signs, on a Monday; unsigned never in version 1, later once in seven days', () => {
    const raised = courses.map(raisesOf);
    expect(raised.flat().length).toBeGreaterThan(5);
    for (const list of raised) {
      for (const [at, { acts, place }] of list.entries()) {
        const isSigned = acts.signed === acts.raises && isLookDay(firstDay + place);
        const before = list[at - 1]?.place ?? Number.NEGATIVE_INFINITY;
        expect([place, isSigned || (arm.id !== 'version-1' && place - before >= 7)]).toEqual([place, true]);
      }
    }
  });

  it('cuts at most once in seven days', () => {
    const gaps = courses.flatMap((days) => {
      const cuts = days.flatMap(({ acts }, place) => Array.from({ length: acts.cuts }, () => place));
      return cuts.slice(1).map((place, before) => place - cuts[before]!);
    });
    expect(gaps.length).toBeGreaterThan(5);
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(7);
  });

  it('has the clinic set usual values no earlier than two weeks in, and again after six', () => {
    for (const days of courses) {
      const set = days.flatMap(({ acts }, place) => (acts.baselines > 0 ? [place] : []));
      expect(set[0]).toBeGreaterThanOrEqual(14);
      expect(set.length).toBeLessThanOrEqual(3);
    }
  });

  it('names as clinician actions signatures, calls and usual values together', () => {
    for (const { acts } of courses.flat()) {
      expect(acts.clinicianActions).toBe(acts.signed + acts.contacts + acts.baselines);
    }
  });
});
