/** What was seen of fingers or toes, from the phone to the review. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { LimbCheck } from '#core/prescribing/occlusion/limb-check.ts';
import type { Store } from '#data/database/store.ts';
import { recordOf } from '#data/patients/record.ts';
import { trainingSession, worklistItem } from '#data/schema/schema.ts';
import { asClinician, asPatient } from '#tests/support/callers.ts';
import {
  accessOf,
  type Setting,
  sessionEntry,
  signedExercise,
  start,
  twoClinics,
} from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  await signedExercise(setting.clinician, setting.patientId);
});
afterEach(() => store.close());

const check = (over: Partial<LimbCheck> = {}): LimbCheck => ({
  itemId: 'line',
  moment: 'after',
  colour: 'usual',
  feeling: null,
  pulse: null,
  pulseState: 'not-shown',
  ...over,
});

const send = (entry: object) =>
  asPatient(accessOf(store, 'a', 'patient'), setting.patientId).patient.entries.send({
    kind: 'session',
    entry,
  });
const shown = async () =>
  (await asClinician(setting.clinician).clinician.review.get({ patientId: setting.patientId })).limbChecks;

describe('a look at fingers or toes', () => {
  it('comes back to the review as it was sent: answered, not known, never shown', async () => {
    const entry = sessionEntry({ entryId: 'e', limbChecks: [check()] });
    expect(await send(entry)).toMatchObject({ stored: 'stored' });
    // Sent twice it is one; a further session without a cuff adds nothing.
    expect(await send(entry)).toMatchObject({ stored: 'known' });
    await send(sessionEntry({ entryId: 'none', beganAt: start - 3_600_000, limbChecks: [] }));
    expect(await shown()).toEqual([{ ...check(), day: entry.day, sessionId: expect.any(String) }]);
  });

  it('of an entry that was amended is left out', async () => {
    await send(sessionEntry({ entryId: 'e', limbChecks: [check()] }));
    await send(sessionEntry({ entryId: 'f', amends: 'e', limbChecks: [check({ feeling: 'usual' })] }));
    expect((await shown()).map(({ feeling }) => feeling)).toEqual(['usual']);
  });

  it('is the patient’s own: another clinic is shown nothing of it', async () => {
    await send(sessionEntry({ entryId: 'e', limbChecks: [check()] }));
    const { stranger, strangerPatientId } = setting;
    const other = await asClinician(stranger).clinician.review.get({ patientId: strangerPatientId });
    expect(other.limbChecks).toEqual([]);
  });

  it.each([
    ['of a format before, without it', { format: 2 }],
    ['with none', { limbChecks: [] }],
  ])('an entry %s is taken and stands as missing', async (_, over) => {
    const { limbChecks: __, ...entry } = sessionEntry({ entryId: 'e' });
    expect(await send({ ...entry, ...over })).toMatchObject({ stored: 'stored' });
    const [row] = await store.read.select().from(trainingSession);
    expect(row?.limbChecks).toBeNull();
    expect(await shown()).toEqual([]);
  });

  it('with an answer to a pulse that was never shown is refused', async () => {
    await expect(
      send(sessionEntry({ entryId: 'e', limbChecks: [check({ pulse: 'usual' })] })),
    ).rejects.toThrow(/pulse that was not asked about/);
  });
});

describe('no pulse ten minutes after release', () => {
  it.each([
    ['no pulse', { pulse: 'not-usual', pulseState: 'asked' }],
    ['white toes', { colour: 'not-usual' }],
  ] as const)('%s is a red flag on the worklist, even where the phone ticked none', async (_, over) => {
    const limbChecks = [check(), check({ moment: 'later', ...over })];
    await send(sessionEntry({ entryId: 'e', redFlags: [], limbChecks }));
    const [session] = (await recordOf(setting.clinician, setting.patientId))?.sessions ?? [];
    expect(session?.redFlags).toEqual(['persistent-limb-change-after-release']);
    expect((await store.read.select().from(worklistItem)).map(({ kind }) => kind)).toContain('red-flag');
  });
});
