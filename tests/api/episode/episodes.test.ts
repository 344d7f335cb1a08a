import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import { addDays } from '#core/time/day.ts';
import { recordOf } from '#data/patients/record.ts';
import { saveProgramme } from '#data/prescribing/programmes.ts';
import { trainingSession } from '#data/schema/schema.ts';
import { morningEntry, sessionEntry } from '#tests/support/clinic.ts';
import { type CareSetting, careSetting, change, episode, firstDay, inCare } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const dayOf = (day: number) => addDays(firstDay, day);
const onBreak = (episodeId: string, day: number, more: object = {}) =>
  change(episodeId, 'on-break', dayOf(day), { breakKind: 'illness', ...more });
const kindsOn = async (day: number) => {
  const { lines } = await at.clinician(day).clinician.worklist.list();
  return lines
    .filter((item) => item.patientId === at.patientId)
    .flatMap((item) => [item.item.kind, ...item.others.map((other) => other.kind)])
    .sort();
};
const screenedOn = (day: number) =>
  at.clinician(day).clinician.screening.record({
    patientId: at.patientId,
    screening: {
      sheetVersion: screeningSheetVersion,
      answers: screeningItems.map(({ id }) => ({ item: id, answer: 'no' })),
    },
  });
const session = (day: number, over: object = {}) => {
  const access = at.accessOn(day, '18:00');
  return sessionEntry({
    entryId: `session-${day}`,
    beganAt: access.now - 1_800_000,
    endedAt: access.now - 600_000,
    sentAt: access.now,
    day: access.day,
    sets: [{ ...at.item, set: 1, repetitions: 20, loadKg: 4, reserve: 2, stopReason: 'none' }],
    ...over,
  });
};

describe('an episode of care', () => {
  it('names diagnoses, joints, goals in the patient’s words, referrer and contacts; a seventh daily joint is refused', async () => {
    const { patientId } = at;
    const { clinician: staff } = at.clinician();
    await inCare(at);
    const { episodes } = await staff.episodes.list({ patientId });
    expect(episodes).toHaveLength(1);
    expect(episodes[0]).toMatchObject(episode);
    const joints = ['knee', 'hip', 'hand', 'wrist'].flatMap((name) => [`right-${name}`, `left-${name}`]);
    const following = (count: number) =>
      staff.episodes.open({
        patientId,
        episode: { ...episode, joints, followedJoints: joints.slice(0, count) },
        reason: 'x',
      });
    await expect(following(7)).rejects.toThrow(/6/);
    await expect(following(6)).resolves.toBeDefined();
    await expect(
      staff.episodes.open({ patientId, episode: { ...episode, followedJoints: ['left-hip'] }, reason: 'x' }),
    ).rejects.toThrow(/left-hip is followed daily but is not among the joints affected/);
  });

  it('may stand beside another of the same patient', async () => {
    const { patientId } = at;
    await inCare(at);
    await at.clinician(1).clinician.episodes.open({
      patientId,
      episode: { ...episode, joints: ['left-shoulder'], followedJoints: ['left-shoulder'] },
      reason: 'Second referral.',
    });
    expect((await at.clinician(1).clinician.episodes.list({ patientId })).episodes).toHaveLength(2);
  });

  it('refuses a change that may not follow, with the reason, and keeps nothing', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    const { clinician: staff } = at.clinician(1);
    await expect(staff.episodes.change({ patientId, change: change(id, 'open', dayOf(1)) })).rejects.toThrow(
      /Care has already begun/,
    );
    expect((await staff.episodes.list({ patientId })).episodes[0]!.changes).toHaveLength(2);
    await expect(
      staff.episodes.change({ patientId, change: change('another', 'discharged', dayOf(1)) }),
    ).rejects.toThrow(/no such episode/);
  });
});

describe('a break', () => {
  it('plans nothing, asks for nothing, takes missing answers off the list, and counts no session as missed', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    await saveProgramme(at.accessOn(0), patientId, [
      { itemId: at.item.itemId, weekdays: [1, 2, 3, 4, 5, 6, 7] },
    ]);
    expect(await kindsOn(6)).toContain('missing-answers');
    await at.clinician(6).clinician.episodes.change({ patientId, change: onBreak(id, 6) });
    expect(await kindsOn(12)).not.toContain('missing-answers');
    const today = await at.patient(8).patient.today.get();
    expect(today.exercises.map((one) => [one.today, one.planned])).toEqual([['rest-this-joint', false]]);
    expect(today.morning.due).toBe(false);
    expect(today.changes.map(({ en }) => en).join(' ')).toMatch(/on a break we agreed on/);
    const record = await recordOf(at.accessOn(12), patientId);
    expect(record!.planned.map(({ day }) => day)).toEqual([0, 1, 2, 3, 4, 5].map(dayOf));
  });

  it('keeps danger on the list', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    await at
      .patient(1, '18:00')
      .patient.entries.send({ kind: 'session', entry: session(1, { redFlags: ['chest-pain'] }) });
    await at.clinician(2).clinician.episodes.change({ patientId, change: onBreak(id, 2) });
    expect(await kindsOn(3)).toContain('red-flag');
  });

  it('is over on the day the patient is expected back, and says so', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    await at
      .clinician(1)
      .clinician.episodes.change({ patientId, change: onBreak(id, 1, { expectedBack: dayOf(8) }) });
    expect(await kindsOn(7)).not.toContain('break-over');
    expect(await kindsOn(8)).toContain('break-over');
  });

  it('ends with a return that asks the screening again before anything is signed or done', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    await at.clinician(1).clinician.episodes.change({ patientId, change: onBreak(id, 1) });
    await at.clinician(9).clinician.episodes.change({ patientId, change: change(id, 'active', dayOf(9)) });
    const outcomes = await at.clinician(9).clinician.screening.outcomes({ patientId });
    expect(outcomes.every(({ eligibility }) => eligibility === 'closed')).toBe(true);
    const request = {
      method: 'low-load',
      exerciseId: 'knee-extension-seated',
      side: 'right',
      knownOneRepMaxKg: 10,
    };
    await expect(at.clinician(9).clinician.prescriptions.propose({ patientId, request })).rejects.toThrow(
      /Came back on .*repeat the screening first/,
    );
    expect((await at.patient(9).patient.today.get()).exercises[0]!.today).toBe('rest-this-joint');
    expect(await kindsOn(10)).not.toContain('missing-answers');
    await screenedOn(10);
    expect((await at.patient(10).patient.today.get()).exercises[0]!.today).toBe('as-planned');
    await expect(
      at.clinician(10).clinician.prescriptions.propose({ patientId, request }),
    ).resolves.toBeDefined();
    expect(await kindsOn(12)).toContain('missing-answers');
  });
});

describe('the end of care', () => {
  it('ends what is prescribed, closes open items and names them with the reason', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    expect(await kindsOn(6)).toContain('missing-answers');
    const done = await at
      .clinician(6)
      .clinician.episodes.change({ patientId, change: change(id, 'discharged', dayOf(6)) });
    expect(done.closedItems).toBeGreaterThan(0);
    expect(await kindsOn(40)).toEqual([]);
    const { inForce, versions } = await at.clinician(6).clinician.prescriptions.list({ patientId });
    expect(inForce).toEqual([]);
    expect(versions.every((row) => row.endReason?.includes('Said at the visit.'))).toBe(true);
  });

  it('leaves the patient everything to read', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    await at.patient(1, '18:00').patient.entries.send({ kind: 'session', entry: session(1) });
    await at
      .clinician(2)
      .clinician.episodes.change({ patientId, change: change(id, 'discharged', dayOf(2)) });
    expect((await at.patient(5).patient.history.get()).days).toHaveLength(1);
    expect((await at.patient(5).patient.today.get()).exercises).toEqual([]);
  });

  it('waits until an open danger was acknowledged; a death does not wait', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    await at
      .patient(1, '18:00')
      .patient.entries.send({ kind: 'session', entry: session(1, { redFlags: ['chest-pain'] }) });
    const end = (to: string) =>
      at.clinician(2).clinician.episodes.change({ patientId, change: change(id, to, dayOf(2)) });
    await expect(end('discharged')).rejects.toThrow(/urgent item has not been acknowledged/);
    await expect(end('died')).resolves.toBeDefined();
  });

  it('a session under way offline when care ends is stored and shown when it arrives, and its danger is listed', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    await at
      .clinician(2)
      .clinician.episodes.change({ patientId, change: change(id, 'discharged', dayOf(2)) });
    const sentLate = session(1, { redFlags: ['chest-pain'] });
    const stored = await at.patient(4).patient.entries.send({ kind: 'session', entry: sentLate });
    expect(stored.stored).toBe('stored');
    expect(await at.store.read.select().from(trainingSession)).toHaveLength(1);
    const review = await at.clinician(4).clinician.review.get({ patientId });
    expect(review.record.sessions).toHaveLength(1);
    const { days } = await at.patient(4).patient.history.get();
    expect(days.flatMap((one) => one.sessions)).toHaveLength(1);
    expect(await kindsOn(4)).toContain('red-flag');
    const again = await at.patient(5).patient.entries.send({ kind: 'session', entry: sentLate });
    expect(again.stored).toBe('known');
  });

  it('a morning sent after the end is kept as well', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    await at
      .clinician(2)
      .clinician.episodes.change({ patientId, change: change(id, 'transferred', dayOf(2)) });
    const access = at.accessOn(3);
    const entry = morningEntry({
      entryId: 'late',
      day: access.day,
      sentAt: access.now,
      answeredAt: access.now - 60_000,
    });
    await at.patient(3).patient.entries.send({ kind: 'morning', entry });
    expect((await at.clinician(3).clinician.review.get({ patientId })).record.mornings).toHaveLength(1);
  });

  it('a new episode opens nothing that had ended, and asks the screening again', async () => {
    const { patientId } = at;
    const id = await inCare(at);
    await at
      .clinician(2)
      .clinician.episodes.change({ patientId, change: change(id, 'discharged', dayOf(2)) });
    await at.clinician(5).clinician.episodes.open({ patientId, episode, reason: 'Pain is back.' });
    expect((await at.patient(5).patient.today.get()).exercises).toEqual([]);
    const outcomes = await at.clinician(5).clinician.screening.outcomes({ patientId });
    expect(outcomes.every(({ eligibility }) => eligibility === 'closed')).toBe(true);
  });
});
