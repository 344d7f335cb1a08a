/** What a review tells of the doses of an exercise, and what a record opens with, through the procedures. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs as day, workingPatient } from '#tests/support/working-patient.ts';

const evening = Date.parse('2026-03-02T18:00:00Z');
const joint = 'right-knee';

describe('after a week of good sessions and a step within the band', () => {
  let store: Store;
  let patientId: string;
  let work: ReturnType<typeof workingPatient>;
  beforeEach(async () => {
    store = freshStore();
    ({ patientId } = await twoClinics(store));
    work = workingPatient(store, patientId);
  });
  afterEach(() => store.close());

  const aWeek = async (lastMorning = 2) => {
    await work.signed();
    for (const n of [0, 2, 4, 7]) {
      await work.didSession(evening + n * day, { before: 2, during: 3, after: 2 });
      await work.answeredMorning(evening + (n + 1) * day - 11 * 3_600_000, n === 7 ? lastMorning : 2);
    }
    const now = evening + 8 * day;
    const { clinician: staff } = work.clinicianAt(now);
    const itemId = (await staff.prescriptions.list({ patientId })).inForce[0]!.itemId;
    return { staff, itemId };
  };

  it('the review tells the course of the dose and how the joint answered each, where it is asked', async () => {
    const { staff, itemId } = await aWeek();
    expect((await staff.review.get({ patientId })).dose).toBeNull();
    const { dose } = await staff.review.get({ patientId, dose: { itemId, joint } });
    expect(
      dose?.course.steps.map(({ from, to, way, share, inShort }) => [from, to, way, share, inShort]),
    ).toEqual([
      ['2026-03-02', '2026-03-10', 'signed', 1, '3 × 15–20, 4 kg'],
      ['2026-03-10', null, 'within-band', expect.closeTo(17 / 15, 12), '× 17–20'],
    ]);
    // Done with 3 of the 4 kg.
    expect(dose?.course.sessions.map(({ share }) => share)).toEqual([0.75, 0.75, 0.75, 0.75]);
    expect(dose?.answers.doses).toEqual([{ share: 0.75, dose: null, atUsual: 4, overUsual: 0 }]);
    expect(dose?.answers.corridor).toMatchObject({ noneBecause: 'none-over-usual' });
  });

  it('a sore morning counts against the dose, and the dose that was eased back says so', async () => {
    const { staff, itemId } = await aWeek(6);
    const { dose } = await staff.review.get({ patientId, dose: { itemId, joint } });
    expect(dose?.answers.doses).toMatchObject([{ share: 0.75, atUsual: 3, overUsual: 1 }]);
    expect(dose?.course.steps.at(-1)).toMatchObject({
      way: 'eased-back',
      share: expect.closeTo(11 / 15, 12),
    });
  });

  it('the summary says how the dose was answered, the last step and what is open', async () => {
    const { staff, itemId } = await aWeek();
    const summary = await staff.review.summary({ patientId });
    expect(summary).toMatchObject({ joint, itemId, day: '2026-03-10' });
    expect(summary.sentences).toEqual({
      atUsual:
        '3 × 17–20, 4 kg (Straighten the knee, sitting, right): no session at this dose is on record in the time that was read.',
      lastStep:
        'From 3 × 15–20, 4 kg to 3 × 17–20, 4 kg (Straighten the knee, sitting, right) on 10 Mar. Since then no morning has been answered.',
      open: 'Nothing is open in what was looked at: the worklist, what comes due by 24 Mar, and when medicines were last asked about (2 Mar). What was not entered was not looked at.',
    });
  });

  it('the summary of a record with nothing in it says what there is none of', async () => {
    const { facts, sentences } = await work.clinicianAt(evening).clinician.review.summary({ patientId });
    expect(facts).toEqual({
      atUsual: { is: 'no-dose' },
      lastStep: { is: 'no-dose' },
      open: { is: 'not-screened' },
    });
    expect(Object.values(sentences).join(' ')).not.toMatch(/undefined|null|NaN/);
  });

  it('a dose that waits, and before it a warning sign, is the open question', async () => {
    const prescriptionId = await work.kept();
    const open = async (now: number) =>
      (await work.clinicianAt(now).clinician.review.summary({ patientId })).sentences.open;
    expect(await open(evening)).toMatch(/^Sign 3 × 15–20, 4 kg \(Straighten the knee, sitting, right\)\?/);
    await work.clinicianAt(evening).clinician.prescriptions.sign({ patientId, prescriptionId });
    await work.answeredMorning(evening + 13 * 3_600_000, 2, ['unexplained-fever']);
    expect(await open(evening + day)).toMatch(/^Warning sign \(/);
  });
});
