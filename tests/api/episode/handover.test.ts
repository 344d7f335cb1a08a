/** The page for the colleague, who looks after a pause, and who takes over unacknowledged danger. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addDays } from '#core/time/day.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { sessionEntry } from '#tests/support/clinic.ts';
import {
  type CareSetting,
  careSetting,
  colleague,
  firstDay,
  limitOn as limit,
  kneeRequest as request,
  worklistItemsOf,
} from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const dayOf = (day: number) => addDays(firstDay, day);
const kindsOn = async (day: number, time?: string) =>
  (await worklistItemsOf(at, day, time)).map(({ kind }) => kind);

describe('handing over', () => {
  /** A warning sign; with pain of 10 also a joint that the engine pauses for itself. */
  const dangerOn = async (day: number, painDuring = 3) => {
    const access = at.accessOn(day, '10:00');
    const entry = sessionEntry({
      entryId: 'danger',
      beganAt: access.now - 600_000,
      endedAt: access.now - 60_000,
      sentAt: access.now,
      day: access.day,
      redFlags: ['chest-pain'],
      joints: [
        {
          joint: 'right-knee',
          painBefore: 2,
          painDuring,
          painAfter: 3,
          twoHoursState: 'not-applicable',
          muscleBurn: null,
          cuffDiscomfort: null,
          gaveWay: false,
        },
      ],
      sets: [{ ...at.item, set: 1, repetitions: 20, loadKg: 4, reserve: 2, stopReason: 'none' }],
    });
    await at.patient(day, '10:00').patient.entries.send({ kind: 'session', entry });
  };

  it('shows limits, what is closed and why, last decisions, what is unsigned and who owns a pause', async () => {
    const { patientId } = at;
    const { clinician: staff } = at.clinician(1, '12:00');
    await dangerOn(1, 10);
    await staff.care.addLimit({ patientId, limit: limit() });
    await staff.prescriptions.saveDraft({ patientId, request });
    const before = await staff.handover.get({ patientId });
    expect(before.limits.map(({ author }) => author)).toEqual(['Dr Surgeon']);
    expect(before.closed.find((line) => line.method === 'occlusion')?.text).toBeTruthy();
    expect(before.unsigned).toHaveLength(1);
    expect(before.inForce).toHaveLength(1);
    expect(before.decisions.length).toBeLessThanOrEqual(3);
    expect(before.pauses.map(({ owner }) => owner)).toEqual([null]);
    const decisionId = before.pauses[0]!.decisionId;
    await staff.handover.ownPause({ patientId, decisionId, until: dayOf(3) });
    const after = await staff.handover.get({ patientId });
    expect(after.pauses[0]!.owner).toEqual({ name: 'clinician-a', until: dayOf(3), isOver: false });
    const later = await at.clinician(4).clinician.handover.get({ patientId });
    expect(later.pauses[0]!.owner).toMatchObject({ isOver: true });
  });

  it.each([
    ['yesterday', -1],
    ['fifteen days ahead', 15],
  ])('refuses a pause looked after until %s', async (_name, days) => {
    const { patientId } = at;
    await dangerOn(1, 10);
    const { clinician: staff } = at.clinician(1, '12:00');
    const { pauses } = await staff.handover.get({ patientId });
    await expect(
      staff.handover.ownPause({ patientId, decisionId: pauses[0]!.decisionId, until: dayOf(1 + days) }),
    ).rejects.toThrow(/Enter a day from today/);
  });

  it('danger nobody acknowledged passes to the named covering clinician on its due day, and not once it was acknowledged', async () => {
    const { patientId } = at;
    const coveringId = await colleague(at, 'Covering Clinician');
    await at.administrator().admin.care.nameCoveringClinician({ userId: coveringId });
    await saveSettings(at.accessOn(0), { 'covering-clinician-after-hours': 20 }, 'A day to look');
    await dangerOn(1);
    // Sent at ten; twenty hours later is six in the morning of the next day.
    expect(await kindsOn(1, '23:00')).not.toContain('danger-passed');
    const passed = (await worklistItemsOf(at, 2)).find((item) => item.kind === 'danger-passed');
    expect(passed).toMatchObject({ assignedTo: coveringId, assignedName: 'Covering Clinician' });
    expect(passed!.sentence).toMatch(/not acknowledged in time; passed to Covering Clinician/);
    const danger = (await worklistItemsOf(at, 2)).find((item) => item.kind === 'red-flag');
    await at
      .clinician(2)
      .clinician.worklist.acknowledge({ patientId, key: danger!.key, reason: 'Rung her.' });
    expect(await kindsOn(3)).not.toContain('danger-passed');
    expect(await kindsOn(3)).toContain('red-flag');
  });

  it.each([
    ['a minute before its time is up, danger told at ten', '13:59', false],
    ['at the minute its time is up, danger told at ten', '14:00', true],
    ['a minute after, danger told at ten', '14:01', true],
  ])('%s, after the usual four hours: passed %s, %s', async (_name, time, hasPassed) => {
    const { patientId } = at;
    await dangerOn(1);
    expect((await kindsOn(1, time)).includes('danger-passed')).toBe(hasPassed);
    expect(await kindsOn(1, time)).toContain('red-flag');
    const { dangers } = await at.clinician(1, time).clinician.handover.get({ patientId });
    expect(dangers.map(({ kind }) => kind).includes('danger-passed')).toBe(hasPassed);
  });

  it.each([
    ['05:59', false],
    ['06:00', true],
    ['06:01', true],
  ])('over midnight, twenty hours after ten in the morning, at %s: passed %s', async (time, hasPassed) => {
    await saveSettings(at.accessOn(0), { 'covering-clinician-after-hours': 20 }, 'A day to look');
    await dangerOn(1);
    expect((await kindsOn(2, time)).includes('danger-passed')).toBe(hasPassed);
  });

  it('without a covering clinician says so, and nobody outside the clinic can be named', async () => {
    await dangerOn(1);
    const passed = (await worklistItemsOf(at, 2)).find((item) => item.kind === 'danger-passed');
    expect(passed!.sentence).toMatch(/no covering clinician is named/);
    await expect(at.administrator().admin.care.nameCoveringClinician({ userId: 'somebody' })).rejects.toThrow(
      /no such clinician/,
    );
  });

  it('passed danger cannot be snoozed', async () => {
    const { patientId } = at;
    await dangerOn(1);
    const passed = (await worklistItemsOf(at, 2)).find((item) => item.kind === 'danger-passed');
    await expect(
      at
        .clinician(2)
        .clinician.worklist.snooze({ patientId, key: passed!.key, until: dayOf(3), reason: 'Later' }),
    ).rejects.toThrow(/urgent item cannot be snoozed/);
  });
});
