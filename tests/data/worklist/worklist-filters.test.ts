/** Whom the worklist shows to whom: teams, sites, colleagues; and the items of messages and booked reviews. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { sentenceOf } from '#core/worklist/sentences.ts';
import type { Access } from '#data/access.ts';
import { addStaff } from '#data/accounts/staff.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { addSite } from '#data/clinic/sites.ts';
import type { Store } from '#data/database/store.ts';
import { sendMessage } from '#data/messages/messages.ts';
import { sendPatientMessage } from '#data/messages/patient-messages.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { setSite } from '#data/patients/patient-sites.ts';
import { bookReview } from '#data/review/review-bookings.ts';
import { handleWorklistItem, takeBack } from '#data/worklist/handle-worklist-item.ts';
import { worklistPage } from '#data/worklist/worklist.ts';
import { rebuiltWorklistItems } from '#data/worklist/worklist-items.ts';
import { asClinician } from '#tests/support/callers.ts';
import { accessOf, type Setting, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';

const dayMs = 86_400_000;
const all = { after: null, limit: 50, kind: null, assignedTo: null } as const;

let store: Store;
let setting: Setting;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
});
afterEach(() => store.close());

const at = (days: number): Access => accessOf(store, 'a', 'clinician-a', start + days * dayMs);
const kinds = async (access: Access) =>
  (await worklistPage(access, all)).lines.flatMap((line) => line.worklistItems.map((one) => one.kind));

const clinicianNamed = async (name: string) => {
  const person = { name, email: `${name}@test.invalid`, role: 'clinician', administers: false } as const;
  return (await addStaff(at(0), person))!.userId;
};

describe('records kept to a team', () => {
  const restricted = async () => {
    await saveSettings(at(0), { 'care-team-restriction': 1 }, 'Large clinic');
    const inside = await clinicianNamed('inside');
    const outside = await clinicianNamed('outside');
    await setTeamMember(at(0), setting.patientId, inside, true);
    const line = await signedExercise(setting.clinician, setting.patientId);
    const list = (userId: string) =>
      asClinician(accessOf(store, 'a', userId, start + 4 * dayMs)).clinician.worklist.list();
    return { inside, outside, line, list };
  };

  it('are neither listed nor counted for a colleague outside it, and the colleague is told how many', async () => {
    const { inside, outside, list } = await restricted();
    expect(await list(inside)).toMatchObject({ listed: 1, closed: 0, lines: [{}] });
    expect(await list(outside)).toMatchObject({ listed: 0, closed: 1, lines: [] });
  });

  it('show a colleague outside it danger, and of that patient nothing else', async () => {
    const { inside, outside, line, list } = await restricted();
    await sendSession(at(0), setting.patientId, line, 3, { redFlags: ['chest-pain'] });
    const shown = await list(outside);
    expect(shown).toMatchObject({ listed: 1, closed: 1 });
    expect(shown.lines.map((one) => [one.item.kind, one.others.map((other) => other.kind)])).toEqual([
      ['red-flag', ['danger-passed']],
    ]);
    expect((await list(inside)).lines[0]!.others.map((one) => one.kind)).toContain('missing-answers');
  });
});

describe('narrowing the list', () => {
  it('to a site shows the patients whose newest site it is', async () => {
    await signedExercise(setting.clinician, setting.patientId);
    await signedExercise(setting.clinician, setting.otherPatientId);
    const [north, south] = [
      await addSite(at(0), { name: 'North', address: null }),
      await addSite(at(0), { name: 'South', address: null }),
    ];
    await setSite(at(0), setting.patientId, south);
    await setSite(at(1), setting.patientId, north);
    await setSite(at(1), setting.otherPatientId, south);
    const of = async (siteId: string) => {
      const answer = await asClinician(at(4)).clinician.worklist.list({ siteId });
      return [answer.listed, answer.lines.map((line) => line.patientId)];
    };
    expect([await of(north), await of(south)]).toEqual([
      [1, [setting.patientId]],
      [1, [setting.otherPatientId]],
    ]);
  });

  it('takes no site of another clinic', async () => {
    const foreign = await addSite(setting.stranger, { name: 'Far', address: null });
    expect(await setSite(at(0), setting.patientId, foreign)).toBe(false);
  });

  it('to a colleague shows what was given to that colleague, with the colleague’s name', async () => {
    await signedExercise(setting.clinician, setting.patientId);
    const colleague = await clinicianNamed('colleague');
    const staff = asClinician(at(4)).clinician.worklist;
    const [line] = (await staff.list()).lines;
    await staff.assign({ patientId: setting.patientId, key: line!.item.key, userId: colleague });
    const given = await staff.list({ assignedTo: colleague });
    expect(given.lines.map((one) => one.item.assignedName)).toEqual(['colleague']);
    expect((await staff.list({ mine: true })).listed).toBe(0);
    const stranger = staff.assign({
      patientId: setting.patientId,
      key: line!.item.key,
      userId: 'clinician-b',
    });
    await expect(stranger).rejects.toThrow(/no such clinician/);
  });
});

describe('a message from a patient', () => {
  const write = (days: number) =>
    sendPatientMessage(
      accessOf(store, 'a', 'patient-user', start + days * dayMs),
      setting.patientId,
      'May I swim?',
    );

  it('lists the patient until somebody writes back, and again when another comes', async () => {
    await write(0);
    expect(await kinds(at(1))).toEqual(['message']);
    await sendMessage(at(1), setting.patientId, 'Yes.');
    expect(await kinds(at(1))).toEqual([]);
    await write(2);
    expect(await kinds(at(2))).toEqual(['message']);
  });

  const seen = { key: 'message', act: 'acknowledge', until: null, assignee: null, reason: '' } as const;

  it('that was marked as seen waits again once that is taken back by whoever did it, and not twice', async () => {
    await write(0);
    await handleWorklistItem(at(0.1), setting.patientId, seen);
    const back = (access: Access) =>
      takeBack(access, setting.patientId, { key: 'message', act: 'acknowledge' });
    expect(await back(accessOf(store, 'a', 'another', at(0.2).now))).toBe('no-such-matter');
    expect(await back(at(0.2))).toBe('done');
    expect(await kinds(at(0.3))).toContain('message');
    expect(await back(at(0.3))).toBe('no-such-matter');
    expect((await rebuiltWorklistItems(at(0.3))).map(({ kind }) => kind)).toContain('message');
  });

  it('is settled by marking it as seen, and a later one is not', async () => {
    await write(0);
    expect(await handleWorklistItem(at(1), setting.patientId, seen)).toBe('done');
    expect(await kinds(at(1))).toEqual([]);
    await write(3);
    expect(await kinds(at(3))).toEqual(['message']);
  });
});

describe('a booked review', () => {
  const book = (days: number, day: string | null) =>
    bookReview(at(days), setting.patientId, { day, time: '10:30', place: null });

  it('shows on its day and not before, in a sentence with its day', async () => {
    await book(0, '2026-03-05');
    expect([await kinds(at(2)), await kinds(at(3))]).toEqual([[], ['review-day']]);
    const [line] = (await worklistPage(at(3), all)).lines;
    expect(sentenceOf(line!.worklistItems[0] as never, at(3).day)).toBe(
      'The review booked for 5 Mar is due.',
    );
  });

  it('gives way to the next booking, and goes when it is taken back', async () => {
    await book(0, '2026-03-05');
    await book(3, '2026-03-12');
    expect([await kinds(at(4)), await kinds(at(10))]).toEqual([[], ['review-day']]);
    await book(10, null);
    expect(await kinds(at(10))).toEqual([]);
  });
});

it('keeping the list on write and rebuilding it from the record agree on messages and bookings', async () => {
  await sendPatientMessage(at(0), setting.patientId, 'May I swim?');
  await bookReview(at(0), setting.otherPatientId, { day: '2026-03-05', time: null, place: null });
  const rows = (await rebuiltWorklistItems(at(4))).map((row) => [row.patientId, row.kind, row.showsFrom]);
  const kept = (await worklistPage(at(4), all)).lines.flatMap((line) =>
    line.worklistItems.map((one) => [line.patientId, one.kind, one.showsFrom]),
  );
  expect(rows.sort()).toEqual(kept.sort());
  expect(rows).toHaveLength(2);
});
