/** Single answers put beside those on record. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { screeningSheetVersion } from '#core/screening/items.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';
import { addPatient } from '#data/patients/people.ts';
import { asked } from './first-visit-answers.ts';
import { type CareSetting, careSetting } from './setting.ts';

let at: CareSetting;
let patientId: string;
beforeEach(async () => {
  at = await careSetting();
  patientId = await addPatient(at.accessOn(0), {
    givenName: 'New',
    familyName: 'Person',
    birthDay: '1961-04-04',
  });
});
afterEach(() => at.store.close());

const staff = (day = 0, time = '10:00') => at.clinician(day, time).clinician;
const save = (over: object = {}, day = 0, time = '10:00') =>
  staff(day, time).visits.saveFirstVisit({ patientId, visit: { screening: asked(), ...over } });
const newest = async (day = 0) => (await staff(day, '18:00').screening.sheet({ patientId })).newest!;

describe('screening answers', () => {
  it('one wrong answer is one answer again: the next version holds the rest as it was, and names it', async () => {
    await save();
    const item = minimumSet('low-load', 64)[3]!.id;
    const screening = { sheetVersion: screeningSheetVersion, answers: [{ item, answer: 'yes' }] };
    expect(await staff(3).screening.changeAnswers({ patientId, screening })).toEqual({ changed: [item] });
    const after = await newest(3);
    expect(after.version).toBe(2);
    expect(after.answers).toHaveLength(asked().answers.length);
    expect(after.answers.find((one) => one.item === item)).toEqual({
      item,
      answer: 'yes',
      askedOn: '2026-03-05',
    });
    expect(after.answers.filter(({ askedOn }) => askedOn)).toHaveLength(1);
  });

  it('a single answer makes no old screening young: it runs out with the sheet', async () => {
    await save();
    const item = minimumSet('low-load', 64)[3]!.id;
    const screening = { sheetVersion: screeningSheetVersion, answers: [{ item, answer: 'yes' }] };
    await staff(80).screening.changeAnswers({ patientId, screening });
    expect((await newest(80)).day).toBe('2026-03-02');
    const outcomes = await staff(400).screening.outcomes({ patientId });
    expect(outcomes[0]!.reasons.map(({ code }) => code)).toContain('screening-expired');
  });

  it('the same answer again is no new version', async () => {
    await save();
    const screening = { sheetVersion: screeningSheetVersion, answers: [asked().answers[0]!] };
    expect(await staff(1).screening.changeAnswers({ patientId, screening })).toEqual({ changed: [] });
    expect((await newest(1)).version).toBe(1);
  });

  it('are refused one by one while no sheet with the present questions is on record', async () => {
    const screening = { sheetVersion: screeningSheetVersion, answers: [asked().answers[0]!] };
    await expect(staff().screening.changeAnswers({ patientId, screening })).rejects.toMatchObject({
      problem: 'conflict',
    });
  });

  it('of a visit in two parts stand together', async () => {
    const { answers, sheetVersion } = asked();
    await save({ screening: { sheetVersion, answers: answers.slice(0, 5) } });
    await save({ screening: { sheetVersion, answers: answers.slice(5) } }, 0, '11:00');
    expect((await newest()).answers.map(({ item }) => item)).toEqual(answers.map(({ item }) => item));
  });

  it('asked anew take an earlier yes along, with its day, and no earlier plain no', async () => {
    const { screening: sheets } = staff();
    const more = [
      { item: 'lymph', answer: 'yes' },
      { item: 'cancer', answer: 'no' },
    ].filter(({ item }) => !asked().answers.some((one) => one.item === item));
    const screening = { ...asked(), answers: [...asked().answers, ...more] };
    await sheets.record({ patientId, screening });
    await save({}, 5);
    const after = await newest(5);
    expect(after.day).toBe('2026-03-07');
    expect(after.answers.slice(asked().answers.length)).toEqual(
      more.filter(({ answer }) => answer === 'yes').map((one) => ({ ...one, askedOn: '2026-03-02' })),
    );
  });
});
