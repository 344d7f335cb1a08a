/** A warning sign, or a note, told from the phone outside a session and a morning check. */
import { randomUUID } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { workingPatient } from '#tests/support/working-patient.ts';
import { noteOf, nothingSaid, signEntry } from '#ui/patient/changed/change-draft.ts';
import { messageEntry } from '#ui/patient/outbox/entry-kinds.ts';
import '#ui/patient/words.ts';
import '#ui/patient/asked-words.ts';
import '#ui/patient/today/seldom-words.ts';

let store: Store;
let patientId: string;
let work: ReturnType<typeof workingPatient>;
beforeEach(async () => {
  store = freshStore();
  ({ patientId } = await twoClinics(store));
  work = workingPatient(store, patientId);
  await work.signed();
});
afterEach(() => store.close());

const day = '2026-03-02';
const send = (kind: 'sign' | 'message', entry: unknown) =>
  work.patientAt(start).patient.entries.send({ kind, entry });
const today = () => work.patientAt(start).patient.today.get();
const kinds = async () =>
  (await work.clinicianAt(start).clinician.worklist.list()).lines.map(({ item }) => item.kind);

describe('a warning sign told at any hour', () => {
  it('opens a warning sign for the clinic, stops every exercise and is known to the page', async () => {
    const entryId = randomUUID();
    expect(await send('sign', signEntry({ entryId, day }, ['calf-pain-swelling']))).toMatchObject({
      stored: 'stored',
    });
    const page = await today();
    expect(page).toMatchObject({ isStopped: true, contact: 'same-day' });
    expect(page.knownEntryIds).toContain(entryId);
    expect(page.exercises.map((one) => one.today)).toEqual(page.exercises.map(() => 'none'));
    expect(await kinds()).toContain('red-flag');
  });

  it('sent twice opens one', async () => {
    const entry = signEntry({ entryId: randomUUID(), day }, ['fainting']);
    expect((await send('sign', entry)).stored).toBe('stored');
    expect((await send('sign', entry)).stored).toBe('known');
    expect((await kinds()).filter((kind) => kind === 'red-flag')).toHaveLength(1);
  });

  it.each([
    ['without a sign', { entryId: randomUUID(), day, redFlags: [] }],
    ['with a sign nobody knows', { entryId: randomUUID(), day, redFlags: ['tired'] }],
    ['without an id', { day, redFlags: ['fainting'] }],
  ])('%s is refused, and nothing is opened', async (_how, entry) => {
    await expect(send('sign', entry)).rejects.toThrow();
    expect((await today()).isStopped).toBe(false);
  });
});

describe('a change without a warning sign', () => {
  it('that sits in no place reaches the clinic so, apart from one whose place is not known', async () => {
    for (const place of ['nowhere', 'unknown'] as const) {
      const text = noteOf({ ...nothingSaid, place, began: 'days' });
      await send('message', messageEntry({ entryId: randomUUID(), day }, text));
    }
    const { patientMessages } = await work.clinicianAt(start).clinician.review.get({ patientId });
    expect(patientMessages.map(({ text }) => text).sort()).toEqual([
      'Something has changed. Where: I don’t know. Began: Some days ago.',
      'Something has changed. Where: Nowhere in particular. Began: Some days ago.',
    ]);
  });

  it('is a dated note of the patient among the messages, and a line of the worklist', async () => {
    const text = noteOf({ ...nothingSaid, place: 'right-knee', began: 'yesterday', text: 'It clicks.' });
    expect((await send('message', messageEntry({ entryId: randomUUID(), day }, text))).stored).toBe('stored');
    const { patientMessages } = await work.clinicianAt(start).clinician.review.get({ patientId });
    expect(patientMessages).toEqual([
      expect.objectContaining({
        text: 'Something has changed. Where: Right knee. Began: Yesterday. It clicks.',
        recordedAt: start,
      }),
    ]);
    expect(await kinds()).toContain('message');
    expect((await today()).isStopped).toBe(false);
  });
});
