/** What is measured in an appointment at a distance says so wherever it is read; a wrong appointment is put right. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import { correctionsAt } from '../corrections/setting.ts';
import { type CareSetting, careSetting, firstDay } from './setting.ts';

let at: CareSetting;
let own: ReturnType<typeof correctionsAt>;
beforeEach(async () => {
  at = await careSetting();
  own = correctionsAt(at);
});
afterEach(() => at.store.close());

const video = { place: 'video', whereabouts: 'At home', callBackPhone: '910 000 000', present: [] };
const inPerson = { place: 'clinic', whereabouts: null, callBackPhone: null, present: [] };
const weight = (massKg: number, day = firstDay) => ({ kind: 'body-mass', day, massKg });
const standUps = (repetitions: number, day = firstDay) => ({
  kind: 'chair-stand-30s',
  day,
  stands: repetitions,
});
const clinic = (day = 0, time = '09:00') => at.clinician(day, time).clinician;
const begin = (visit: object, day = 0, time = '09:00') =>
  clinic(day, time).visits.begin({ patientId: at.patientId, visit });
const measure = (measurement: object, day = 0) =>
  clinic(day).measurements.record({ patientId: at.patientId, measurement, confirmed: true });
const taken = async () =>
  (await clinic().measurements.list({ patientId: at.patientId })).map(({ atDistance }) => atDistance);

describe('a measurement', () => {
  it('taken in an appointment by video or telephone is marked so; in person, or outside one, it is not', async () => {
    await measure(weight(70));
    await begin(video);
    await measure(weight(71));
    await begin({ ...video, place: 'telephone' });
    await measure(weight(72));
    await begin(inPerson);
    await measure(weight(73));
    expect(await taken()).toEqual([null, 'video', 'telephone', null]);
  });

  it('of an earlier day, entered during the call, is not said to be taken in it', async () => {
    await begin(video, 3);
    await measure(weight(70), 3);
    expect(await taken()).toEqual([null]);
  });

  it('that is put right keeps how it was taken', async () => {
    await begin(video);
    await measure(weight(71));
    await begin(inPerson);
    await own.correct('measurement', await own.newest('measurement'), weight(72));
    expect(await taken()).toEqual(['video']);
  });

  it('carries it into the course of care', async () => {
    await measure(standUps(8));
    await begin(video);
    await measure(standUps(11));
    const { measurements } = await clinic().outcomes.get({ patientId: at.patientId });
    const person = { sex: null, birthDay: '1958-06-01', errorGroup: null };
    const line = outcomeLines(measurements, [], person).find(({ kind }) => kind === 'chair-stand-30s');
    expect(line?.readings.map(({ atDistance }) => atDistance)).toEqual([undefined, 'video']);
  });
});

describe('an appointment begun by mistake', () => {
  const shown = async () => {
    const { now, visits } = await clinic().visits.list({ patientId: at.patientId });
    return { now: now?.place ?? null, visits: visits.map(({ place }) => place) };
  };
  const girth = {
    ...{ kind: 'limb-circumference', day: firstDay, limb: 'leg', side: 'right' },
    ...{ site: 'mid-thigh', circumferenceCm: 40 },
  };

  it('is struck out: it is no appointment of now, locks nothing, and nothing was taken by video', async () => {
    await begin(video);
    await measure(weight(71));
    await expect(measure(girth)).rejects.toThrow(/hands-on/);
    await own.correct('visit', await own.newest('visit'));
    expect(await shown()).toEqual({ now: null, visits: [] });
    expect(await taken()).toEqual([null]);
    await expect(measure(girth)).resolves.toBeDefined();
  });

  it('is replaced: what was measured in it was taken as the right entry says', async () => {
    await begin(inPerson);
    await measure(weight(71));
    await own.correct('visit', await own.newest('visit'), video);
    expect(await shown()).toEqual({ now: 'video', visits: ['video'] });
    expect(await taken()).toEqual(['video']);
    await own.correct('visit', (await clinic().visits.list({ patientId: at.patientId })).now!.id);
    expect(await taken()).toEqual([null]);
  });

  it('stays that of who held it, whoever puts it right, and on its own day', async () => {
    await begin(video);
    await own.correct('visit', await own.newest('visit'), inPerson, 2);
    const { now, visits } = await clinic(2).visits.list({ patientId: at.patientId });
    expect(now).toBeNull();
    expect(visits).toMatchObject([{ place: 'clinic', day: firstDay, heldName: 'clinician-a' }]);
  });

  it('with the one before it leaves that one as the appointment of now', async () => {
    await begin(inPerson);
    await begin(video, 0, '09:20');
    await own.correct('visit', await own.newest('visit'));
    expect(await shown()).toEqual({ now: 'clinic', visits: ['clinic'] });
  });
});
