/** The re-test plan: set, due on the worklist, done by measuring, changed, stopped; by both ways to the worklist alike. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addDays } from '#core/time/day.ts';
import { rebuildWorklist } from '#data/worklist/worklist-items.ts';
import { type CareSetting, careSetting, firstDay, worklistItemsOf } from '#tests/api/episode/setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const id = () => at.patientId;
const staff = (day = 0) => at.clinician(day).clinician;
const plan = (over: object = {}, day = 0) =>
  staff(day).outcomes.planRetest({
    patientId: id(),
    retest: { measure: 'six-minute-walk', dueOn: addDays(firstDay, 42), everyDays: 42, ...over },
  });
const walk = (day: number, metres = 320) =>
  staff(day).measurements.record({
    patientId: id(),
    measurement: { kind: 'six-minute-walk', day: addDays(firstDay, day), metres },
    confirmed: true,
  });
const dueOn = async (day = 0) => (await staff(day).outcomes.retests({ patientId: id() })).map(({ on }) => on);
const listed = async (day: number) =>
  (await worklistItemsOf(at, day))
    .filter(({ kind }) => kind === 'retest-due')
    .map(({ sentence }) => sentence);

describe('a planned re-test', () => {
  it('is on the worklist from its day on until it is measured, and then again after its rhythm', async () => {
    await plan();
    expect(await listed(41)).toEqual([]);
    expect(await listed(42)).toEqual([`6-minute walk: to be measured again, due 13 Apr.`]);
    await walk(43);
    expect(await listed(43)).toEqual([]);
    expect(await dueOn(43)).toEqual([addDays(firstDay, 85)]);
    expect(await listed(85)).toHaveLength(1);
  });

  it('is replaced by a new plan of the same measure, and a measurement struck out makes it due again', async () => {
    await plan();
    await plan({ dueOn: addDays(firstDay, 14), everyDays: null });
    expect(await dueOn()).toEqual([addDays(firstDay, 14)]);
    await walk(14);
    expect(await dueOn(14)).toEqual([null]);
    const [measured] = await staff(14).measurements.list({ patientId: id() });
    await staff(14).corrections.enterInError({
      patientId: id(),
      subject: 'measurement',
      subjectId: measured!.id,
      reason: 'Wrong patient',
    });
    expect(await dueOn(14)).toEqual([addDays(firstDay, 14)]);
  });

  it('is stopped with a reason, and not twice', async () => {
    await plan();
    const stop = () =>
      staff().outcomes.stopRetest({
        patientId: id(),
        measure: 'six-minute-walk',
        stop: { reason: 'Moved away' },
      });
    await stop();
    expect(await dueOn()).toEqual([]);
    const stopped = async () => (await staff().outcomes.get({ patientId: id() })).stoppedRetests;
    expect(await stopped()).toEqual([
      { measure: 'six-minute-walk', title: '6-minute walk', on: firstDay, reason: 'Moved away' },
    ]);
    await expect(stop()).rejects.toThrow('No re-test of this is planned');
    await plan();
    expect(await stopped()).toEqual([]);
  });

  it('says how to put a wrong entry right', async () => {
    await expect(plan({ dueOn: addDays(firstDay, -1) })).rejects.toThrow('today to 366 days ahead');
    await expect(plan({ everyDays: 13 })).rejects.toThrow();
    await expect(plan({ measure: 'limb-occlusion-pressure' })).rejects.toThrow();
  });

  it('is found alike for one patient and for the whole clinic', async () => {
    await plan();
    await walk(40);
    const before = await listed(90);
    await rebuildWorklist(at.accessOn(90));
    expect(await listed(90)).toEqual(before);
    expect(before).toHaveLength(1);
  });
});
