/** Which entry speaks where several could: by day, by time of day, by the more cautious word; and when one is known. */
import { describe, expect, it } from 'vitest';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import { judgedSession } from '#core/decision/facts/judged-session.ts';
import { indexRecord } from '#core/decision/facts/record-index.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import type {
  JointMorningAnswers,
  MorningRecord,
  PatientRecord,
  SessionRecord,
} from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import {
  baseline,
  instantOn,
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

const kneeFacts = (of: PatientRecord, at = noonOf(judgedMorning)) => factsFor(of, knee, at);
const judged = (of: PatientRecord, at = noonOf(judgedMorning)) =>
  judgedSession(indexRecord(of), knee, at, engineDefaults);
const plus = (of: PatientRecord, ...sessions: readonly SessionRecord[]): PatientRecord => ({
  ...of,
  sessions: [...of.sessions, ...sessions],
});
const alsoMorning = (answers: Partial<JointMorningAnswers>, changed: Partial<MorningRecord>) => ({
  ...morning(judgedMorning, answers, changed),
  id: 'second',
});
const both = (first: Partial<JointMorningAnswers>, second: Partial<JointMorningAnswers>, more = {}) => {
  const of = withMorning(record(), morning(judgedMorning, first));
  return kneeFacts({ ...of, mornings: [...of.mornings, alsoMorning(second, more)] });
};

describe('the session that is judged', () => {
  it('is the newest that had begun and was entered by then, to the millisecond', () => {
    const entered = instantOn(judgedMorning, 10);
    const late = withSession(record(), session(lastSession, { recordedAt: entered }));
    const dayAt = (instant: number) => judged(late, { instant, day: judgedMorning }).session?.session.day;
    expect([entered - 1, entered, entered + 1].map(dayAt)).toEqual([
      trainingDays.at(-2),
      lastSession,
      lastSession,
    ]);
    const began = instantOn(lastSession, 17);
    const early = withSession(record(), session(lastSession, { beganAt: began, recordedAt: 0 }));
    const begunAt = (instant: number) => judged(early, { instant, day: lastSession }).session?.session.day;
    expect([began - 1, began].map(begunAt)).toEqual([trainingDays.at(-2), lastSession]);
  });

  it('has the one before it beside it, and is none where none loaded the joint', () => {
    expect(judged(record()).previous?.session.day).toBe(trainingDays.at(-2));
    expect(judged(record({ sessions: [session(lastSession)] })).previous).toBeNull();
    expect(judged(record({ sessions: [] }))).toMatchObject({ place: -1, session: null, state: 'no-session' });
  });

  it('waits for its morning through the day after, and then has missed it', () => {
    const silent = record({ mornings: [] });
    const states = [1, 2, 3].map((days) => judged(silent, noonOf(addDays(lastSession, days))).state);
    expect(states).toEqual(['waiting-for-morning', 'morning-missed', 'morning-missed']);
    expect(judged(record()).state).toBe('complete');
  });

  it('with a doubtful clock stands where it arrived', () => {
    const odd = session(lastSession, {
      id: 'odd',
      clockDoubtful: true,
      beganAt: instantOn('2020-01-01', 8),
      recordedAt: instantOn(judgedMorning, 9),
    });
    expect(judged(plus(record(), odd)).session?.session.id).toBe('odd');
  });

  it('without any set speaks of the joints that were asked about, as one of an unknown dose does', () => {
    const idle = session(judgedMorning, { sets: [], beganAt: instantOn(judgedMorning, 9), recordedAt: 0 });
    expect(judged(plus(record(), idle)).session?.session.day).toBe(judgedMorning);
    const unknown = {
      ...idle,
      sets: session(judgedMorning).sets.map((set) => ({ ...set, prescriptionId: 'gone' })),
    };
    expect(judged(plus(record(), unknown)).session?.session.day).toBe(judgedMorning);
    const other = { ...idle, joints: idle.joints.map((one) => ({ ...one, joint: shoulder })) };
    expect(judged(plus(record(), other)).session?.session.day).toBe(lastSession);
  });
});

describe('of two entries on one day', () => {
  it('the earlier answer is the morning, by time of day, then by arrival', () => {
    const at = (first: Partial<MorningRecord>, second: Partial<MorningRecord>) => {
      const of = withMorning(record(), morning(judgedMorning, { pain: 2 }, first));
      const two = { ...of, mornings: [...of.mornings, alsoMorning({ pain: 4 }, second)] };
      const turned = { ...two, mornings: [...two.mornings].reverse() };
      return [two, turned].map((one) => kneeFacts(one).painNextMorning);
    };
    expect(at({ localMinute: 480 }, { localMinute: 540 })).toEqual([2, 2]);
    expect(at({ localMinute: 540 }, { localMinute: 480 })).toEqual([4, 4]);
    const [seven, eight] = [7, 8].map((hour) => ({ recordedAt: instantOn(judgedMorning, hour) }));
    expect(at(seven!, eight!)).toEqual([2, 2]);
    expect(at(eight!, seven!)).toEqual([4, 4]);
    // Alike in both, by their names, so that the order of entry never matters.
    expect(new Set(at(eight!, eight!)).size).toBe(1);
  });

  it('the more swollen, the longer stiffness and the flare speak', () => {
    expect(both({ swelling: 'slight' }, { swelling: 'clear' }).swelling).toBe('clear');
    expect(both({ swelling: 'clear' }, { swelling: 'slight' }).swelling).toBe('clear');
    expect(both({ swelling: null }, { swelling: 'slight' }).swelling).toBe('slight');
    expect(both({ swelling: 'slight' }, { swelling: null }).swelling).toBe('slight');
    expect(both({ swelling: 'not-applicable' }, { swelling: 'slight' }).swelling).toBe('slight');
    expect(both({ stiffnessMinutes: 10 }, { stiffnessMinutes: 40 }).stiffnessMinutes).toBe(40);
    expect(both({ stiffnessMinutes: 40 }, { stiffnessMinutes: 10 }).stiffnessMinutes).toBe(40);
    expect(both({ stiffnessMinutes: null }, { stiffnessMinutes: 10 }).stiffnessMinutes).toBe(10);
    expect(both({ stiffnessMinutes: 10 }, { stiffnessMinutes: null }).stiffnessMinutes).toBe(10);
    expect(both({ flare: false }, { flare: true }).flareDays).toBe(1);
    expect(both({ flare: true }, { flare: false }).flareDays).toBe(1);
    expect(both({ flare: null }, { flare: false }).flareDays).toBe(0);
    expect(both({ flare: null }, { flare: null }).redFlags).toBeNull();
    expect(both({ flare: null }, { flare: false }).redFlags).toEqual([]);
  });

  it('of two answers as swollen the one against usual counts, which leaves no usual swelling to allow for', () => {
    const against = { swelling: 'slight', swellingQuestion: 'more-than-usual' } as const;
    const usual = [baseline({ usualSwelling: 'slight' })];
    const of = (first: Partial<JointMorningAnswers>, second: Partial<JointMorningAnswers>) => {
      const base = withMorning(record({ baselines: usual }), morning(judgedMorning, first));
      return kneeFacts({ ...base, mornings: [...base.mornings, alsoMorning(second, {})] }).usualSwelling;
    };
    expect(of({ swelling: 'slight' }, { swelling: 'slight' })).toBe('slight');
    expect(of({ swelling: 'slight' }, against)).toBe('none');
    expect(of(against, { swelling: 'slight' })).toBe('none');
    expect(of({ swelling: 'clear' }, against)).toBe('slight');
  });

  it('of two with a doubtful clock nothing is read', () => {
    const doubtful = withMorning(
      record(),
      morning(judgedMorning, { swelling: 'clear' }, { clockDoubtful: true }),
    );
    expect(kneeFacts(doubtful)).toMatchObject({
      swelling: null,
      stiffnessMinutes: null,
      painNextMorning: null,
    });
  });

  it('of two baselines the narrower band and the lower limit are used, the worse of two knee tests', () => {
    const limit = (...limits: readonly number[]) =>
      kneeFacts(record({ baselines: limits.map((acceptablePainLimit) => baseline({ acceptablePainLimit })) }))
        .painCeiling;
    expect([limit(6, 7), limit(7, 6)]).toEqual([6, 6]);
    const top = (...tops: readonly number[]) =>
      kneeFacts(record({ baselines: tops.map((usualPainTop) => baseline({ usualPainTop })) })).usualPainTop;
    expect([top(1, 3), top(3, 1)]).toEqual([1, 1]);
    const grade = (...grades: readonly ('zero' | '1+' | '2+')[]) =>
      kneeFacts(record({ effusions: grades.map((one) => ({ joint: knee, day: judgedMorning, grade: one })) }))
        .effusion;
    expect([grade('zero', '2+'), grade('2+', 'zero')]).toEqual(['2+', '2+']);
  });
});

describe('the order in which a record lists its entries', () => {
  it('changes no fact', () => {
    const of = record({
      effusions: [
        { joint: knee, day: addDays(judgedMorning, -9), grade: '2+' },
        { joint: knee, day: addDays(judgedMorning, -2), grade: '1+' },
      ],
      baselines: [
        baseline({ usualPain: 0, usualPainTop: 0 }),
        baseline({ setOn: addDays(judgedMorning, -3) }),
      ],
    });
    const turned = {
      ...of,
      sessions: [...of.sessions].reverse(),
      mornings: [...of.mornings].reverse(),
      effusions: [...of.effusions].reverse(),
      baselines: [...of.baselines].reverse(),
      planned: [...of.planned].reverse(),
    };
    expect(kneeFacts(turned)).toEqual(kneeFacts(of));
    expect(kneeFacts(of)).toMatchObject({ usualPain: 1, effusion: '1+' });
  });
});
