/** Treatment through the procedures: kept and put right, seen by plan, phone and worklist, asked again by what it is. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { askedAgainForClass } from '#core/episode/treatment/treatment-classes.ts';
import { screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import { addDays } from '#core/time/day.ts';
import { correctionsAt } from '#tests/api/corrections/setting.ts';
import { type CareSetting, careSetting, firstDay, worklistItemsOf } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const dayOf = (day: number) => addDays(firstDay, day);
const staff = (day = 0, time?: string) => at.clinician(day, time).clinician;
const event = (over: object) => ({ day: firstDay, joint: null, remark: null, ...over });
const add = (day: number, over: object) =>
  staff(day).care.addEvent({ patientId: at.patientId, event: event({ day: dayOf(day), ...over }) });
const sheetOf = (items: readonly string[]) => ({
  sheetVersion: screeningSheetVersion,
  answers: items.map((item) => ({ item, answer: 'no' })),
});
const screen = (day: number) =>
  staff(day).screening.record({
    patientId: at.patientId,
    screening: sheetOf(screeningItems.map(({ id }) => id)),
  });
const again = (day: number, items: readonly string[]) =>
  staff(day).screening.askAgain({ patientId: at.patientId, screening: sheetOf(items) });
const reviews = async (day: number) =>
  (await worklistItemsOf(at, day)).filter(({ kind }) => kind === 'event-review');

const start = (medicineClass: string) => ({ kind: 'medicine-change', medicineAct: 'start', medicineClass });

describe('treatment on record', () => {
  it('keeps a missed dose and a course with what they are of, and a correction takes the place of either', async () => {
    const { patientId } = at;
    const missed = await add(1, { kind: 'missed-dose', medicineClass: 'disease-modifying' });
    const course = { kind: 'steroid-course', lastDay: dayOf(10), courseForm: 'taper' };
    const wrong = await add(2, course);
    const shorter = event({ ...course, day: dayOf(2), lastDay: dayOf(5) });
    const own = correctionsAt(at);
    const told = await own.correct('event', wrong, shorter, 2);
    await own.seen(told.correctionId, 2);
    const { events } = await staff(2).care.list({ patientId });
    expect(events).toMatchObject([
      { id: missed, kind: 'missed-dose', medicine: { act: null, medicineClass: 'disease-modifying' } },
      { kind: 'steroid-course', lastDay: dayOf(5), courseForm: 'taper', medicine: null },
    ]);
  });

  it('an injected joint is the easier session for two days, on the plan and on the phone, and asks no signature', async () => {
    const { patientId } = at;
    await screen(0);
    await add(1, { kind: 'joint-injection', joint: 'right-knee' });
    const seen = async (day: number) => {
      const { exercises, changes, unchanged = [] } = await at.patient(day).patient.today.get();
      const said = [...changes, ...unchanged].map(({ en }) => en).join(' ');
      return [exercises.map(({ today }) => today), said.includes('A joint was injected')];
    };
    expect([await seen(1), await seen(3), await seen(4)]).toEqual([
      [['bad-day'], true],
      [['bad-day'], true],
      [['as-planned'], false],
    ]);
    expect(await staff(1).care.list({ patientId })).toMatchObject({ injectionEasierDays: 2 });
  });
});

describe('a known class of medicine', () => {
  it('asks its own questions again, and the same answers as before are enough', async () => {
    const { patientId } = at;
    await screen(0);
    await add(1, start('biologic'));
    const asked = askedAgainForClass('biologic')!;
    const sheet = await staff(2).screening.sheet({ patientId });
    expect([...sheet.again.items].sort()).toEqual([...asked].sort());
    expect(sheet.again.events.map(({ what }) => what)).toEqual(['Biologic: started']);
    expect((await reviews(2)).map(({ sentence }) => sentence)).toEqual([
      expect.stringContaining(`${asked.length} screening questions are to be asked again`),
    ]);
    expect((await again(2, asked.slice(1))).left).toEqual([asked[0]]);
    expect(await reviews(2)).toHaveLength(1);
    expect((await again(2, [asked[0]!])).left).toEqual([]);
    expect(await reviews(2)).toEqual([]);
    const { newest } = await staff(2).screening.sheet({ patientId });
    expect(newest!.day).toBe(firstDay);
    expect(newest!.answers).toHaveLength(screeningItems.length);
  });

  it('closes work with a cuff until they are answered, naming them, and nothing else', async () => {
    const { patientId } = at;
    await screen(0);
    await add(1, start('jak-inhibitor'));
    const reasons = async (method: string) =>
      (await staff(1).screening.outcomes({ patientId }))
        .filter((outcome) => outcome.method === method)
        .flatMap((outcome) => outcome.reasons)
        .filter(({ code }) => code === 'after-medicine-change')
        .map(({ text }) => text);
    expect((await reasons('occlusion'))[0]).toMatch(/ask again first: .*deep-vein/);
    expect(await reasons('low-load')).toEqual([]);
    await again(1, askedAgainForClass('jak-inhibitor')!);
    expect(await reasons('occlusion')).toEqual([]);
  });

  it('beside something that asks the whole sheet is asked with it; without a sheet nothing is asked singly', async () => {
    const { patientId } = at;
    await add(1, start('biologic'));
    await expect(again(1, ['hot-joint'])).resolves.toBeDefined();
    await screen(2);
    await add(3, start('biologic'));
    await add(3, { kind: 'illness' });
    expect((await staff(3).screening.sheet({ patientId })).again.items).toEqual([]);
    expect(await reviews(3)).toHaveLength(2);
    await screen(4);
    expect(await reviews(4)).toEqual([]);
  });
});
