/** The four weeks of a row are kept on write, as facts with days; reading them later shows the days since. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { stripOf } from '#core/worklist/strip.ts';
import type { Access } from '#data/access.ts';
import type { Store } from '#data/database/store.ts';
import { worklistPage } from '#data/worklist/worklist.ts';
import { rebuildWorklist } from '#data/worklist/worklist-items.ts';
import { accessOf, type Setting, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { sendMorning } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';

const dayMs = 86_400_000;
const all = { after: null, limit: 50, kind: null, assignedTo: null } as const;

let store: Store;
let setting: Setting;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  await signedExercise(at(0), setting.patientId);
});
afterEach(() => store.close());

const at = (days: number): Access => accessOf(store, 'a', 'clinician-a', start + days * dayMs);
const factsAt = async (access: Access) =>
  (await worklistPage(access, all)).lines.find(({ patientId }) => patientId === setting.patientId)!.strip!;

describe('the four weeks of a row', () => {
  it('hold what was signed and answered, and agree with those rebuilt from the record', async () => {
    await sendMorning(at(1), setting.patientId, 4);
    const facts = await factsAt(at(8));
    expect(facts.versions).toMatchObject([{ signedOn: at(0).day, endedOn: null, share: 1 }]);
    expect(facts.mornings).toMatchObject([{ day: at(1).day, pain: 4 }]);
    await rebuildWorklist(at(8));
    expect(await factsAt(at(8))).toEqual(facts);
  });

  it('show on a later day what has not come since, though nothing was written meanwhile', async () => {
    await sendMorning(at(1), setting.patientId, 4);
    const facts = await factsAt(at(8));
    const missingOn = (days: number) =>
      stripOf({ today: at(days).day, about: null, ...facts }).days.filter(({ isMissing }) => isMissing)
        .length;
    expect([missingOn(2), missingOn(3), missingOn(8)]).toEqual([0, 1, 6]);
  });
});
