/** The patient is shown of nutrition what a clinician signed, and nothing once something closes it. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { screeningItems } from '#core/screening/items.ts';
import { type CareSetting, careSetting, firstDay } from '../episode/setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const staff = () => at.clinician().clinician;
const of = () => ({ patientId: at.patientId });
const advice = {
  proteinLowG: 80,
  proteinHighG: 100,
  meals: 4,
  surplusKcal: null,
  words: 'Curd in the evening.',
  restAnsweredNo: true,
};
const show = (over: object = {}, confirmed = false) =>
  staff().nutrition.show({ ...of(), advice: { ...advice, ...over }, confirmed });
const shown = () => at.patient().patient.nutrition.get();
const weighs = (massKg: number) =>
  staff().measurements.record({ ...of(), measurement: { kind: 'body-mass', day: firstDay, massKg } });
const answers = (yes: string) =>
  staff().screening.record({
    ...of(),
    screening: {
      sheetVersion: '1',
      answers: screeningItems.map(({ id }) => ({ item: id, answer: id === yes ? 'yes' : 'no' })),
    },
  });

it('nothing is shown that nobody signed', async () => {
  await weighs(70);
  expect(await shown()).toBeNull();
});

it('what was signed is shown with the name, and no more once it was taken back', async () => {
  await weighs(70);
  await show();
  expect(await shown()).toMatchObject({ proteinLowG: 80, meals: 4, byName: 'clinician-a' });
  await staff().nutrition.takeBack(of());
  expect(await shown()).toBeNull();
});

it('kidney disease told later closes it at once, and nothing is signed while it stands', async () => {
  await weighs(70);
  await show();
  await answers('kidney-disease');
  expect(await shown()).toBeNull();
  await expect(show()).rejects.toThrow(/what closes it/);
  expect((await staff().nutrition.get(of())).picture.kidney).toEqual({ ceilingG: 56, warnAboveG: 91 });
});

it('grams without a body mass on record are asked about, and kept only once confirmed', async () => {
  await expect(show()).rejects.toThrow(/held against nothing/);
  expect(await shown()).toBeNull();
  await show({}, true);
  expect(await shown()).not.toBeNull();
});

it('the clinic’s own figures drive what is worked out', async () => {
  await weighs(70);
  const line = async () =>
    (await staff().nutrition.get(of())).picture.protein.find(({ basis }) => basis === 'body-isn-sports');
  expect([(await line())?.lowG, (await line())?.highG]).toEqual([98, 140]);
});
