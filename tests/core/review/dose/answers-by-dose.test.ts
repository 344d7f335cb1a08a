/** How a joint answered each dose by the next morning: what counts as at usual, what as over it, what not at all. */
import { describe, expect, it } from 'vitest';
import { toleratedDoses } from '#core/decision/dose/tolerated.ts';
import type { JointMorningAnswers, PatientRecord, SessionRecord } from '#core/record/record.ts';
import { answersByDose } from '#core/review/dose/answers-by-dose.ts';
import { addDays, dayFromNumber } from '#core/time/day.ts';
import { endOf, randomHistory } from '#simulation/raises/random-history.ts';
import { firstDay } from '#simulation/raises/random-prescriptions.ts';
import { seeded } from '#simulation/raises/seeded.ts';
import {
  baseline,
  eveningOf,
  instantOn,
  judgedMorning,
  knee,
  kneeDose,
  lastSession,
  morning,
  noonOf,
  record,
  session,
  shoulder,
  trainingDays,
  version,
  withMorning,
  withSession,
} from '../../decision/small-record.ts';

const answersOf = (of: PatientRecord, at = noonOf(judgedMorning)) =>
  answersByDose({ record: of, itemId: 'knee', joint: knee, at });

/** How the last of nine sessions was answered. */
const lastAnswer = (of: PatientRecord, at = noonOf(judgedMorning)) =>
  answersOf(of, at).sessions.at(-1)?.answer;

const nextMorning = (answers: Partial<JointMorningAnswers>) =>
  lastAnswer(withMorning(record(), morning(judgedMorning, answers)));
const done = (changed: Partial<SessionRecord>) =>
  lastAnswer(withSession(record(), session(lastSession, changed)));

const atUsual = { is: 'at-usual' };
const over = (...what: readonly string[]) => ({ is: 'over-usual', over: what });
const leftOut = (why: string) => ({ is: 'left-out', why });

describe('a session', () => {
  it('is at usual by pain up to the top of usual, here 1, and over it from 2 on', () => {
    expect([0, 1, 2, 9].map((pain) => nextMorning({ pain }))).toEqual([
      atUsual,
      atUsual,
      over('pain'),
      over('pain'),
    ]);
  });

  it('is over usual by stiffness of more than 30 minutes where 10 are usual: 29, 30, 31', () => {
    const answers = [29, 30, 31].map((stiffnessMinutes) => nextMorning({ stiffnessMinutes }));
    expect(answers).toEqual([atUsual, atUsual, over('stiffness')]);
  });

  it('is over usual by swelling where none is usual', () => {
    expect(
      (['none', 'slight', 'clear', 'severe'] as const).map((swelling) => nextMorning({ swelling })),
    ).toEqual([atUsual, over('swelling'), over('swelling'), over('swelling')]);
    expect(nextMorning({ pain: 4, swelling: 'clear' })).toEqual(over('pain', 'swelling'));
  });

  it('is left out where an answer is missing, and over usual where one of the others says so', () => {
    for (const missing of [{ pain: null }, { stiffnessMinutes: null }, { swelling: null }])
      expect(nextMorning(missing)).toEqual(leftOut('no-answer'));
    expect(nextMorning({ pain: 2, swelling: null })).toEqual(over('pain'));
    expect(nextMorning({ swelling: 'not-applicable', stiffnessMinutes: 'not-applicable' })).toEqual(atUsual);
  });

  it('is left out without a morning; while that is still to come it says so', () => {
    const silent = record({ mornings: record().mornings.filter(({ day }) => day !== judgedMorning) });
    expect(lastAnswer(silent, eveningOf(lastSession))).toEqual(leftOut('morning-to-come'));
    expect(lastAnswer(silent)).toEqual(leftOut('morning-to-come'));
    expect(lastAnswer(silent, noonOf(addDays(judgedMorning, 1)))).toEqual(leftOut('no-answer'));
  });

  it('is left out on a flare day, be it the day of the session or the morning after', () => {
    expect(nextMorning({ flare: true, pain: 9 })).toEqual(leftOut('flare'));
    const before = withMorning(record(), morning(lastSession, { flare: true }));
    expect(lastAnswer(before)).toEqual(leftOut('flare'));
    const ended = withMorning(record(), morning(addDays(lastSession, -1), { flare: true }));
    expect(lastAnswer(ended)).toEqual(atUsual);
  });

  it('is left out where usual pain was not set by then', () => {
    expect(lastAnswer(record({ baselines: [] }))).toEqual(leftOut('usual-not-set'));
    const setOn = (day: string) => lastAnswer(record({ baselines: [baseline({ setOn: day })] }));
    expect([lastSession, judgedMorning, addDays(judgedMorning, 1)].map(setOn)).toEqual([
      atUsual,
      atUsual,
      leftOut('usual-not-set'),
    ]);
  });

  it('is left out where its dose is not known, more was done, or that was not answered', () => {
    const { sets } = session(lastSession);
    const open = sets.map((set) => ({ ...set, repetitions: null }));
    expect(done({ sets: open })).toEqual({ ...leftOut('dose-not-known'), doseNotKnown: 'work-not-given' });
    expect(done({ kind: 'test' })).toEqual({ ...leftOut('dose-not-known'), doseNotKnown: 'test' });
    expect([true, null].map((didExtra) => done({ didExtra }))).toEqual([
      leftOut('more-done'),
      leftOut('more-done'),
    ]);
    expect(done({ sets: sets.map((set) => ({ ...set, repetitions: 0 })) })).toEqual(leftOut('nothing-done'));
    expect(done({ clockDoubtful: true })).toEqual(leftOut('time-in-doubt'));
  });

  it('is left out where another was judged by then: of two on a day the first', () => {
    const second = { ...session(lastSession), id: 'second', beganAt: instantOn(lastSession, 20) };
    const of = { ...record(), sessions: [...record().sessions, second] };
    expect(
      answersOf(of)
        .sessions.slice(-2)
        .map(({ answer }) => answer),
    ).toEqual([leftOut('another-session'), atUsual]);
  });

  it('is left out for a joint that the exercise does not load', () => {
    const at = noonOf(judgedMorning);
    const { doses, leftOut: counts } = answersByDose({
      record: record(),
      itemId: 'knee',
      joint: shoulder,
      at,
    });
    expect([doses, counts]).toEqual([[], [{ why: 'joint-not-loaded', sessions: 9 }]]);
  });
});

describe('the doses', () => {
  it('are counted each, lowest first, an easier session at its own: 20 of 45 repetitions', () => {
    const heavier = version({ id: 'knee-2', version: 2, dose: { ...kneeDose, loadKg: 12 } });
    const by = (day: string, place: number): SessionRecord => {
      const full = session(day, {}, {}, [place < 5 ? version() : heavier]);
      if (place === 4)
        return {
          ...full,
          kind: 'bad-day',
          sets: full.sets.slice(0, 2).map((set) => ({ ...set, repetitions: 10 })),
        };
      return place < 5 ? full : { ...full, sets: full.sets.map((set) => ({ ...set, loadKg: 12 })) };
    };
    const sore = new Set(trainingDays.slice(6).map((day) => addDays(day, 1)));
    const of = record({
      prescriptions: [version(), heavier],
      sessions: trainingDays.map(by),
      mornings: record().mornings.map((one) => morning(one.day, { pain: sore.has(one.day) ? 4 : 1 })),
    });
    const { doses, corridor } = answersOf(of);
    expect(doses.map(({ share, atUsual: usual, overUsual }) => [share, usual, overUsual])).toEqual([
      [expect.closeTo(20 / 45, 12), 1, 0],
      [1, 4, 0],
      [expect.closeTo(1.2, 12), 1, 3],
    ]);
    expect(doses.map(({ dose }) => dose)).toEqual([version().badDay, kneeDose, heavier.dose]);
    expect([corridor.highestAtUsual?.share, corridor.lowestOverUsual?.share, corridor.noneBecause]).toEqual([
      1,
      expect.closeTo(1.2, 12),
      null,
    ]);
  });

  it('hold what is known at the moment, to the instant, and nothing entered later', () => {
    const { instant } = noonOf(judgedMorning);
    const known = [instant, instant + 1].map(
      (recordedAt) => answersOf(withSession(record(), session(lastSession, { recordedAt }))).sessions.length,
    );
    expect(known).toEqual([9, 8]);
  });
});

describe('in drawn histories', () => {
  const days = 30;
  const drawn = Array.from({ length: 60 }, (_, seed) => randomHistory(seeded(seed + 1), days));
  const end = firstDay + days;
  const at = { instant: endOf(end), day: dayFromNumber(end) };
  const lines = drawn.flatMap((of) =>
    [...new Map(of.prescriptions.map((one) => [one.itemId, one])).values()].flatMap(({ itemId, joints }) =>
      joints.map((joint) => ({ of, itemId, joint, joints })),
    ),
  );

  it('every session is counted once: at usual, over it, or left out for one reason', () => {
    for (const { of, itemId, joint } of lines) {
      const { sessions, doses, leftOut: counts } = answersByDose({ record: of, itemId, joint, at });
      const counted = doses.reduce((sum, { atUsual: usual, overUsual }) => sum + usual + overUsual, 0);
      expect(counted + counts.reduce((sum, one) => sum + one.sessions, 0)).toBe(sessions.length);
    }
  });

  it('what the engine calls tolerated was never over usual', () => {
    let tolerated = 0;
    for (const { of, itemId, joint, joints } of lines) {
      const settings = { 'tolerated-sessions': 1 };
      const last = toleratedDoses(of, itemId, joints, at, settings).map(({ day }) => dayFromNumber(day));
      const { sessions } = answersByDose({ record: of, itemId, joint, at, settings });
      for (const day of last) {
        const [only, ...others] = sessions.filter((one) => one.day === day);
        if (!only || others.length > 0) continue;
        expect(only.answer.is).not.toBe('over-usual');
        tolerated += Number(only.answer.is === 'at-usual');
      }
    }
    expect(tolerated).toBeGreaterThan(20);
  });

  it('a worse next morning never turns a session to usual', () => {
    for (const { of, itemId, joint } of lines) {
      const worse = {
        ...of,
        mornings: of.mornings.map((one) => ({
          ...one,
          joints: one.joints.map((row) => ({
            ...row,
            pain: row.pain === null ? null : Math.min(10, row.pain + 3),
          })),
        })),
      };
      const before = answersByDose({ record: of, itemId, joint, at }).sessions;
      const now = answersByDose({ record: worse, itemId, joint, at }).sessions;
      for (const [place, one] of now.entries())
        if (one.answer.is === 'at-usual') expect(before[place]?.answer.is).toBe('at-usual');
    }
  });
});
