/** The worklist kept on write and the one rebuilt from the record agree, also over the care around the dose. */

import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { proposedWording } from '#core/episode/consent.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { addStaff } from '#data/accounts/staff.ts';
import { nameCoveringClinician } from '#data/clinic/covering-clinicians.ts';
import type { Store } from '#data/database/store.ts';
import { takeSession } from '#data/entries/take-entry.ts';
import { addEvent } from '#data/episode/care-events.ts';
import { recordConsent } from '#data/episode/consents.ts';
import { applyEpisodeChange } from '#data/episode/episode-changes.ts';
import { episodesOf, openEpisode } from '#data/episode/episodes.ts';
import { addLimit, liftLimit, limitsOf } from '#data/episode/limits-and-pre-approvals.ts';
import { worklistItem } from '#data/schema/schema.ts';
import { recordPreVisit } from '#data/screening/pre-visits.ts';
import { recordAnswers, recordScreening } from '#data/screening/screenings.ts';
import { handleWorklistItem } from '#data/worklist/handle-worklist-item.ts';
import { worklistPage } from '#data/worklist/worklist.ts';
import { rebuildWorklist, rebuiltWorklistItems } from '#data/worklist/worklist-items.ts';
import { accessOf, sessionEntry, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { drawSeed, rounds } from '#tests/support/drawn-rounds.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let patientId: string;
let coveringId: string;
const dayMs = 86_400_000;
const at = (hours: number): Access => accessOf(store, 'a', 'clinician-a', start + hours * 3_600_000);

const begin = async () => {
  store = freshStore();
  const setting = await twoClinics(store);
  patientId = setting.patientId;
  await signedExercise(setting.clinician, patientId);
  const added = await addStaff(setting.clinician, {
    name: 'Covering Clinician',
    email: 'covering@test.invalid',
    role: 'clinician',
    administers: false,
  });
  coveringId = added!.userId;
};
beforeEach(begin);
afterEach(() => store.close());

const newEpisode = {
  diagnoses: ['Knee osteoarthritis'],
  joints: ['right-knee'],
  followedJoints: ['right-knee'],
  goals: [],
  referrer: null,
  contacts: [],
} as const;

const become = async (access: Access, to: 'active' | 'on-break' | 'discharged') => {
  const episode = (await episodesOf(access, patientId)).at(-1);
  if (!episode) return;
  await applyEpisodeChange(access, patientId, episode.id, {
    to,
    on: access.day,
    reason: 'Random',
    breakKind: to === 'on-break' ? 'holiday' : null,
    expectedBack: to === 'on-break' ? addDays(access.day, 3) : null,
  });
};

const acts: Readonly<Record<string, (access: Access) => Promise<unknown>>> = {
  open: (access) => openEpisode(access, patientId, newEpisode, 'Random'),
  begin: (access) => become(access, 'active'),
  rest: (access) => become(access, 'on-break'),
  end: (access) => become(access, 'discharged'),
  limit: (access) =>
    addLimit(access, patientId, {
      joint: 'right-knee',
      kind: 'load-limit',
      limitKg: 2,
      from: addDays(access.day, 1),
      to: addDays(access.day, 3),
      author: 'Surgeon',
      remark: null,
    }),
  lift: async (access) => {
    const last = (await limitsOf(access, patientId)).at(-1);
    if (last) await liftLimit(access, patientId, last.id, 'Random');
  },
  ill: (access) =>
    addEvent(access, patientId, { day: access.day, kind: 'illness', joint: null, remark: null }),
  medicine: (access) =>
    addEvent(access, patientId, {
      day: access.day,
      kind: 'medicine-change',
      joint: null,
      remark: null,
      medicine: { act: 'start', medicineClass: 'insulin-or-sulfonylurea' },
    }),
  again: async (access) => {
    const person = { id: patientId, birthDay: '1960-01-01' };
    const answers = (['medicines', 'diabetes'] as const).map((item) => ({ item, answer: 'no' as const }));
    await recordAnswers(access, person, { sheetVersion: '1', answers }, true);
  },
  screen: (access) =>
    recordScreening(access, patientId, { sheetVersion: '1', answers: [{ item: 'diabetes', answer: 'no' }] }),
  answer: (access) =>
    recordPreVisit(access, patientId, { sheetVersion: '1', answers: [{ item: 'diabetes', answer: 'no' }] }),
  withdraw: (access) =>
    recordConsent(access, patientId, {
      kind: 'occlusion-supervised',
      act: 'withdrawn',
      ...proposedWording,
      recordedVia: 'clinician',
      reason: null,
    }),
  danger: (access) =>
    takeSession(
      access,
      patientId,
      sessionEntry({
        entryId: `danger-${access.now}`,
        beganAt: access.now - 600_000,
        endedAt: access.now - 60_000,
        sentAt: access.now,
        day: access.day,
        redFlags: ['chest-pain'],
        joints: [],
      }),
    ),
  take: (access) =>
    handleWorklistItem(access, patientId, {
      key: 'decision right-knee',
      act: 'assign',
      until: null,
      assignee: { id: 'clinician-a', name: 'A' },
      reason: '',
    }),
  name: (access) => nameCoveringClinician(access, coveringId),
  nobody: (access) => nameCoveringClinician(access, null),
};

/** An episode with a break and a medicine, so that neither hangs on the draw. */
const onABreak = ['open', 'medicine', 'again', 'rest'].map((act) => ({ act, hours: 2 }));

const sorted = <R extends { readonly key: string }>(rows: readonly R[]) =>
  [...rows].sort((a, b) => (a.key < b.key ? -1 : 1));

describe('the worklist over the care around the dose', () => {
  it('kept on write is the one rebuilt, now and twenty days later with no write in between', async () => {
    const history = fc.array(
      fc.record({ act: fc.constantFrom(...Object.keys(acts)), hours: fc.integer({ min: 1, max: 40 }) }),
      { minLength: 5, maxLength: 16 },
    );
    const seen = new Set<string>();
    await fc.assert(
      fc.asyncProperty(history, async (steps) => {
        store.close();
        await begin();
        let hours = 0;
        for (const step of steps) {
          hours += step.hours;
          await acts[step.act]!(at(hours));
        }
        const stored = await store.read.select().from(worklistItem);
        for (const row of stored) seen.add(row.kind);
        const rebuilt = await rebuiltWorklistItems(at(hours));
        expect(sorted(stored)).toEqual(sorted(rebuilt.map((row) => ({ snoozedUntil: null, ...row }))));
        const later = at(hours + 20 * 24);
        const shown = async () =>
          (await worklistPage(later, { after: null, limit: 50, kind: null, assignedTo: null })).lines;
        const before = await shown();
        await rebuildWorklist(later);
        expect(await shown()).toEqual(before);
      }),
      { seed: drawSeed, numRuns: rounds(11, 80), examples: [[onABreak]] },
    );
    const ours = ['danger-passed', 'event-review', 'pre-visit-answers', 'limit-ended', 'break-over'];
    expect(ours.filter((kind) => !seen.has(kind))).toEqual([]);
  }, 300_000);

  it('an untouched patient has no item of care', async () => {
    const rows = await rebuiltWorklistItems(accessOf(store, 'a', 'clinician-a', start + dayMs));
    expect(rows.map(({ kind }) => kind)).not.toContain('event-review');
    expect(rows.map(({ kind }) => kind)).not.toContain('limit-ended');
  });
});

describe('the file itself', () => {
  it.each([
    [
      'a break without its kind',
      "INSERT INTO episode_change (id, clinic_id, patient_id, recorded_at, recorded_by, by_name, episode_id, state, on_day, reason, closed_items) VALUES ('c', 'a', 'P', 0, 'x', 'x', 'e', 'on-break', '2026-03-02', 'r', '[]')",
    ],
    [
      'a remote visit without a call-back number',
      "INSERT INTO visit (id, clinic_id, patient_id, recorded_at, recorded_by, by_name, held_by, held_name, day, place, present) VALUES ('v', 'a', 'P', 0, 'x', 'x', 'x', 'x', '2026-03-02', 'video', '[]')",
    ],
    [
      'a wrap opened without a reason',
      "INSERT INTO home_check (id, clinic_id, patient_id, recorded_at, recorded_by, by_name, limb, side, day, releases_with_left_hand, releases_with_right_hand, feeling_intact, knows_to_release, wrap_opened) VALUES ('h', 'a', 'P', 0, 'x', 'x', 'leg', 'left', '2026-03-02', 1, 1, 1, 1, 1)",
    ],
    [
      'an agreement of an unknown kind',
      "INSERT INTO consent (id, clinic_id, patient_id, recorded_at, recorded_by, by_name, kind, act, wording_source, wording_version, recorded_via) VALUES ('k', 'a', 'P', 0, 'x', 'x', 'anything', 'given', 'proposed', 1, 'clinician')",
    ],
    [
      'degrees of a limit without their movement',
      "INSERT INTO care_limit (id, clinic_id, patient_id, recorded_at, recorded_by, joint, kind, from_degrees, to_degrees, from_day, author) VALUES ('l', 'a', 'P', 0, 'x', 'right-knee', 'range', 0, 60, '2026-03-02', 'x')",
    ],
    [
      'a movement of a limit without degrees',
      "INSERT INTO care_limit (id, clinic_id, patient_id, recorded_at, recorded_by, joint, kind, movement, from_day, author) VALUES ('l', 'a', 'P', 0, 'x', 'right-knee', 'range', 'flexion', '2026-03-02', 'x')",
    ],
    [
      'degrees of a limit that is not on range',
      "INSERT INTO care_limit (id, clinic_id, patient_id, recorded_at, recorded_by, joint, kind, movement, from_degrees, to_degrees, from_day, author) VALUES ('l', 'a', 'P', 0, 'x', 'right-knee', 'no-impact', 'flexion', 0, 60, '2026-03-02', 'x')",
    ],
    [
      'a range that ends before it begins',
      "INSERT INTO care_limit (id, clinic_id, patient_id, recorded_at, recorded_by, joint, kind, movement, from_degrees, to_degrees, from_day, author) VALUES ('l', 'a', 'P', 0, 'x', 'right-knee', 'range', 'flexion', 61, 60, '2026-03-02', 'x')",
    ],
    [
      'a movement nobody knows',
      "INSERT INTO care_limit (id, clinic_id, patient_id, recorded_at, recorded_by, joint, kind, movement, from_degrees, to_degrees, from_day, author) VALUES ('l', 'a', 'P', 0, 'x', 'right-knee', 'range', 'twist', 0, 60, '2026-03-02', 'x')",
    ],
  ])('refuses %s', async (_name, insert) => {
    await openEpisode(at(0), patientId, newEpisode, 'Test');
    expect(() => store.writer.client.exec(insert.replace("'P'", `'${patientId}'`))).toThrow(/CHECK/);
  });
});
