/**
 * What may wait on phones of earlier releases, built from what each format is said to hold, against this server:
 * taken and kept under its own format, once; a format of a later release stays on the phone.
 */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { entryFormat } from '#core/record/entries.ts';
import type { Store } from '#data/database/store.ts';
import { morning, trainingSession, twoHours } from '#data/schema/schema.ts';
import { asPatient } from '#tests/support/callers.ts';
import { accessOf, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

const envelope = {
  day: '2026-03-02',
  zone: 'Europe/Lisbon',
  sentAt: start,
  redFlags: [],
  extraPainRelief: false,
};

/** A session of the format, with all that was new in it. */
const sessionOf = (format: number, set: { prescriptionId: string; itemId: string }) => ({
  ...{ format, entryId: `session-${format}`, ...envelope, kind: 'full' },
  ...{ beganAt: start - 3_600_000, endedAt: start - 2_400_000, stoppedByFlag: false },
  didExtra: format >= 2 ? null : false,
  ...(format >= 2 ? { news: ['fall'], otherJointWorse: false, enteredAs: 'relative' } : {}),
  ...(format >= 3 ? { limbChecks: [] } : {}),
  ...(format >= 5 ? { signsAsked: [{ moment: 'before', form: 'list', wording: null }], signSlips: [] } : {}),
  sets: [
    {
      ...{ ...set, set: 1, repetitions: 10, loadKg: 4, reserve: 2, stopReason: 'none' },
      ...(format >= 2 ? { easier: false } : {}),
    },
  ],
  joints: [
    {
      ...{ joint: 'right-knee', painBefore: 2, painDuring: 3, painAfter: 3, twoHoursState: 'asked' },
      ...{ muscleBurn: null, cuffDiscomfort: null, gaveWay: format >= 2 ? null : false },
    },
  ],
});

const morningOf = (format: number) => ({
  ...{ format, entryId: `morning-${format}`, ...envelope, answeredAt: start - 60_000 - format },
  ...{ fatigue: null, fatigueState: 'not-applicable' },
  ...(format >= 5 ? { via: 'asked' } : {}),
  ...(format >= 6 ? { otherJoint: 'not-worse' } : {}),
  joints: [
    {
      ...{ joint: 'right-knee', pain: 2, stiffnessMinutes: 10, stiffnessState: 'asked' },
      ...{ swelling: 'none', swellingState: 'asked', flare: false },
      ...(format >= 4 ? { swellingQuestion: 'more-than-usual' } : {}),
    },
  ],
});

const twoHoursOf = (format: number) => ({
  ...{ format, entryId: `later-${format}`, ...envelope },
  ...{ sessionEntryId: `session-${format}`, joint: 'right-knee', pain: 3 },
});

let store: Store;
let send: (kind: string, entry: object) => Promise<unknown>;
let set: { prescriptionId: string; itemId: string };
beforeEach(async () => {
  store = freshStore();
  const { clinician, patientId } = await twoClinics(store);
  const { prescriptionId, itemId } = await signedExercise(clinician, patientId);
  set = { prescriptionId, itemId };
  const api = asPatient(accessOf(store, 'a', 'patient'), patientId);
  send = (kind, entry) => api.patient.entries.send({ kind, entry } as never);
});
afterEach(() => store.close());

const formats = Array.from({ length: entryFormat }, (_, n) => n + 1);

describe('entries that wait on phones of earlier releases', () => {
  it.each(formats)('of format %i are taken, each kept once under its own format', async (format) => {
    const sent = [
      ['session', sessionOf(format, set)],
      ['two-hours', twoHoursOf(format)],
      ['morning', morningOf(format)],
    ] as const;
    for (const stored of ['stored', 'known'])
      for (const [kind, entry] of sent) expect(await send(kind, entry)).toMatchObject({ stored });
    for (const table of [trainingSession, twoHours, morning])
      expect(await store.read.select({ format: table.format }).from(table)).toEqual([{ format }]);
  });

  it('of a format of a later release are refused, so that the phone puts them aside and keeps them', async () => {
    const later = { ...sessionOf(entryFormat, set), format: entryFormat + 1 };
    await expect(send('session', later)).rejects.toMatchObject({ code: 'BAD_REQUEST' });
    expect(await store.read.select().from(trainingSession)).toEqual([]);
  });
});
