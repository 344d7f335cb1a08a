/** The first two sentences of a record: how the dose in force was answered, and the last step. */
import { describe, expect, it } from 'vitest';
import type { PatientRecord } from '#core/record/record.ts';
import { atUsualFact } from '#core/review/summary/at-usual.ts';
import { inFocus } from '#core/review/summary/in-focus.ts';
import { lastStepFact } from '#core/review/summary/last-step.ts';
import { summaryInWords } from '#core/review/summary/words.ts';
import { addDays, type Day, dayFromNumber } from '#core/time/day.ts';
import {
  firstMonday,
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

const dayOf = (instant: number): Day => dayFromNumber(Math.floor(instant / 86_400_000));

/** 3 × 15–20 with 8 kg to begin with, and with 10 kg from the third session on. */
const lighter = version({ id: 'knee-0', version: 0, dose: { ...kneeDose, loadKg: 8 } });
const stepOn = trainingDays[2]!;
const stepped = (more: Partial<PatientRecord> = {}): PatientRecord =>
  record({
    prescriptions: [lighter, version({ signedAt: instantOn(stepOn, 9), origin: 'progress' })],
    ...more,
  });

const sentences = (
  of: PatientRecord,
  { today = judgedMorning, since = addDays(judgedMorning, -120) } = {},
) => {
  const focus = inFocus(of);
  const facts = {
    atUsual: atUsualFact({ record: of, focus, at: noonOf(today) }),
    lastStep: lastStepFact({ record: of, focus, since, today, dayOf }),
    open: { is: 'not-screened' } as const,
  };
  return { facts, ...summaryInWords(facts, today) };
};

const sore = (...days: readonly Day[]) =>
  record().mornings.map((one) => (days.includes(one.day) ? morning(one.day, { pain: 3 }) : one));

describe('how the dose in force was answered', () => {
  it('counts the last six sessions at it', () => {
    expect(sentences(record({ prescriptions: [version()] })).atUsual).toBe(
      '3 × 15–20, 10 kg (seated-leg-straightening, left): after 6 of the last 6 sessions counted (9 Feb to 20 Feb) the left knee was at its usual the next morning.',
    );
    const oldest = sentences(
      record({ prescriptions: [version()], mornings: sore(addDays(trainingDays[2]!, 1)) }),
    );
    expect(oldest.facts.atUsual).toMatchObject({ atUsual: 6, of: 6 });
    const newer = sentences(
      record({ prescriptions: [version()], mornings: sore(addDays(trainingDays[3]!, 1)) }),
    );
    expect(newer.facts.atUsual).toMatchObject({ atUsual: 5, of: 6 });
  });

  it('leaves out, and says so, what counts neither way since the first of those', () => {
    const silent = record().mornings.filter(({ day }) => day !== judgedMorning);
    const { atUsual } = sentences(record({ prescriptions: [version()], mornings: silent }), {
      today: addDays(judgedMorning, 1),
    });
    expect(atUsual).toMatch(/ 6 of the last 6 .* Not counted: 1 without a full answer the next morning\.$/);
  });

  it('counts no session at another dose, and an easier one at none', () => {
    const only = stepped({
      sessions: trainingDays.map((day, place) => session(day, {}, {}, [place < 2 ? lighter : version()])),
    });
    expect(sentences(only).facts.atUsual).toMatchObject({ of: 6 });
    const easier = withSession(
      record({ prescriptions: [version()] }),
      session(lastSession, { kind: 'bad-day' }),
    );
    expect(sentences({ ...easier, sessions: easier.sessions.slice(-2) }).facts.atUsual).toMatchObject({
      atUsual: 1,
      of: 1,
      leftOut: [],
    });
  });

  it('of one session says what that one was', () => {
    const one = (pain: number) =>
      sentences(
        withMorning(
          record({ prescriptions: [version()], sessions: [session(lastSession)] }),
          morning(judgedMorning, { pain }),
        ),
      ).atUsual;
    expect(one(1)).toContain(
      'after the one session counted (20 Feb) the left knee was at its usual the next morning.',
    );
    expect(one(2)).toContain(
      'after the one session counted (20 Feb) the left knee was over its usual the next morning.',
    );
  });

  it('says why none can be counted, and what there is none of', () => {
    const atUsual = (more: Partial<PatientRecord>) =>
      sentences(record({ prescriptions: [version()], ...more })).atUsual;
    expect(atUsual({ baselines: [] })).toMatch(
      /no session at this dose can be counted\. Not counted: 9 with no usual pain set\.$/,
    );
    expect(atUsual({ sessions: [] })).toMatch(
      /no session at this dose is on record in the time that was read\.$/,
    );
    expect(atUsual({ prescriptions: [] })).toBe('No dose is in force, so no session can be counted.');
  });
});

describe('where no session is counted at the dose in force', () => {
  const fresh = version({ id: 'knee-2', version: 2, dose: { ...kneeDose, loadKg: 12 } });

  it('the last dose before it at which some are is told, and named as that', () => {
    const middle = version({ id: 'knee-x', version: 1.5, dose: { ...kneeDose, loadKg: 11 } });
    const of = record({ prescriptions: [version(), middle, fresh], mornings: sore(judgedMorning) });
    expect(sentences(of).atUsual).toBe(
      '3 × 15–20, 12 kg (seated-leg-straightening, left): no session at this dose is on record in the time that was read. Before it, 3 × 15–20, 10 kg (seated-leg-straightening, left): after 5 of the last 6 sessions counted (9 Feb to 20 Feb) the left knee was at its usual the next morning.',
    );
  });

  it('a session of a dose not known is left out of the version it was done at alone', () => {
    const open = session(trainingDays[0]!);
    const unknown = { ...open, sets: open.sets.map((set) => ({ ...set, repetitions: null })) };
    const { facts } = sentences(withSession(record({ prescriptions: [version(), fresh] }), unknown));
    expect(facts.atUsual).toMatchObject({ of: 0, leftOut: [], before: { of: 6, leftOut: [] } });
  });
});

describe('the last step', () => {
  it('says from what to what, on which day, and how the mornings since then were answered', () => {
    expect(sentences(stepped()).lastStep).toBe(
      `From 3 × 15–20, 8 kg to 3 × 15–20, 10 kg (seated-leg-straightening, left) on 6 Feb. Since then 15 mornings were answered, none over usual pain; the highest was 1.`,
    );
  });

  it('counts those over usual, with the newest, and those of the step’s own day not', () => {
    const mornings = sore(stepOn, addDays(stepOn, 1), judgedMorning);
    expect(sentences(stepped({ mornings })).lastStep).toContain(
      'Since then 15 mornings were answered: 13 at or under usual pain, 2 over it, the last at 3 on 21 Feb.',
    );
  });

  it('counts a missing morning as missing, never as quiet', () => {
    const open = sentences(
      stepped({ mornings: record().mornings.filter(({ day }) => day !== judgedMorning) }),
      { today: addDays(judgedMorning, 1) },
    ).lastStep;
    expect(open).toContain(
      'Since then 14 mornings were answered, none over usual pain; the highest was 1. 1 morning after a session is missing.',
    );
    const none = sentences(stepped({ mornings: [] })).lastStep;
    expect(none).toContain(
      'Since then no morning has been answered. 6 mornings after a session are missing.',
    );
  });

  it('calls none at usual where usual pain was not set', () => {
    const { lastStep, facts } = sentences(stepped({ baselines: [] }));
    expect(lastStep).toContain(
      '15 mornings were answered, pain up to 1; usual pain was not set on every one of them.',
    );
    expect(facts.lastStep).toMatchObject({ mornings: { atUsual: null } });
  });

  it('says from when on mornings were read where the step lies before', () => {
    const since = addDays(stepOn, 5);
    expect(sentences(stepped(), { since }).lastStep).toContain('From 11 Feb on 11 mornings were answered');
  });

  it('tells a flare apart', () => {
    const mornings = record().mornings.map((one) =>
      one.day === judgedMorning ? morning(one.day, { flare: true }) : one,
    );
    expect(sentences(stepped({ mornings })).lastStep).toMatch(/ A flare was reported on 1 morning\.$/);
  });

  it('is none while the first signed dose is in force, and where no dose is', () => {
    expect(sentences(record({ prescriptions: [version()] })).lastStep).toBe(
      'No step yet: 3 × 15–20, 10 kg (seated-leg-straightening, left) is the first signed dose, of 1 Feb.',
    );
    expect(
      sentences(record({ prescriptions: [version({ endedAt: instantOn(judgedMorning, 9) })] })).lastStep,
    ).toBe('No dose is in force, so there is no step to tell.');
  });

  it('that changes nothing was written anew', () => {
    const anew = record({
      prescriptions: [version(), version({ id: 'knee-2', version: 2, signedAt: instantOn(stepOn, 9) })],
    });
    expect(sentences(anew).lastStep).toMatch(
      /^Written anew on 6 Feb: 3 × 15–20, 10 kg \(seated-leg-straightening, left\)\./,
    );
  });
});

describe('a summary speaks of', () => {
  const arm = version({ id: 'arm-1', itemId: 'arm', joints: [shoulder] });
  const signed = (one: typeof arm, day: Day) => ({ ...one, signedAt: instantOn(day, 9) });

  it('the exercise in force whose dose changed last, and the followed joint that it loads', () => {
    const focus = (prescriptions: PatientRecord['prescriptions'], followedJoints = [knee]) =>
      inFocus(record({ prescriptions, followedJoints }));
    const [old, later] = [firstMonday, stepOn];
    expect(focus([signed(version(), old), signed(arm, later)], [knee, shoulder])?.joint).toBe(shoulder);
    expect(focus([signed(version(), later), signed(arm, old)], [knee, shoulder])?.joint).toBe(knee);
    expect(focus([signed(version(), old), signed(arm, later)])?.joint).toBe(knee);
    expect(focus([signed(arm, later)])?.joint).toBe(shoulder);
    expect(focus([{ ...arm, endedAt: 1 }])).toBeNull();
  });
});
