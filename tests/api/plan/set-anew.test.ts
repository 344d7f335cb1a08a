/** A dose that a clinician sets anew by hand is told, and what was decided of the one before it no longer is. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { sendMorning, sendSession } from '#tests/support/sore-knee.ts';
import { type CareSetting, careSetting } from '../episode/setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const told = async (day: number, time = '20:00') => {
  const { changes, changesWithoutWhy, unchanged } = await at.patient(day, time).patient.today.get();
  return { changes, changesWithoutWhy, unchanged };
};

const painfulDay = async (day: number) => {
  await sendSession(at.accessOn(day, '18:00'), at.patientId, at.item, 8);
  await sendMorning(at.accessOn(day + 1, '07:00'), at.patientId, 8);
};

const setAnew = async (day: number) => {
  const staff = at.clinician(day, '12:00').clinician;
  const { patientId } = at;
  const [inForce] = (await staff.prescriptions.list({ patientId })).inForce;
  const { exerciseId, method, side, loadKg, oneRepMaxKg } = inForce!.dose as never as Record<string, never>;
  const request = { exerciseId, method, side, loadKg, knownOneRepMaxKg: oneRepMaxKg, sets: 2 };
  const prescriptionId = await staff.prescriptions.saveDraft({
    patientId,
    itemId: inForce!.itemId,
    request,
    confirmed: true,
  } as never);
  await staff.prescriptions.sign({ patientId, prescriptionId, replace: true });
};

it('says who set it, and no longer that the dose before it was eased or stays', async () => {
  await painfulDay(0);
  const before = await told(1, '11:00');
  expect([...(before.changes ?? []), ...(before.unchanged ?? [])].length).toBeGreaterThan(0);
  await setAnew(1);
  const after = await told(1);
  expect(after.changesWithoutWhy?.map(({ en }) => en).join()).toMatch(/clinician-a has set this anew/);
  expect([...(after.changes ?? []), ...(after.unchanged ?? [])].map(({ en }) => en).join()).not.toMatch(
    /stay with it|instead of|stay where you are/,
  );
});

it('a letter does not say that the dose stays either: that it was set anew, and when', async () => {
  await painfulDay(0);
  await setAnew(1);
  const { decisions } = await at.clinician(1, '20:00').clinician.papers.letter({ patientId: at.patientId });
  expect(decisions.filter(({ decision }) => decision !== 'pause').map(({ setAnewOn }) => setAnewOn)).toEqual(
    decisions.filter(({ decision }) => decision !== 'pause').map(() => '2026-03-03'),
  );
  expect(decisions.length).toBeGreaterThan(0);
});

it('a first dose is no change, and says nothing', async () => {
  expect((await told(0)).changesWithoutWhy ?? []).toEqual([]);
});
