import { describe, expect, it } from 'vitest';
import { subscribe } from '#data/changed.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { openFile } from '#data/database/store.ts';
import { addEvent, eventsOf } from '#data/episode/care-events.ts';
import { accessOf, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

const event = { day: '2026-03-02', kind: 'fall', joint: null, remark: null } as const;

/** A store with two clinics, opened a second time with nobody to hear of its changes. */
const unheard = async () => {
  const first = freshStore();
  const { clinician, patientId } = await twoClinics(first);
  const store = openFile(first.file);
  return { outside: clinician, access: accessOf(store, 'a', 'clinician-a'), patientId };
};

describe('a change of a record', () => {
  it('is refused where nobody has subscribed, and nothing is written', async () => {
    const { access, patientId } = await unheard();
    await expect(addEvent(access, patientId, event)).rejects.toThrow('Nobody has subscribed');
    expect(await eventsOf(access, patientId)).toEqual([]);
  });

  it('reaches each subscriber once, in the order they came, inside the write and before its commit', async () => {
    const { outside, access, patientId } = await unheard();
    const raised: unknown[] = [];
    for (const name of ['first', 'second']) {
      subscribe(access.store, {
        name,
        patientChanged: async (inside, id) => {
          const seen = [(await eventsOf(inside, id)).length, (await eventsOf(outside, id)).length];
          raised.push([name, id, ...seen]);
        },
        clinicChanged: async ({ clinicId }) => {
          raised.push([name, clinicId]);
        },
      });
    }
    await access.store.write(async () => {
      await addEvent(access, patientId, event);
      await addEvent(access, patientId, event);
      await saveSettings(access, {}, 'Nothing differs.');
      expect(raised).toEqual([]);
    });
    expect(raised).toEqual([
      ['first', patientId, 2, 0],
      ['second', patientId, 2, 0],
      ['first', 'a'],
      ['second', 'a'],
    ]);
  });
});
