/** Limits of others, and what follows when something happened. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import { addDays } from '#core/time/day.ts';
import { replayableDecisions } from '#data/decision/replayable-decisions.ts';
import {
  type CareSetting,
  careSetting,
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
const kindsOn = async (day: number) => (await worklistItemsOf(at, day)).map(({ kind }) => kind);

describe('limits of others', () => {
  it('bound what is proposed, and say so in the working', async () => {
    const { patientId } = at;
    const { clinician: staff } = at.clinician();
    expect((await staff.prescriptions.propose({ patientId, request })).dose).toMatchObject({ loadKg: 5 });
    await staff.care.addLimit({ patientId, limit: limit() });
    const bounded = await staff.prescriptions.propose({ patientId, request });
    expect(bounded.dose).toMatchObject({ loadKg: 3 });
    expect(bounded.working.map(({ text }) => text).join(' ')).toMatch(/loads over 3 kg are left out/);
    expect(bounded.cautions.map(({ text }) => text).join(' ')).toMatch(/Dr Surgeon/);
  });

  it('bound what is signed, also when they came after it was kept', async () => {
    const { patientId } = at;
    const { clinician: staff } = at.clinician();
    const prescriptionId = await staff.prescriptions.saveDraft({ patientId, request });
    const limitId = await staff.care.addLimit({ patientId, limit: limit() });
    await expect(staff.prescriptions.sign({ patientId, prescriptionId })).rejects.toThrow(
      /5 kg is over the limit of 3 kg/,
    );
    await staff.care.liftLimit({ patientId, limitId, reason: 'Surgeon wrote.' });
    await expect(
      staff.prescriptions.sign({ patientId, prescriptionId, replace: true }),
    ).resolves.toBeDefined();
  });

  it('refuse when nothing the patient owns lies within', async () => {
    const { patientId } = at;
    await at.clinician().clinician.care.addLimit({ patientId, limit: limit({ limitKg: 0.5 }) });
    await expect(at.clinician().clinician.prescriptions.propose({ patientId, request })).rejects.toThrow(
      /Nothing the patient owns lies within the limit of 0.5 kg/,
    );
  });

  it('show in the catalogue which exercises they close', async () => {
    const { patientId } = at;
    await at
      .clinician()
      .clinician.care.addLimit({ patientId, limit: limit({ kind: 'weight-bearing', limitKg: null }) });
    const { limited } = await at.clinician().clinician.prescriptions.catalogue({ patientId });
    const stand = limited.find((row) => row.exerciseId === 'sit-to-stand-chair');
    expect(stand?.contraindications.join(' ')).toMatch(/puts weight on the joint/);
  });

  it('on range close by their degrees what goes beyond them, and are listed with them', async () => {
    const { patientId } = at;
    const { clinician: staff } = at.clinician();
    const degrees = { movement: 'flexion', fromDegrees: 0, toDegrees: 60 };
    const range = limit({ kind: 'range', limitKg: null, ...degrees });
    const limitId = await staff.care.addLimit({ patientId, limit: range });
    await expect(staff.prescriptions.propose({ patientId, request })).rejects.toThrow(
      /allows 0° to 60° of flexion; this exercise goes through 0° to 90° of flexion/,
    );
    const { limited } = await staff.prescriptions.catalogue({ patientId });
    expect(limited.find((row) => row.exerciseId === 'knee-extension-seated')?.contraindications).toHaveLength(
      1,
    );
    expect((await staff.care.list({ patientId })).limits).toMatchObject([degrees]);
    await staff.care.liftLimit({ patientId, limitId, reason: 'Surgeon wrote.' });
    await expect(staff.prescriptions.propose({ patientId, request })).resolves.toBeDefined();
  });

  it.each([
    ['degrees without a movement', { kind: 'range', limitKg: null, fromDegrees: 0, toDegrees: 60 }],
    ['degrees of a load limit', { movement: 'flexion', fromDegrees: 0, toDegrees: 60 }],
    ['a movement nobody knows', { kind: 'range', limitKg: null, movement: 'twist' }],
  ])('are refused whole with %s, and nothing is kept', async (_name, over) => {
    const { patientId } = at;
    const { care } = at.clinician().clinician;
    await expect(care.addLimit({ patientId, limit: limit(over) })).rejects.toThrow();
    expect((await care.list({ patientId })).limits).toEqual([]);
  });

  it('past their last day ask again on the worklist and open nothing', async () => {
    const { patientId } = at;
    const limitId = await at
      .clinician()
      .clinician.care.addLimit({ patientId, limit: limit({ to: dayOf(5) }) });
    expect(await kindsOn(5)).not.toContain('limit-ended');
    expect(await kindsOn(6)).toContain('limit-ended');
    expect(
      (await at.clinician(6).clinician.prescriptions.propose({ patientId, request })).dose,
    ).toMatchObject({
      loadKg: 3,
    });
    await at.clinician(6).clinician.care.liftLimit({ patientId, limitId, reason: 'Surgeon wrote.' });
    expect(await kindsOn(6)).not.toContain('limit-ended');
    expect(
      (await at.clinician(6).clinician.prescriptions.propose({ patientId, request })).dose,
    ).toMatchObject({
      loadKg: 5,
    });
  });
});

describe('the same limit from two people', () => {
  it('is one item in both names, and stays until both are lifted', async () => {
    const { patientId } = at;
    const { care } = at.clinician().clinician;
    const first = await care.addLimit({ patientId, limit: limit({ to: dayOf(5), author: 'surgeon' }) });
    const second = await care.addLimit({ patientId, limit: limit({ to: dayOf(5), author: 'physician' }) });
    const ended = async () =>
      (await worklistItemsOf(at, 6))
        .filter(({ kind }) => kind === 'limit-ended')
        .map(({ sentence }) => /\(([^)]*)\)/.exec(sentence)?.[1]);
    expect(await ended()).toEqual(['load-limit, physician and surgeon']);
    await at.clinician(6).clinician.care.liftLimit({ patientId, limitId: first, reason: 'Surgeon wrote.' });
    expect(await ended()).toEqual(['load-limit, physician']);
    await at
      .clinician(6)
      .clinician.care.liftLimit({ patientId, limitId: second, reason: 'Physician wrote.' });
    expect(await ended()).toEqual([]);
  });
});

describe('something that happened', () => {
  const event = (over: object) => ({
    day: firstDay,
    kind: 'medicine-change',
    joint: null,
    remark: null,
    ...over,
  });

  it.each(['medicine-change', 'joint-injection', 'surgery', 'fall', 'illness'])(
    '%s opens a review until the screening was asked again',
    async (kind) => {
      const { patientId } = at;
      const { clinician: staff } = at.clinician(1);
      await staff.care.addEvent({ patientId, event: event({ kind, day: dayOf(1) }) });
      expect(await kindsOn(1)).toContain('event-review');
      const sheet = {
        sheetVersion: screeningSheetVersion,
        answers: screeningItems.map(({ id }) => ({ item: id, answer: 'no' })),
      };
      await at.clinician(2).clinician.screening.record({ patientId, screening: sheet });
      expect(await kindsOn(2)).not.toContain('event-review');
    },
  );

  it('a medicine started, stopped or changed is kept with its kind; half of it is refused', async () => {
    const { patientId } = at;
    const { clinician: staff } = at.clinician();
    const medicine = { medicineAct: 'stop', medicineClass: 'blood-thinner' };
    await staff.care.addEvent({ patientId, event: event(medicine) });
    const { events } = await staff.care.list({ patientId });
    expect(events.map((one) => one.medicine)).toEqual([{ act: 'stop', medicineClass: 'blood-thinner' }]);
    await expect(staff.care.addEvent({ patientId, event: event({ medicineAct: 'stop' }) })).rejects.toThrow(
      /the kind of medicine/,
    );
    await expect(
      staff.care.addEvent({ patientId, event: event({ ...medicine, kind: 'fall' }) }),
    ).rejects.toThrow(/only for a change of medicine/);
  });

  it('an injection blunts the score: the engine holds and counts the days', async () => {
    const { patientId } = at;
    await at
      .clinician()
      .clinician.care.addEvent({ patientId, event: event({ kind: 'joint-injection', joint: 'right-knee' }) });
    const decisions = await replayableDecisions(at.accessOn(1), patientId, firstDay);
    expect(decisions.at(-1)).toMatchObject({ joint: 'right-knee', facts: { treatmentChangeDays: 0 } });
    expect(decisions.at(-1)!.reasons.map(({ rule }) => rule)).toContain('D2');
  });
});
