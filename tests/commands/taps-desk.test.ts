/** The round at the desk that `taps --desk` counts: one patient for each thing to do, and nothing else in the way. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type StoredVisit, visitDiffers } from '#commands/team/taps/desk-first-visit-stored.ts';
import { deskPaths } from '#commands/team/taps/desk-paths.ts';
import { deskPeople, whatWaits } from '#commands/team/taps/desk-people.ts';
import { storedDoseDiffers } from '#commands/team/taps/desk-prescribe.ts';
import { fill, tapsNow } from '#commands/team/taps/people.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';
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
      ...[0, 1].map(() =>
        expect.stringMatching(/^not in the file: three consents, the diagnosis, .*one invitation$/),
      ),
    ]);
  });
});

describe('a first visit at the desk', () => {
  const items = minimumSet('low-load', 64).map(({ id }) => id);
  const stored: StoredVisit = {
    consents: ['record-keeping', 'remote-monitoring', 'treatment'],
    diagnosis: 'Knee osteoarthritis, right',
    followedJoints: ['right-knee'],
    loadsKg: [1, 2, 3, 4, 5],
    things: ['firm chair', 'ankle weight'],
    goals: ['Get up from the floor'],
    usualPain: 3,
    answers: items.map((item) => ({ item, answer: 'no' })),
    measured: ['blood-pressure', 'repetitions-to-failure'],
    doses: [{ method: 'low-load', loadKg: 4, signedName: 'Nuala Derravane' }],
    days: [1, 4],
    invitations: 1,
  };
  const without = (over: Partial<StoredVisit>) => visitDiffers({ ...stored, ...over }, []);

  it('is whole where all of it is stored', () => {
    expect(without({})).toBeNull();
  });

  it.each([
    ['three consents', { consents: ['treatment', 'remote-monitoring'] }],
    [
      'each question with its answer',
      { answers: stored.answers.slice(1).concat({ item: 'none', answer: 'no' }) },
    ],
    ['no question that was not asked', { answers: [...stored.answers, { item: 'lymph', answer: 'no' }] }],
    ['blood pressure and test', { measured: ['repetitions-to-failure'] }],
    ['one low-load dose signed by name', { doses: [] }],
    ['a load that is owned', { doses: [{ ...stored.doses[0]!, loadKg: 3.5 }] }],
    ['its days', { days: [1] }],
    ['one invitation', { invitations: 0 }],
  ])('is a fault where the file lacks %s', (missing, over) => {
    expect(without(over)).toContain(missing);
  });

  it('is a fault where a finding is stored without what was named of it', () => {
    const clot = { item: 'past-clot', details: ['earlier-not-treated'] };
    const answers = stored.answers.map((one) => (one.item === 'past-clot' ? { ...one, answer: 'yes' } : one));
    const said = (details: readonly string[]) =>
      visitDiffers(
        { ...stored, answers: answers.map((one) => (one.answer === 'yes' ? { ...one, details } : one)) },
        [clot],
      );
    expect(said(clot.details)).toBeNull();
    expect(said([])).toBe('not in the file: what was named of each finding');
    expect(visitDiffers(stored, [clot])).toContain('each question with its answer');
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
