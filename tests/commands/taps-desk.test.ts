/** The round at the desk that `taps --desk` counts: one patient for each thing to do, and nothing else in the way. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { deskPaths } from '#commands/team/taps/desk-paths.ts';
import { deskPeople, whatWaits } from '#commands/team/taps/desk-people.ts';
import { storedDoseDiffers } from '#commands/team/taps/desk-prescribe.ts';
import { fill, tapsNow } from '#commands/team/taps/people.ts';
import { openStore } from '#data/open-store.ts';
import { demoClinic } from '#demo/clinic.ts';
import { asClinician } from '#tests/support/callers.ts';
import { auditKey } from '#tests/support/clinic.ts';
import { primaryOf } from '#ui/clinician/worklist/item-place.ts';

let folder: string;
let file: string;
beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'loadgate-desk-'));
  file = path.join(folder, 'clinic.sqlite');
  await fill(file, '3000', deskPeople, whatWaits);
}, 240_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the round at the desk', () => {
  it('has for each patient the action that its path takes', async () => {
    const store = openStore(file);
    try {
      const { lines } = await asClinician({
        store,
        auditKey,
        clinicId: demoClinic.id,
        actorId: 'somebody',
        actorName: 'Somebody',
        now: Date.parse(tapsNow),
        day: tapsNow.slice(0, 10),
      }).clinician.worklist.list();
      const acts = lines.map((line) => [
        line.patientId,
        line.item.kind,
        primaryOf(line).act,
        line.doses.length,
      ]);
      expect(acts).toEqual([
        ['desk-sign', 'red-flag', 'contact', 0],
        ['desk-dose', 'awaiting-signature', 'sign', 1],
        ['desk-dose-too', 'awaiting-signature', 'sign', 1],
        ['desk-week', 'awaiting-signature', 'sign', 2],
        ['desk-silent', 'missing-answers', 'go', 0],
        ['desk-message', 'message', 'reply', 0],
        ['desk-review', 'review-day', 'go', 0],
      ]);
      expect(lines.flatMap(({ doses }) => doses.map(({ newCautions }) => newCautions))).toEqual([
        [],
        [],
        [],
        [],
      ]);
    } finally {
      store.close();
    }
  });

  it('finds before anything is done that nothing of it stands in the file', () => {
    expect(deskPaths.map(({ differs }) => differs(file))).toEqual([
      'not in the file: a contact that reached the patient, the morning with its pain, two signatures, the reply, the day it is snoozed to',
      'not in the file: two signatures',
      'not in the file: one new version beside the one before it, a low-load dose written by a clinician, the load that was typed, every other figure as it was, an easier session that is no heavier, its joints, its cautions, none fewer, its working, a signature by name',
    ]);
  });
});

describe('a new dose at the desk', () => {
  const version = {
    dose: JSON.stringify({ sets: 3, loadKg: 3 }),
    badDay: JSON.stringify({ loadKg: 3 }),
    method: 'low-load',
    origin: 'clinician',
    joints: 2,
    cautions: 10,
    working: 4,
    signedName: 'Nuala Derravane',
  };
  const written = { ...version, dose: JSON.stringify({ sets: 3, loadKg: 3.5 }) };

  it('is whole where all that a signature rests on is stored', () => {
    expect(storedDoseDiffers([version, written])).toBeNull();
  });

  it.each([
    ['the load that was typed', { dose: version.dose }],
    ['every other figure as it was', { dose: JSON.stringify({ sets: 2, loadKg: 3.5 }) }],
    ['an easier session that is no heavier', { badDay: JSON.stringify({ loadKg: 4 }) }],
    ['an easier session that is no heavier', { badDay: '{}' }],
    ['its joints', { joints: 0 }],
    ['its cautions, none fewer', { cautions: 9 }],
    ['its working', { working: 0 }],
    ['a signature by name', { signedName: null }],
    ['a low-load dose written by a clinician', { origin: 'progress' }],
  ])('is a fault where the file lacks %s', (missing, change) => {
    expect(storedDoseDiffers([version, { ...written, ...change }])).toBe(`not in the file: ${missing}`);
  });
});
