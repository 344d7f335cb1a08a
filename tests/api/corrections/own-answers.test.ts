/** The patient can change a sent answer the same day; taking one back ends no warning sign and loosens nothing. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openSigns } from '#core/plan/plan.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { sessionsOf } from '#data/entries/logs.ts';
import { patientOf } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { type CareSetting, careSetting, firstDay, worklistItemsOf } from '#tests/api/episode/setting.ts';
import { morningEntry, sessionEntry } from '#tests/support/clinic.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const entry = (entryId: string, day: number, time: string, over: object = {}) => {
  const { now, day: today } = at.accessOn(day, time);
  return sessionEntry({
    entryId,
    day: today,
    sentAt: now,
    beganAt: now - 1_800_000,
    endedAt: now - 600_000,
    sets: [{ ...at.item, set: 1, repetitions: 20, loadKg: 4, reserve: 2, stopReason: 'none' }],
    joints: [joint(2)],
    ...over,
  });
};
const joint = (painAfter: number) => ({
  joint: 'right-knee' as const,
  painBefore: 2,
  painDuring: 2,
  painAfter,
  twoHoursState: 'asked' as const,
  muscleBurn: null,
  cuffDiscomfort: null,
  gaveWay: false,
});
const send = (
  day: number,
  time: string,
  sent: object,
  kind: 'session' | 'morning' | 'two-hours' = 'session',
) => at.patient(day, time).patient.entries.send({ kind, entry: sent });
const planAt = async (day: number, time: string) => {
  const access = at.accessOn(day, time);
  return planOf(access, (await patientOf(access, at.patientId))!);
};
const knee = async (day: number, time: string) => (await planAt(day, time)).joints.get('right-knee');

describe('an answer of today', () => {
  it.each([
    ['23:58', 0, true],
    ['23:59', 0, true],
    ['00:00', 1, false],
    ['00:01', 1, false],
  ])('sent at 20:00 can be changed until midnight of the clinic: at %s', async (time, day, isTaken) => {
    await send(0, '20:00', entry('a', 0, '20:00'));
    const change = send(day, time, entry('b', 0, '20:00', { amends: 'a', joints: [joint(6)] }));
    if (isTaken) await expect(change).resolves.toMatchObject({ stored: 'stored' });
    else await expect(change).rejects.toThrow(/until midnight of the day you sent it. Ring the clinic/);
    const stands = await sessionsOf(at.accessOn(1), at.patientId, firstDay);
    expect(stands.map(({ joints }) => joints[0]!.painAfter)).toEqual([isTaken ? 6 : 2]);
  });

  it('changed already, of nobody or of another kind is not changed, and says so', async () => {
    await send(0, '18:00', entry('a', 0, '18:00'));
    await send(0, '18:05', entry('b', 0, '18:00', { amends: 'a' }));
    await expect(send(0, '18:06', entry('c', 0, '18:00', { amends: 'a' }))).rejects.toThrow(
      /changed already/,
    );
    await expect(send(0, '18:06', entry('c', 0, '18:00', { amends: 'z' }))).rejects.toThrow(/not found/);
    const morning = morningEntry({ entryId: 'm', amends: 'a', sentAt: at.accessOn(0, '18:06').now });
    await expect(send(0, '18:06', morning, 'morning')).rejects.toThrow(/not found/);
  });

  it('changed too late is not taken, and the warning sign it told is written down once', async () => {
    await send(0, '20:00', entry('a', 0, '20:00'));
    const change = entry('b', 0, '20:00', { amends: 'a', redFlags: ['calf-pain-swelling'] });
    for (const time of ['07:00', '07:01'])
      await expect(send(1, time, change)).rejects.toThrow(/until midnight/);
    expect(openSigns(await planAt(1, '07:02'))).toHaveLength(1);
  });

  it('whose change is sent again after midnight gets the same answer as before', async () => {
    await send(0, '20:00', entry('a', 0, '20:00'));
    const change = entry('b', 0, '20:00', { amends: 'a' });
    await send(0, '23:59', change);
    await expect(send(1, '00:05', change)).resolves.toMatchObject({ stored: 'known' });
  });

  it.each([
    ['before', '20:10'],
    ['after', '18:30'],
  ])('keeps what was told two hours later, %s it was changed', async (_, changedAt) => {
    await send(0, '18:00', entry('a', 0, '18:00'));
    const change = () => send(0, changedAt, entry('b', 0, '18:00', { amends: 'a', joints: [joint(3)] }));
    if (changedAt < '20:00') await change();
    const { now, day } = at.accessOn(0, '20:00');
    const later = {
      format: 3,
      entryId: 't',
      day,
      zone: 'Europe/Lisbon',
      sentAt: now,
      redFlags: [],
      extraPainRelief: false,
      sessionEntryId: 'a',
      joint: 'right-knee',
      pain: 7,
    };
    await send(0, '20:00', later, 'two-hours');
    if (changedAt > '20:00') await change();
    const [stands] = await sessionsOf(at.accessOn(1), at.patientId, firstDay);
    expect(stands!.joints[0]).toMatchObject({ painAfter: 3, painTwoHours: 7 });
  });
});

describe('a warning sign taken back the same day', () => {
  beforeEach(async () => {
    await send(0, '18:00', entry('a', 0, '18:00', { redFlags: ['chest-pain'], stoppedByFlag: true }));
    await send(0, '18:10', entry('b', 0, '18:00', { amends: 'a', redFlags: [] }));
  });

  it('stays open: nothing is offered, on this day and later', async () => {
    const stopped = { decision: 'pause', today: 'none', contact: 'emergency' };
    expect((await planAt(0, '18:20')).items).toMatchObject([stopped]);
    const today = await at.patient(0, '18:20').patient.today.get();
    expect(today.exercises.map((one) => one.today)).toEqual(['none']);
    await send(3, '18:00', entry('c', 3, '18:00'));
    const later = await planAt(3, '18:20');
    expect(later.items).toMatchObject([stopped]);
    expect(openSigns(later)).toHaveLength(1);
  });

  it('stays on the worklist, and both decisions stay on record', async () => {
    expect((await worklistItemsOf(at, 0, '18:20')).map(({ kind }) => kind)).toContain('red-flag');
    const made = await decisionsOf(at.accessOn(0, '18:20'), at.patientId, firstDay);
    const signs = made.map((row) => [row.cause, row.reasons.some(({ rule }) => rule === 'R1')]);
    expect(signs).toContainEqual(['session', true]);
    expect(signs).toContainEqual(['amendment', false]);
  });
});

describe('an answer made milder the same day', () => {
  it('leaves the earlier decision standing until a clinician has answered the new one', async () => {
    await send(0, '18:00', entry('a', 0, '18:00', { joints: [joint(8)] }));
    expect(await knee(0, '18:05')).toMatchObject({ decision: 'ease-back' });
    await send(0, '18:10', entry('b', 0, '18:00', { amends: 'a', joints: [joint(2)] }));
    expect(await knee(0, '18:20')).toMatchObject({ decision: 'ease-back' });
    const newest = (await decisionsOf(at.accessOn(0, '18:20'), at.patientId, firstDay)).at(-1)!;
    expect(newest).toMatchObject({ cause: 'amendment', decision: 'hold' });
    const response = { decisionId: newest.id, kind: 'accept', decision: null, reason: '', until: null };
    await at.clinician(0, '18:30').clinician.review.respond({ patientId: at.patientId, response });
    expect(await knee(0, '18:40')).toMatchObject({ decision: 'hold' });
  });
});

describe('an entry whose time a clinician has confirmed', () => {
  it('speaks at once: the clinician has looked, and nothing before it stands beside it', async () => {
    const { now } = at.accessOn(0, '18:00');
    await send(0, '18:00', entry('a', 0, '18:00', { joints: [joint(8)] }));
    await send(1, '18:00', entry('b', 1, '18:00', { sentAt: now, joints: [joint(2)] }));
    const [doubtful] = (await sessionsOf(at.accessOn(1), at.patientId, firstDay)).filter(
      ({ clockDoubtful }) => clockDoubtful,
    );
    const { review } = at.clinician(1, '18:30').clinician;
    await review.confirmEntry({ patientId: at.patientId, kind: 'session', id: doubtful!.id });
    const newest = (await decisionsOf(at.accessOn(1, '18:40'), at.patientId, firstDay)).at(-1)!;
    expect(newest).toMatchObject({ cause: 'clinician', decision: 'hold' });
    expect(await knee(1, '18:40')).toMatchObject({ decisionId: newest.id, decision: 'hold' });
  });
});
