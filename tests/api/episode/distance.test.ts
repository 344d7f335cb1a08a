/** An appointment by video through the procedures: guided by what binds today, kept as what it was. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addDays } from '#core/time/day.ts';
import { correctionsAt } from '#tests/api/corrections/setting.ts';
import { asProgram } from '#tests/support/callers.ts';
import { type CareSetting, careSetting, firstDay } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const staff = () => at.clinician(1).clinician;
const of = () => ({ patientId: at.patientId });
const visit = { whereabouts: 'At home, 4 Mill Lane', callBackPhone: '020 913 0177', present: [] };
const begin = (place: string) => staff().visits.begin({ ...of(), visit: { ...visit, place } });
const findings = {
  lookBy: 'seen',
  lookFound: 'No redness, right fuller than left.',
  pressBy: 'told',
  pressFound: 'Inner joint line, 4 of 10.',
  moveBy: 'seen',
  moveFound: 'Bends less than the left, 3 of 10.',
  taskBy: 'not-done',
  taskFound: null,
};
const record = (visitId: string, over: object = {}) =>
  staff().distance.record({ ...of(), visitId, joint: 'right-knee', findings: { ...findings, ...over } });

describe('an appointment at a distance', () => {
  it('has a guide for each followed joint while it lasts, and none in person', async () => {
    expect((await staff().distance.guide(of())).now).toBeNull();
    await begin('clinic');
    expect((await staff().distance.guide(of())).now).toBeNull();
    await begin('video');
    const { now } = await staff().distance.guide(of());
    expect(now?.joints.map(({ joint }) => joint)).toEqual(['right-knee']);
  });

  it('keeps how each part was judged, and what was entered before it was put right', async () => {
    const visitId = await begin('video');
    await record(visitId);
    await record(visitId, { lookFound: 'No redness, both alike.' });
    const { found } = await staff().distance.guide(of());
    expect(found.map(({ part, by, found: text }) => [part, by, text])).toEqual([
      ['look', 'seen', 'No redness, both alike.'],
      ['press', 'told', 'Inner joint line, 4 of 10.'],
      ['move', 'seen', 'Bends less than the left, 3 of 10.'],
      ['task', 'not-done', null],
    ]);
    expect(found.map(({ before }) => before)).toEqual([['No redness, right fuller than left.'], [], [], []]);
  });

  it('takes nothing as seen by telephone, nothing without a finding, and nothing half', async () => {
    const visitId = await begin('telephone');
    await expect(record(visitId)).rejects.toThrow(/lookBy/);
    await expect(record(visitId, { lookBy: 'told', moveBy: 'told', moveFound: null })).rejects.toThrow(
      /what you found/,
    );
    expect((await staff().distance.guide(of())).found).toEqual([]);
  });

  it('takes no task on a limb that bears no weight by then, whatever the page showed before', async () => {
    const visitId = await begin('video');
    const none = { limitKg: null, movement: null, fromDegrees: null, toDegrees: null, remark: null };
    const limit = {
      joint: 'right-knee',
      kind: 'weight-bearing',
      ...none,
      from: firstDay,
      to: null,
      author: 'Dr Vance',
    };
    await staff().care.addLimit({ ...of(), limit });
    await expect(record(visitId, { taskBy: 'seen', taskFound: 'Stands up freely.' })).rejects.toThrow(
      /not known here/,
    );
    const { taskBy: _by, taskFound: _found, ...rest } = findings;
    await staff().distance.record({ ...of(), visitId, joint: 'right-knee', findings: rest });
    expect((await staff().distance.guide(of())).found.at(-1)).toMatchObject({
      by: 'not-done',
      found: 'Weight-bearing is limited by Dr Vance.',
    });
  });

  it('is kept to the appointment of today by the one who holds it', async () => {
    const first = await begin('video');
    await begin('telephone');
    await expect(record(first)).rejects.toThrow(/open the page again/);
  });

  it('is told to other programs with what was measured in it, and again once it was corrected', async () => {
    const told = async () => {
      const { rows } = await asProgram(at.accessOn(2)).programs.measurements(of());
      return rows.filter(({ kind }) => kind === 'body-mass').at(-1)!;
    };
    const visitId = await begin('video');
    await staff().measurements.record({
      ...of(),
      measurement: { kind: 'body-mass', day: addDays(firstDay, 1), massKg: 68 },
    });
    const first = await told();
    expect(first.atDistance).toBe('video');
    await correctionsAt(at).correct('visit', visitId, { ...visit, place: 'clinic' }, 1, '17:00');
    const again = await told();
    expect(again).toMatchObject({ id: first.id, atDistance: null, enteredInErrorAt: null });
    expect(again.changedAt > first.changedAt).toBe(true);
  });
});
