/** What a screening answer may carry through the procedures: notes, days, "does not apply", and what was left unsaid. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { itemsAskedAt } from '#core/screening/items.ts';
import { addPatient } from '#data/patients/people.ts';
import { asPatient } from '#tests/support/callers.ts';
import { allNo } from '#tests/support/working-patient.ts';
import { answerInWords } from '#ui/clinician/screening/screening-form-state.ts';
import { type CareSetting, careSetting, change, inCare } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

/** Everything answered no, but for what is given. */
const sheetWith = (...given: readonly { readonly item: string }[]) => {
  const { sheetVersion, answers } = allNo();
  const items = given.map(({ item }) => item);
  return { sheetVersion, answers: [...answers.filter(({ item }) => !items.includes(item)), ...given] };
};
const record = (...given: readonly { readonly item: string }[]) =>
  at.clinician().clinician.screening.record({ patientId: at.patientId, screening: sheetWith(...given) });

describe('a note beside an answer', () => {
  it('of 200 characters is kept with the screening and stands beside the answer; one of 201 is refused', async () => {
    const note = 'x'.repeat(200);
    await expect(record({ item: 'medicines', answer: 'no', note: `${note}x` } as never)).rejects.toThrow(
      /200/,
    );
    await record({ item: 'medicines', answer: 'no', note } as never);
    const { items, newest } = await at.clinician().clinician.screening.sheet({ patientId: at.patientId });
    const item = items.find(({ id }) => id === 'medicines')!;
    const answer = newest!.answers.find((one) => one.item === 'medicines')!;
    expect(answer).toEqual({ item: 'medicines', answer: 'no', note });
    expect(answerInWords(item, answer)).toBe(`no (noted: “${note}”)`);
  });

  it('reaches the clinician from the patient’s answers before a visit', async () => {
    const note = 'Marcumar, INR 2.4, left leg';
    await at.patient(1).patient.preVisit.send({
      answers: sheetWith({ item: 'veins', answer: 'no', note: 'operated 1998' } as never).answers,
    });
    const noted = await at.clinician(1).clinician.preVisits.get({ patientId: at.patientId });
    expect(noted!.toLookAt.map(({ now }) => now?.note)).toEqual(['operated 1998']);
    const told = { item: 'past-clot', answer: 'yes', details: ['being-treated'], day: '2025-12-01', note };
    await at.patient(1, '10:00').patient.preVisit.send({ answers: sheetWith(told).answers });
    const shown = await at.clinician(1).clinician.preVisits.get({ patientId: at.patientId });
    expect(shown!.toLookAt.map(({ now }) => now)).toEqual([told]);
  });

  it('stands with the answer in the letter at the end of care, as does what was not said', async () => {
    const { patientId } = at;
    const episodeId = await inCare(at);
    await record(
      { item: 'lymph', answer: 'yes', note: 'left arm, 2019' } as never,
      { item: 'past-clot', answer: 'yes' } as never,
    );
    await at
      .clinician(10)
      .clinician.episodes.change({ patientId, change: change(episodeId, 'discharged', '2026-03-12') });
    const documents = await at.clinician(11).clinician.documents.get({ patientId, episodeId });
    expect(documents!.facts.checks.screening!.yes).toEqual([
      'Lymph nodes removed or irradiated, lymphoedema (limb: not said; noted: “left arm, 2019”)',
      'Past or present deep-vein thrombosis or pulmonary embolism (which: not said)',
    ]);
  });
});

describe('an answer that an item does not offer', () => {
  it.each([
    [
      '"does not apply" to a heart event',
      { item: 'heart-event', answer: 'not-applicable' },
      /yes, no or not known/,
    ],
    [
      'a detail of another item',
      { item: 'past-clot', answer: 'yes', details: ['statin'] },
      /not on the sheet/,
    ],
    ['a day that is tomorrow', { item: 'past-clot', answer: 'yes', day: '2026-03-03' }, /today or earlier/],
    [
      'a day that does not exist',
      { item: 'past-clot', answer: 'yes', day: '2026-02-30' },
      /today or earlier/,
    ],
  ])('is refused with how to put it right, and nothing is recorded: %s', async (_title, answer, reason) => {
    const { newest } = await at.clinician().clinician.screening.sheet({ patientId: at.patientId });
    await expect(record(answer)).rejects.toThrow(reason);
    const after = await at.clinician().clinician.screening.sheet({ patientId: at.patientId });
    expect(after.newest).toEqual(newest);
  });
});

describe('who is asked about pregnancy', () => {
  const idsFor = async (birthDay: string) => {
    const patientId = await addPatient(at.accessOn(0), {
      givenName: 'Other',
      familyName: birthDay,
      birthDay,
      phone: null,
    });
    const { items } = await at.clinician().clinician.screening.sheet({ patientId });
    const page = await at.clinician().clinician.visits.firstVisit({ patientId });
    return [items, page.items].map((list) => list.some(({ id }) => id === 'pregnancy-or-birth'));
  };

  it('is decided by age on the day: 17 no, 18 and 55 yes, 56 no, on the sheet and at a first visit', async () => {
    // The day is 2 March 2026.
    expect(await idsFor('2008-03-03')).toEqual([false, false]);
    expect(await idsFor('2008-03-02')).toEqual([true, true]);
    expect(await idsFor('1970-03-03')).toEqual([true, true]);
    expect(await idsFor('1970-03-02')).toEqual([false, false]);
  });

  it('is asked before a session at the ages it is asked at, and not once it was marked as not applicable', async () => {
    const asks = async (birthDay: string, answer: 'no' | 'not-applicable') => {
      const patientId = await addPatient(at.accessOn(0), {
        givenName: 'Other',
        familyName: `${birthDay} ${answer}`,
        birthDay,
        phone: null,
      });
      const screening = sheetWith({ item: 'pregnancy-or-birth', answer } as never);
      await at.clinician().clinician.screening.record({ patientId, screening });
      return (await asPatient(at.accessOn(0), patientId).patient.today.get()).asksPregnancy;
    };
    expect(await asks('1990-01-01', 'no')).toBe(true);
    expect(await asks('1990-01-01', 'not-applicable')).toBe(false);
    expect(await asks('1970-03-03', 'no')).toBe(true);
    expect(await asks('1970-03-02', 'no')).toBe(false);
  });

  it('a patient of 67 is not asked at home, and can be told it does not apply where it is offered', async () => {
    const { questions } = await at.patient().patient.preVisit.questions();
    expect(questions.map(({ id }) => id)).toEqual(itemsAskedAt(67).map(({ id }) => id));
    await expect(
      record({ item: 'pregnancy-or-birth', answer: 'not-applicable' } as never),
    ).resolves.toBeGreaterThan(1);
  });
});
