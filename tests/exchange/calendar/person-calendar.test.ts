/** Which days of a plan stand in the calendar of a person, and which do not. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Dose } from '#core/prescribing/dose.ts';
import { planRetest } from '#data/assessment/retest-plans.ts';
import { reportSign } from '#data/danger/warning-signs.ts';
import type { Store } from '#data/database/store.ts';
import { addLimit } from '#data/episode/limits-and-pre-approvals.ts';
import { addVersion, signPrescription } from '#data/prescribing/prescribing.ts';
import { saveProgramme } from '#data/prescribing/programmes.ts';
import { bookReview } from '#data/review/review-bookings.ts';
import type { CalendarEvent } from '#exchange/calendar/calendar.ts';
import { personCalendarOf } from '#exchange/calendar/person-calendar.ts';
import { lowLoadDose, type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;

beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
});
afterEach(() => store.close());

const eventsOf = async (kind?: CalendarEvent['kind']) => {
  const calendar = await personCalendarOf(setting.clinician, setting.patientId, 'en');
  return calendar!.events.filter((event) => kind === undefined || event.kind === kind);
};
const days = (events: readonly CalendarEvent[]) => events.map(({ day }) => day);

const wrap = {
  ...{ method: 'occlusion', limb: 'leg', sets: 4, scheme: [30, 15, 15, 15], capSeconds: 900 },
  ...{ cuff: { kind: 'elastic-wrap', tightness: 5 }, inflation: 'continuous', supervised: true },
};

const planned = async () => {
  const { itemId } = await signedExercise(setting.clinician, setting.patientId);
  await saveProgramme(setting.clinician, setting.patientId, [{ itemId, weekdays: [1, 4] }]);
};

describe('the calendar of a person', () => {
  it('has the sessions of the plan on their weekdays, eight weeks ahead, and every morning', async () => {
    await planned();
    expect(days(await eventsOf('session')).slice(0, 4)).toEqual([
      '2026-03-02',
      '2026-03-05',
      '2026-03-09',
      '2026-03-12',
    ]);
    expect(await eventsOf('session')).toHaveLength(16);
    expect(await eventsOf('morning')).toHaveLength(56);
  });

  it('spaces the sessions from the day of the signature where no weekdays are set', async () => {
    await signedExercise(setting.clinician, setting.patientId);
    expect(days(await eventsOf('session')).slice(0, 3)).toEqual(['2026-03-02', '2026-03-04', '2026-03-06']);
  });

  it.each([
    ['a dose on a machine', { machine: { id: 'press-1', name: 'Press' } }],
    ['a cuff put on by a clinician', wrap],
    ['a dose at home', null],
  ])('with %s on Tuesdays reminds of Tuesdays only where it is done alone', async (_what, over) => {
    const { itemId } = await signedExercise(setting.clinician, setting.patientId);
    const dose = { ...lowLoadDose, ...over } as Dose;
    const caution = { id: 'test', text: 'Test.', patient: { key: 'stop-signs' }, from: 'test' } as const;
    const prescriptionId = await addVersion(setting.clinician, setting.patientId, {
      ...{ itemId: 'second', dose, badDay: dose, joints: ['right-knee'], working: [] },
      ...{ cautions: [{ ...caution, support: 'clinic' }], origin: 'clinician' },
    });
    await signPrescription(setting.clinician, setting.patientId, prescriptionId);
    await saveProgramme(setting.clinician, setting.patientId, [
      { itemId, weekdays: [1] },
      { itemId: 'second', weekdays: [2] },
    ]);
    const expected = over === null ? ['2026-03-02', '2026-03-03'] : ['2026-03-02', '2026-03-09'];
    expect(days(await eventsOf('session')).slice(0, 2)).toEqual(expected);
  });

  it('ends its sessions the day before a limit begins that the doses do not know', async () => {
    await planned();
    await addLimit(setting.clinician, setting.patientId, {
      ...{ joint: 'right-knee', kind: 'load-limit', limitKg: 2, from: '2026-03-12', to: null },
      ...{ movement: null, fromDegrees: null, toDegrees: null, author: 'Dr Vance', remark: null },
    });
    expect(days(await eventsOf('session'))).toEqual(['2026-03-02', '2026-03-05', '2026-03-09']);
  });

  it('rings at the same hour by the clock of the clinic before and after its clocks change', async () => {
    await planned();
    const hours = new Map(
      (await eventsOf('session')).map(({ day, at }) => [day, new Date(at!).getUTCHours()]),
    );
    expect([hours.get('2026-03-26'), hours.get('2026-03-30')]).toEqual([17, 16]);
  });

  it('reminds nobody of exercising while a warning sign is open; mornings are still asked', async () => {
    await planned();
    await reportSign(setting.clinician, setting.patientId, {
      ...{
        source: 'telephone',
        flags: ['chest-pain'],
        joint: null,
        entryId: null,
        remark: null,
        reason: 'Rang',
      },
    });
    expect(await eventsOf('session')).toEqual([]);
    expect((await eventsOf('morning')).length).toBeGreaterThan(0);
  });

  it('has the review as booked, by the clock or for the whole day, and nothing of one taken back', async () => {
    let now = setting.clinician.now;
    const book = (day: string | null, time: string | null) => {
      now += 1;
      return bookReview({ ...setting.clinician, now }, setting.patientId, {
        day,
        time,
        place: time && 'Room 2',
      });
    };
    await book('2026-04-01', '10:30');
    expect(await eventsOf('review')).toMatchObject([
      { day: '2026-04-01', at: Date.parse('2026-04-01T09:30:00Z'), place: 'Room 2' },
    ]);
    await book('2026-04-02', null);
    expect(await eventsOf('review')).toMatchObject([{ day: '2026-04-02', at: null }]);
    await book(null, null);
    expect(await eventsOf('review')).toEqual([]);
  });

  it('says that something is to be measured, and never what, which joint or which exercise', async () => {
    await planned();
    await planRetest(setting.clinician, setting.patientId, {
      measure: 'range-of-movement',
      dueOn: '2026-03-20',
      everyDays: null,
    });
    expect(days(await eventsOf('retest'))).toEqual(['2026-03-20']);
    expect(JSON.stringify(await eventsOf())).not.toMatch(/knee|osteoarthritis|range|extension/i);
  });

  it('is empty where nothing is planned, and of nobody from another clinic', async () => {
    expect(await eventsOf()).toEqual([]);
    expect(await personCalendarOf(setting.stranger, setting.patientId, 'en')).toBeNull();
  });
});
