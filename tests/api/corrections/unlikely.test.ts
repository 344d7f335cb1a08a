/** A figure far from the person's own is asked about first, and taken only when it was confirmed; impossible ones never. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type CareSetting, careSetting, firstDay } from '#tests/api/episode/setting.ts';
import { correctionsAt } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const set = (loadKg: number) => ({
  kind: 'repetitions-to-failure',
  day: firstDay,
  exerciseId: 'knee-extension-seated',
  side: 'right',
  loadKg,
  repetitions: 8,
});
const record = (measurement: object, confirmed = false) =>
  at.clinician().clinician.measurements.record({ patientId: at.patientId, measurement, confirmed });
const list = () => at.clinician().clinician.measurements.list({ patientId: at.patientId });

it('250 kg for 8 repetitions is asked about with both figures, and nothing is kept before the answer', async () => {
  await record({ kind: 'body-mass', day: firstDay, massKg: 68 });
  await record(set(4));
  await expect(record(set(250))).rejects.toMatchObject({
    problem: 'not-confirmed',
    questions: [expect.stringMatching(/250 kg.*68 kg/), expect.stringMatching(/250 kg.*4 kg/)],
  });
  expect(await list()).toHaveLength(2);
  await record(set(250), true);
  expect((await list()).at(-1)).toMatchObject({ loadKg: 250, confirmed: true });
});

it('what cannot be is refused however it is confirmed', async () => {
  await expect(record(set(301), true)).rejects.toMatchObject({ problem: 'refused' });
});

it('the slip is struck out and the next set is compared with the one before it', async () => {
  await record(set(4));
  const slip = await record(set(250), true);
  await correctionsAt(at).correct('measurement', slip, set(5));
  expect((await list()).map((row) => 'loadKg' in row && row.loadKg)).toEqual([4, 5]);
  await expect(record(set(10))).resolves.toBeDefined();
  await expect(record(set(20.5))).rejects.toThrow(/the 10 kg of/);
});

it('a maximum far beyond the body weight is asked about before the prescription is kept', async () => {
  const { patientId } = at;
  await record({ kind: 'body-mass', day: firstDay, massKg: 70 });
  const keep = (knownOneRepMaxKg: number, confirmed = false) =>
    at.clinician().clinician.prescriptions.saveDraft({
      patientId,
      request: { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right', knownOneRepMaxKg },
      confirmed,
    });
  // 0.8 times 70 kg for one leg, a choice of this project.
  await expect(keep(56)).resolves.toBeDefined();
  await expect(keep(56.1)).rejects.toMatchObject({
    problem: 'not-confirmed',
    questions: [expect.stringMatching(/56.1 kg.*70 kg/)],
  });
  await expect(keep(56.1, true)).resolves.toBeDefined();
});

it('a dose signed on the slip stays as signed and says that the measurement was corrected since', async () => {
  const { patientId } = at;
  const { prescriptions } = at.clinician(1).clinician;
  const { measurements } = at.clinician(0, '10:00').clinician;
  const slip = await measurements.record({ patientId, measurement: set(250), confirmed: true });
  const request = { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right' };
  const signed = await prescriptions.saveDraft({ patientId, request, itemId: at.item.itemId });
  await prescriptions.sign({ patientId, prescriptionId: signed });
  const flagged = async (day: number) =>
    (await at.clinician(day).clinician.prescriptions.list({ patientId })).versions.flatMap((row) =>
      row.correctedSince ? [row.id] : [],
    );
  expect(await flagged(1)).toEqual([]);
  await correctionsAt(at).correct('measurement', slip, set(5), 2);
  expect(await flagged(2)).toEqual([signed]);
  const anew = await at
    .clinician(3)
    .clinician.prescriptions.saveDraft({ patientId, request, itemId: at.item.itemId });
  expect(await flagged(3)).not.toContain(anew);
});
