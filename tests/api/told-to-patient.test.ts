/** What the phone is given to ask and to tell: swelling by joint, the acceptable pain limit, what was left out. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { dayAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import { morningEntry, sessionEntry, start, twoClinics, zone } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs, profile, workingPatient } from '#tests/support/working-patient.ts';

let store: Store;
let patientId: string;
let work: ReturnType<typeof workingPatient>;
beforeEach(async () => {
  store = freshStore();
  ({ patientId } = await twoClinics(store));
  work = workingPatient(store, patientId);
  await work.signed();
});
afterEach(() => store.close());

const todayOf = () => work.patientAt(start + dayMs).patient.today.get();

describe('after a warning sign', () => {
  it('today’s page gives the sign as the reason to leave an exercise out, and no older reason of the engine', async () => {
    const next = await heldByOpenQuestions();
    const news = async () => {
      const { changes, unchanged = [] } = await work.patientAt(next).patient.today.get();
      return [...changes, ...unchanged].map(({ en }) => en).join(' ');
    };
    expect(await news()).toContain('You left out');
    const sign = { flags: ['calf-pain-swelling'], joint: null, remark: null };
    await work.clinicianAt(next).clinician.danger.report({ patientId, sign });
    expect(await news()).toContain('leave it out for now. A warning sign was reported');
    expect(await news()).not.toContain('You left out');
  });
});

describe('today’s page', () => {
  it('carries the acceptable pain limit of each followed joint, so that it is there without signal', async () => {
    const limits = async () =>
      (await todayOf()).painLookups.map(({ joint, acceptablePainLimit }) => [joint, acceptablePainLimit]);
    expect(await limits()).toEqual([['right-knee', 5]]);
    const { clinician: staff } = work.clinicianAt(start + dayMs);
    const baseline = {
      joint: 'right-knee',
      usualPain: 4,
      usualPainTop: 4,
      acceptablePainLimit: 7,
      usualStiffnessMinutes: 10,
      usualSwelling: 'none',
      usualEffusion: 'zero',
      reason: 'Talked through.',
    };
    await staff.review.setBaseline({ patientId, baseline, seen: 1 });
    expect(await limits()).toEqual([['right-knee', 7]]);
    const followedJoints = ['right-knee', 'left-hip'];
    await staff.people.saveProfile({ patientId, profile: { ...profile, followedJoints } });
    expect(await limits()).toEqual([
      ['right-knee', 7],
      ['left-hip', 5],
    ]);
  });

  it('names the joints that are not asked about swelling, as the clinician chose', async () => {
    expect((await todayOf()).swellingNotAsked).toEqual([]);
    const chosen = { ...profile, followedJoints: ['right-knee', 'left-hip'], swellingNotAsked: ['left-hip'] };
    await work.clinicianAt(start).clinician.people.saveProfile({ patientId, profile: chosen });
    expect((await todayOf()).swellingNotAsked).toEqual(['left-hip']);
  });
});

/** A session and a morning of which questions after the work were left out; the instant of the morning. */
const heldByOpenQuestions = async (): Promise<number> => {
  const at = start + dayMs;
  const [exercise] = (await work.patientAt(at).patient.today.get()).exercises;
  const set = {
    prescriptionId: exercise!.prescriptionId,
    itemId: exercise!.itemId,
    repetitions: 20,
    loadKg: 3,
    reserve: null,
    stopReason: 'none' as const,
  };
  const session = sessionEntry({
    entryId: 's',
    beganAt: at - 1_800_000,
    sentAt: at,
    day: dayAt(at, zone),
    didExtra: null,
    sets: [1, 2, 3].map((number) => ({ ...set, set: number })),
    joints: [
      {
        joint: 'right-knee',
        painBefore: 1,
        painDuring: 2,
        painAfter: 2,
        twoHoursState: 'not-applicable',
        muscleBurn: null,
        cuffDiscomfort: null,
        gaveWay: null,
      },
    ],
  });
  await work.patientAt(at).patient.entries.send({ kind: 'session', entry: session });
  const next = at + dayMs;
  const morning = morningEntry({
    entryId: 'm',
    answeredAt: next,
    sentAt: next,
    day: dayAt(next, zone),
    joints: [
      {
        joint: 'right-knee',
        pain: 1,
        stiffnessMinutes: 10,
        stiffnessState: 'asked',
        swelling: 'none',
        swellingState: 'asked',
        swellingQuestion: 'more-than-usual',
        flare: false,
      },
    ],
  });
  await work.patientAt(next).patient.entries.send({ kind: 'morning', entry: morning });
  return next;
};

describe('the history of a patient', () => {
  it('tells a dose held by open questions as questions left out, in both languages', async () => {
    const next = await heldByOpenQuestions();
    const { days } = await work.patientAt(next).patient.history.get();
    const because = days[0]!.decisions.flatMap((decision) => decision.because);
    expect(because.map(({ en }) => en).sort()).toEqual([
      'You left out how many more you could have done, so your dose stays the same.',
      'You left out whether the joint gave way, so your dose stays the same.',
      'You left out whether you did more than planned, so your dose stays the same.',
    ]);
    for (const { de } of because) expect(de).toMatch(/^Sie haben offengelassen, /);
  });

  it.each([
    [{ stiffnessMinutes: 10, swelling: 'slight' }, {}, {}],
    [{ stiffnessMinutes: null, swelling: null }, {}, {}],
    [
      { stiffnessMinutes: null, swelling: null },
      { stiffnessState: 'not-applicable', swellingState: 'not-applicable' },
      { stiffnessMinutes: 'not-applicable', swelling: 'not-applicable' },
    ],
  ] as const)('gives stiffness and swelling back as told: %j %j', async (given, state, more) => {
    const at = start + dayMs;
    const entry = morningEntry({
      entryId: 'm',
      answeredAt: at,
      sentAt: at,
      day: dayAt(at, zone),
      joints: [
        {
          joint: 'right-knee',
          pain: 1,
          stiffnessState: 'asked',
          swellingState: 'asked',
          swellingQuestion: 'more-than-usual',
          flare: false,
          ...given,
          ...state,
        },
      ],
    });
    await work.patientAt(at).patient.entries.send({ kind: 'morning', entry });
    const { days } = await work.patientAt(at).patient.history.get();
    const [answers] = days[0]!.mornings.flatMap(({ joints }) => joints);
    expect(answers).toMatchObject({ ...given, swellingQuestion: 'more-than-usual', ...more });
  });
});
