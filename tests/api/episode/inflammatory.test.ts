/** Six joints, tiredness and the question about another joint, from the first visit to the engine and the worklist. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { MorningEntry } from '#core/record/entries.ts';
import { addDays } from '#core/time/day.ts';
import { takeMorning } from '#data/entries/take-entry.ts';
import { patientOf } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { morningEntry } from '#tests/support/clinic.ts';
import { type CareSetting, careSetting, firstDay, worklistItemsOf } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const six: readonly Joint[] = [
  'right-knee',
  'left-knee',
  'right-hand',
  'left-hand',
  'right-wrist',
  'left-wrist',
];
const staff = (day = 0) => at.clinician(day).clinician;
const reason = (over: object = {}) => ({
  diagnosis: 'Rheumatoid arthritis',
  inflammatoryArthritis: true,
  followedJoints: six,
  swellingNotAsked: [],
  ...over,
});
const saveReason = (over: object = {}, day = 0) =>
  staff(day).visits.saveFirstVisit({ patientId: at.patientId, visit: { reason: reason(over) } });
const profile = async () => (await patientOf(at.accessOn(0), at.patientId))?.profile;

const morning = (day: number, over: Partial<MorningEntry> = {}) => {
  const access = at.accessOn(day, '07:30');
  return takeMorning(
    access,
    at.patientId,
    morningEntry({
      entryId: `m-${day}`,
      day: addDays(firstDay, day),
      answeredAt: access.now,
      sentAt: access.now,
      joints: six.map((joint) => ({
        joint,
        pain: 2,
        stiffnessMinutes: 10,
        stiffnessState: 'asked',
        swelling: 'none',
        swellingState: 'asked',
        swellingQuestion: 'more-than-usual',
        flare: false,
      })),
      ...over,
    }),
  );
};

describe('six followed joints', () => {
  it('are kept from the first visit, come with the day, and are stored from one morning', async () => {
    await saveReason();
    const { followedJoints } = await at.patient(0).patient.today.get();
    expect(followedJoints).toEqual(six);
    expect((await morning(1)).kind).toBe('stored');
    const { record } = await staff(1).review.get({ patientId: at.patientId });
    expect(record.mornings[0]!.joints).toHaveLength(6);
  });

  it('a seventh is refused', async () => {
    const saved = await saveReason({ followedJoints: [...six, 'right-hip'] });
    expect(saved.parts.flatMap(({ refused }) => refused.map(({ field }) => field))).toContain(
      'input.reason.followedJoints',
    );
    expect((await profile())?.followedJoints).toEqual(['right-knee']);
  });
});

describe('tiredness', () => {
  it('is asked where a clinician has switched it on, and left as it was by one who says nothing of it', async () => {
    const asks = async () => (await at.patient(0).patient.today.get()).asksFatigue;
    await saveReason();
    expect(await asks()).toBe(false);
    await saveReason({ asksFatigue: true });
    expect(await asks()).toBe(true);
    await saveReason({ diagnosis: 'Psoriatic arthritis' });
    expect(await asks()).toBe(true);
    await saveReason({ asksFatigue: false });
    expect(await asks()).toBe(false);
  });

  it.each([
    [4, false],
    [5, true],
    [6, true],
  ])('of %i beside a usual one of 3 holds the load: %s', async (fatigue, holds) => {
    const { patientId } = at;
    await saveReason({ asksFatigue: true });
    for (let day = 1; day <= 14; day++) await morning(day, { fatigue: 3, fatigueState: 'asked' });
    await staff(14).review.setBaseline({
      patientId,
      baseline: {
        joint: 'right-knee',
        usualPain: 2,
        usualPainTop: 2,
        acceptablePainLimit: 5,
        usualStiffnessMinutes: 10,
        usualSwelling: 'none',
        usualEffusion: 'zero',
        reason: 'Fourteen mornings.',
      },
    });
    await morning(15, { fatigue, fatigueState: 'asked' });
    const access = at.accessOn(15);
    const facts = factsFor((await recordOf(access, patientId))!, 'right-knee', {
      instant: access.now,
      day: access.day,
    });
    expect(facts.fatigueRise).toBe(fatigue - 3);
    expect(decide(facts).reasons.some(({ rule }) => rule === 'W1')).toBe(holds);
  });
});

describe('another joint', () => {
  it('is asked about with inflammatory arthritis alone', async () => {
    await saveReason();
    expect((await at.patient(0).patient.today.get()).asksOtherJoint).toBe(true);
    await saveReason({ inflammatoryArthritis: false });
    expect((await at.patient(0).patient.today.get()).asksOtherJoint).toBe(false);
  });

  it.each([
    ['worse', 1],
    ['not-worse', 0],
    ['not-answered', 0],
    [undefined, 0],
  ] as const)('said to be %s opens %i item for a clinician to look at', async (otherJoint, items) => {
    await saveReason();
    await morning(1, otherJoint === undefined ? {} : { otherJoint });
    const told = (await worklistItemsOf(at, 1)).filter(({ kind }) => kind === 'reported-new');
    expect(told).toHaveLength(items);
    const [own] = (await at.patient(1).patient.history.get({})).days.flatMap(({ mornings }) => mornings);
    expect(own?.otherJoint).toBe(otherJoint);
  });
});
