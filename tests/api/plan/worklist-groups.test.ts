/** The counts above the worklist, through the procedures. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { addPatient } from '#data/patients/people.ts';
import { accessOf, start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { workingPatient } from '#tests/support/working-patient.ts';

describe('the counts above the worklist', () => {
  let store: Store;
  let patientId: string;
  let work: ReturnType<typeof workingPatient>;
  beforeEach(async () => {
    store = freshStore();
    ({ patientId } = await twoClinics(store));
    work = workingPatient(store, patientId);
  });
  afterEach(() => store.close());

  const worklist = () => work.clinicianAt(start).clinician.worklist;
  const counts = async () =>
    Object.fromEntries((await worklist().groups()).counts.map(({ group, count }) => [group, count]));

  it('count each patient once, and name among nothing found nobody who was snoozed or never screened', async () => {
    await work.kept();
    await addPatient(accessOf(store, 'a', 'clinician-a'), {
      givenName: 'Never',
      familyName: 'Screened',
      birthDay: '1960-02-03',
      phone: null,
    });
    const before = await counts();
    // One screened and waiting for a signature; the one added here and one of the setting were never screened.
    expect([before['needs-you'], before['not-screened'], before['nothing-found']]).toEqual([1, 2, 0]);
    const { lines } = await worklist().list({});
    for (const { key } of [lines[0]!.item, ...lines[0]!.others])
      await worklist().snooze({ patientId, key, until: '2026-03-05', reason: 'On leave' });
    const after = await counts();
    expect([after['needs-you'], after.snoozed, after['nothing-found']]).toEqual([0, 1, 0]);
    const total = Object.values(after).reduce((sum, count) => sum + count, 0);
    expect(total).toBe(3);
  });

  it('open as a list by name, from which what was snoozed comes back at once', async () => {
    await work.kept();
    const { lines } = await worklist().list({});
    for (const { key } of [lines[0]!.item, ...lines[0]!.others])
      await worklist().snooze({ patientId, key, until: '2026-03-05', reason: 'On leave' });
    const [line] = (await worklist().groups({ group: 'snoozed' })).lines;
    expect([line?.patientId, line?.until]).toEqual([patientId, '2026-03-05']);
    await worklist().unsnooze({ patientId, keys: [...line!.snoozedKeys] });
    expect((await counts())['needs-you']).toBe(1);
    expect((await worklist().list({})).lines).toHaveLength(1);
  });

  it('count a patient paused until a day as paused, and from that day on among those who need somebody', async () => {
    await work.signed();
    const pause = { cause: 'holiday', joint: null, reason: 'By the sea.', until: '2026-03-17' };
    const at = (day: string) => work.clinicianAt(Date.parse(`${day}T09:00:00Z`)).clinician;
    await at('2026-03-03').danger.pause({ patientId, pause });
    const groupOn = async (day: string) => {
      const { counts: now } = await at(day).worklist.groups();
      return now.find(
        ({ group, count }) => count > 0 && ['paused', 'needs-you', 'nothing-found'].includes(group),
      );
    };
    expect(await groupOn('2026-03-04')).toMatchObject({ group: 'paused', count: 1, until: '2026-03-17' });
    expect(await groupOn('2026-03-17')).toMatchObject({ group: 'needs-you', count: 1 });
  });
});
