/** A session that was sent is put right on the same day: the engine decides anew, and both versions are seen. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { SessionEntry } from '#core/record/entries.ts';
import type { Store } from '#data/database/store.ts';
import { twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs, workingPatient } from '#tests/support/working-patient.ts';
import { amending, putRight } from '#ui/patient/correcting/correction.ts';

let store: Store;
let patientId: string;
let work: ReturnType<typeof workingPatient>;
const evening = Date.parse('2026-03-02T18:00:00Z');
const later = evening + 30 * 60_000;

beforeEach(async () => {
  store = freshStore();
  ({ patientId } = await twoClinics(store));
  work = workingPatient(store, patientId);
  await work.signed();
  await work.didSession(evening, { before: 2, during: 3, after: 2 });
});
afterEach(() => store.close());

const sentAt = async (at: number) => (await work.patientAt(at).patient.today.get()).sent ?? null;
const send = (at: number, entry: SessionEntry) =>
  work.patientAt(at).patient.entries.send({ kind: 'session', entry });
const correct = async (at: number, entryId = 'corrected') => {
  const sent = (await sentAt(at))!;
  const during = putRight(sent.entry, { what: 'during', joint: 'right-knee' }, 7);
  const entry = putRight(during, { what: 'set', index: 1 }, 12);
  await send(at, amending(sent, entry, { entryId, now: at, enteredAs: null }));
};

describe('what was sent today', () => {
  it('comes back with the day as it was sent, and with the names of its exercises', async () => {
    const sent = await sentAt(later);
    expect(sent?.entry).toMatchObject({
      entryId: `s-${evening}`,
      redFlags: [],
      didExtra: false,
      stoppedByFlag: false,
      joints: [
        { joint: 'right-knee', painBefore: 2, painDuring: 3, painAfter: 2, muscleBurn: 5, gaveWay: false },
      ],
    });
    expect(sent?.entry.sets.map(({ set, repetitions, loadKg }) => [set, repetitions, loadKg])).toEqual([
      [1, 20, 3],
      [2, 20, 3],
      [3, 20, 3],
    ]);
    expect(Object.values(sent?.titles ?? {})).toEqual([{ en: expect.any(String), de: expect.any(String) }]);
  });

  it('keeps open what was left open', async () => {
    const { entry } = (await sentAt(later))!;
    const open = {
      ...entry,
      entryId: 'open',
      didExtra: null,
      joints: entry.joints.map((row) => ({ ...row, gaveWay: null, painAfter: null })),
    };
    await send(
      later,
      amending({ entry, titles: {} }, open, { entryId: 'open', now: later, enteredAs: null }),
    );
    expect((await sentAt(later))?.entry).toMatchObject({
      didExtra: null,
      joints: [{ gaveWay: null, painAfter: null }],
    });
  });

  it('is not opened again on the next day, nor once a warning sign was told with it', async () => {
    expect(await sentAt(evening + dayMs)).toBeNull();
    const { entry } = (await sentAt(later))!;
    await send(later, { ...entry, entryId: 'with-sign', redFlags: ['dark-urine'], sentAt: later });
    expect(await sentAt(later)).toBeNull();
  });
});

describe('a corrected session', () => {
  it('stands in the place of the one sent, and is decided anew', async () => {
    const words = async (at: number) =>
      (await work.clinicianAt(at).clinician.review.get({ patientId })).decisions.map(({ cause, reasons }) => [
        cause,
        reasons.some(({ rule }) => rule === 'P2'),
      ]);
    expect((await words(later)).at(-1)).toEqual(['session', false]);
    await correct(later);
    expect((await words(later)).at(-1)).toEqual(['amendment', true]);
    expect((await sentAt(later))?.entry).toMatchObject({
      entryId: 'corrected',
      amends: `s-${evening}`,
      joints: [{ painDuring: 7 }],
    });
    const review = await work.clinicianAt(later).clinician.review.get({ patientId });
    expect(review.record.sessions).toHaveLength(1);
  });

  it('is seen by the clinician beside what was sent before', async () => {
    await correct(later);
    const { corrected } = await work.clinicianAt(later).clinician.review.get({ patientId });
    expect(corrected).toEqual([
      {
        day: '2026-03-02',
        changes: [
          expect.objectContaining({ what: 'repetitions', set: 2, from: 20, to: 12 }),
          expect.objectContaining({ what: 'pain-during', joint: 'right-knee', from: 3, to: 7 }),
        ],
      },
    ]);
  });

  it('can be corrected once more, and what is sent twice is kept once', async () => {
    await correct(later);
    const sent = (await sentAt(later))!;
    const entry = amending(sent, putRight(sent.entry, { what: 'extra' }, true), {
      entryId: 'again',
      now: later,
      enteredAs: null,
    });
    expect((await send(later, entry)).stored).toBe('stored');
    expect((await send(later, entry)).stored).toBe('known');
    expect((await sentAt(later))?.entry).toMatchObject({
      entryId: 'again',
      amends: 'corrected',
      didExtra: true,
    });
  });

  it('is refused on another day, and the one sent stands', async () => {
    const sent = (await sentAt(later))!;
    const at = evening + dayMs;
    const entry = amending(sent, putRight(sent.entry, { what: 'extra' }, true), {
      entryId: 'late',
      now: at,
      enteredAs: null,
    });
    await expect(send(at, entry)).rejects.toThrow();
    const review = await work.clinicianAt(at).clinician.review.get({ patientId });
    expect(review.record.sessions[0]?.didExtra).toBe(false);
    expect(review.corrected).toEqual([]);
  });
});
