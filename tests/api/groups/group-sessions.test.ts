/** The hour itself: today's plan of each, and a session done under somebody's eyes, by the way of a phone's entry. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Access } from '#data/access.ts';
import { addStaff } from '#data/accounts/staff.ts';
import { flushReads } from '#data/audit/audit.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { groupHoursOf, setGroupMember, writeGroupHour } from '#data/clinic/group-hours.ts';
import type { Store } from '#data/database/store.ts';
import { confirmEntry } from '#data/entries/confirm-entry.ts';
import { supervisedSince } from '#data/entries/supervised-sessions.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
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
import { personNow, typedFrom } from '#ui/clinician/groups/correcting.ts';
import { entryOf } from '#ui/clinician/groups/group-entry.ts';

let store: Store;
let at: Setting;
let hourId: string;
let ada: Access;
let item: { readonly itemId: string; readonly prescriptionId: string };
beforeEach(async () => {
  store = freshStore();
  at = await twoClinics(store);
  ada = accessOf(store, 'a', await clinicianNamed('Ada Verrin'), start, 'Ada Verrin');
  const row = { name: 'Knees', place: 'Large room', when: '2026-03-02T08:00', minutes: 60 };
  const taken = { row: { ...row, clinicianId: ada.actorId }, clinicianName: ada.actorName };
  hourId = await writeGroupHour(ada, { ...taken, replaces: null });
  const { itemId, prescriptionId } = await signedExercise(at.clinician, at.patientId);
  item = { itemId, prescriptionId };
  await setGroupMember(at.clinician, hourId, at.patientId, true);
});
afterEach(() => store.close());

const clinicianNamed = async (name: string): Promise<string> => {
  const email = `${name.split(' ')[0]}@test.invalid`;
  return (await addStaff(at.clinician, { name, email, role: 'clinician', administers: false }))!.userId;
};
const dayMs = 24 * 3_600_000;
const sessions = () => asClinician(ada).clinician.groupSessions;
const rows = (sql: string) => store.reader.client.prepare(sql).all() as readonly Record<string, unknown>[];
const me = async () => {
  const [one] = await sessions().people({ hourId });
  if (!one || one.name === null) throw new Error('Nobody is shown.');
  return one;
};
const hurt = {
  painBefore: 2,
  painDuring: 9,
  painAfter: 9,
  twoHoursState: 'not-applicable' as const,
  muscleBurn: null,
  cuffDiscomfort: null,
  gaveWay: false,
};
const entry = async (over: object = {}) => ({
  ...sessionEntry({
    entryId: (await me()).entryId,
    sets: [{ ...item, set: 1, repetitions: 20, loadKg: 4, reserve: 2, stopReason: 'none' }],
  }),
  ...over,
});
const send = async (over: object = {}) =>
  sessions().send({ hourId, patientId: at.patientId, entry: await entry(over) });

describe('the plan of today in a group hour', () => {
  it('is the one the phone shows: doses, easier session, cautions, questions and what each pain leaves', async () => {
    const { today } = await me();
    const phone = await asPatient(accessOf(store, 'a', 'patient-user'), at.patientId).patient.today.get();
    expect(today.exercises.map(({ dose, badDay, today: left }) => ({ dose, badDay, left }))).toEqual(
      phone.exercises.map(({ dose, badDay, today: left }) => ({ dose, badDay, left })),
    );
    expect(today.exercises[0]?.cautions.map(({ text }) => text)).toEqual(
      phone.exercises[0]?.cautions.map(({ text }) => text.en),
    );
    expect(today.painLookups).toEqual(phone.painLookups);
    expect(today).toMatchObject({ stop: null, isShortSigns: false, isSentToday: false });
  });

  it('says whether the clinic asks for pain two hours later', async () => {
    for (const asks of [0, 1] as const) {
      await saveSettings(at.clinician, { 'ask-two-hours': asks }, 'As agreed');
      expect((await me()).today.asksTwoHours).toBe(asks === 1);
    }
  });

  it('is shown of nobody kept to a care team the caller is not in', async () => {
    await saveSettings(at.clinician, { 'care-team-restriction': 1 }, 'Large clinic');
    await setTeamMember(at.clinician, at.patientId, await clinicianNamed('Bo Halse'), true);
    expect(await sessions().people({ hourId })).toEqual([{ patientId: at.patientId, name: null }]);
    await expect(sessions().person({ hourId, patientId: at.patientId })).rejects.toThrow(/care team/);
    const sent = { hourId, patientId: at.patientId, entry: sessionEntry({ entryId: 'any' }) };
    await expect(sessions().send(sent)).rejects.toThrow(/care team/);
  });

  it('is of the own clinic: another one reads no group and sends nothing into it', async () => {
    const other = asClinician(at.stranger).clinician.groupSessions;
    await expect(other.people({ hourId })).rejects.toThrow(/no such group hour/);
    const sent = { hourId, patientId: at.strangerPatientId, entry: await entry() };
    await expect(other.send(sent)).rejects.toThrow(/no such group hour/);
    await expect(other.send({ ...sent, patientId: at.patientId })).rejects.toThrow(/no such patient/);
  });

  it('leaves a row in the access log of each person it shows', async () => {
    await me();
    await sessions().person({ hourId, patientId: at.patientId });
    await flushReads(store);
    expect(
      rows("SELECT subject, patient_id FROM audit WHERE subject LIKE 'clinician.groupSessions%'"),
    ).toEqual([
      { subject: 'clinician.groupSessions.people', patient_id: at.patientId },
      { subject: 'clinician.groupSessions.person', patient_id: at.patientId },
    ]);
  });
});

describe('a session done in a group hour', () => {
  it('is an entry of the person as one from a phone, marked as supervised by who sent it, and decided on', async () => {
    expect(await send()).toEqual({ stored: 'stored', clockDoubtful: false });
    expect(rows('SELECT entered_as, entered_by FROM training_session')).toEqual([
      { entered_as: 'clinic-supervised', entered_by: ada.actorId },
    ]);
    const { session } = await me();
    expect(session?.entry.sets).toMatchObject([{ repetitions: 20, loadKg: 4, reserve: 2 }]);
    expect(session?.by).toBe('Ada Verrin');
    expect(await supervisedSince(ada, at.patientId, '2026-03-02')).toEqual([
      { day: '2026-03-02', name: 'Ada Verrin', did: 'supervised' },
    ]);
    expect(await supervisedSince(ada, at.patientId, '2026-03-03')).toEqual([]);
    expect(rows('SELECT count(*) AS n FROM decision')[0]?.n).toBeGreaterThan(0);
  });

  it('is one session when it is sent twice, from whichever tablet', async () => {
    const sent = { hourId, patientId: at.patientId, entry: await entry() };
    await sessions().send(sent);
    expect((await sessions().send(sent)).stored).toBe('known');
    expect((await send({ didExtra: true })).stored).toBe('conflict');
    expect(rows('SELECT count(*) AS n FROM training_session')).toEqual([{ n: 1 }]);
  });

  it('is checked as one from a phone: a set over what an entry may hold is refused, and nothing kept', async () => {
    const sets = [{ ...item, set: 1, repetitions: 501, loadKg: 4, reserve: 2, stopReason: 'none' }];
    await expect(send({ sets })).rejects.toThrow(/500/);
    expect(rows('SELECT count(*) AS n FROM training_session')).toEqual([{ n: 0 }]);
  });

  it('that told a warning sign opens the sign and pauses the plan, as told to a clinician', async () => {
    await send({ redFlags: ['chest-pain'], stoppedByFlag: true, sets: [] });
    expect(rows('SELECT source FROM warning_sign')).toEqual([{ source: 'clinician' }]);
    expect(rows('SELECT cause FROM pause')).toEqual([{ cause: 'warning-sign' }]);
    expect((await me()).today).toMatchObject({ stop: 'warning-sign' });
  });

  it('is corrected by one in its place, which then counts; the place of one corrected already is refused', async () => {
    await send();
    const amends = (await me()).entryId;
    const sets = [{ ...item, set: 1, repetitions: 12, loadKg: 4, reserve: 1, stopReason: 'none' }];
    await send({ entryId: 'second', amends, sets });
    expect((await me()).session?.entry.sets).toMatchObject([{ repetitions: 12 }]);
    await expect(send({ entryId: 'third', amends, sets })).rejects.toThrow(/meanwhile/);
    expect(rows('SELECT count(*) AS n FROM training_session')).toEqual([{ n: 2 }]);
  });

  it('keeps the dose and cautions it was done under at hand, so that it can be put right after that has ended', async () => {
    await send();
    const before = (await me()).today.exercises[0]!;
    await asClinician(ada).clinician.prescriptions.end({
      patientId: at.patientId,
      prescriptionId: item.prescriptionId,
      reason: 'Another exercise',
    });
    const { today, session } = await me();
    expect(today.exercises).toEqual([]);
    expect(session?.exercises).toMatchObject([{ ...item, dose: before.dose, badDay: before.badDay }]);
    expect(session?.exercises[0]?.cautions.length).toBeGreaterThan(0);
  });

  it('is taken of who left the group since, or whose hour was cancelled since; of a stranger to it not', async () => {
    const sent = { hourId, entry: await entry() };
    await setGroupMember(accessOf(store, 'a', ada.actorId, start + 1), hourId, at.patientId, false);
    expect((await sessions().send({ ...sent, patientId: at.patientId })).stored).toBe('stored');
    const other = { ...sent, patientId: at.otherPatientId };
    await expect(sessions().send(other)).rejects.toThrow(/does not belong to the group/);
    expect((await groupHoursOf(at.clinician))[0]?.members).toEqual([]);
  });

  it('names its own hour, person and day', async () => {
    await expect(send({ entryId: 'another' })).rejects.toThrow(/another hour or person/);
    await expect(send({ day: '2026-03-01' })).rejects.toThrow(/another day/);
  });

  it('was supervised by who entered it first: not by who corrects it, nor by who confirms its time', async () => {
    await send({ sentAt: start - dayMs });
    const [row] = rows('SELECT id FROM training_session');
    const confirmer = accessOf(store, 'a', await clinicianNamed('Cy Dorn'), start + 1, 'Cy Dorn');
    expect(await confirmEntry(confirmer, at.patientId, 'session', String(row?.id))).toBe(true);
    expect((await me()).session).toMatchObject({ by: 'Ada Verrin', correctedBy: [] });
    const amends = (await me()).session!.entry.entryId;
    ada = accessOf(store, 'a', await clinicianNamed('Bo Halse'), start + 2, 'Bo Halse');
    await send({ entryId: 'second', amends });
    expect((await me()).session).toMatchObject({ by: 'Ada Verrin', correctedBy: ['Bo Halse'] });
    expect(await supervisedSince(ada, at.patientId, '2026-03-02')).toEqual([
      { day: '2026-03-02', name: 'Ada Verrin', did: 'supervised' },
      { day: '2026-03-02', name: 'Bo Halse', did: 'corrected' },
    ]);
  });

  it('that eased the dose back is corrected as work of the dose it was done under, with every set of it', async () => {
    const sets = [1, 2, 3].map((set) => ({
      ...{ ...item, set, repetitions: 20, loadKg: 4, reserve: 2 },
      ...{ stopReason: 'none', easier: false },
    }));
    const joints = [{ ...hurt, painDuring: 6, painAfter: 6, joint: 'right-knee' as const }];
    await send({ sets, joints });
    const eased = await me();
    expect(eased.session?.next).toMatchObject([{ decision: 'ease-back', effect: 'acts-at-once' }]);
    expect(eased.today.exercises[0]?.prescriptionId).not.toBe(item.prescriptionId);
    const typed = { ...typedFrom(eased.session!.entry, 'second'), extra: 'yes' };
    const put = entryOf(personNow(eased, typed), typed, { now: start });
    await sessions().send({ hourId, patientId: at.patientId, entry: put });
    const after = (await me()).session!.entry;
    expect(after).toMatchObject({ entryId: 'second', didExtra: true });
    expect(after.sets).toEqual(eased.session!.entry.sets);
    expect(after.sets).toHaveLength(3);
  });

  it('is corrected on a later day as one of its own day', async () => {
    await send();
    ada = { ...ada, now: start + 3 * dayMs, day: '2026-03-05' };
    const { session, today } = await me();
    const typed = typedFrom(session!.entry, 'second');
    const put = entryOf(await me(), { ...typed, extra: 'yes' }, { now: ada.now });
    expect(today.day).toBe('2026-03-05');
    const told = await sessions().send({ hourId, patientId: at.patientId, entry: put });
    expect(told).toEqual({ stored: 'stored', clockDoubtful: false });
    expect((await me()).session?.entry).toMatchObject({ day: '2026-03-02', didExtra: true });
  });

  it('of an hour moved to another day is one of each day: the next takes no place of the one before', async () => {
    await send();
    const [hour] = await groupHoursOf(at.clinician);
    const { hourId: _, version: __, clinicianName, writtenAt: ___, writtenBy: ____, ...row } = hour!.entry;
    const moved = { row: { ...row, when: '2026-03-04T08:00' }, clinicianName, replaces: hour! };
    ada = { ...ada, now: start + 2 * dayMs };
    await writeGroupHour(ada, moved);
    expect((await me()).session).toBeNull();
    const beganAt = ada.now - 30 * 60_000;
    const next = { day: '2026-03-04', sentAt: ada.now, beganAt, endedAt: beganAt + 20 * 60_000 };
    expect(await send(next)).toEqual({ stored: 'stored', clockDoubtful: false });
    expect((await me()).session?.entry.day).toBe('2026-03-04');
    expect((await me()).earlierSessions).toMatchObject([
      { day: '2026-03-02', entry: { sets: [{ set: 1 }] } },
    ]);
    expect(rows('SELECT day FROM training_session ORDER BY day')).toEqual([
      { day: '2026-03-02' },
      { day: '2026-03-04' },
    ]);
    expect(rows('SELECT count(*) AS n FROM entry_conflict')).toEqual([{ n: 0 }]);
  });

  it('takes the place of what was pressed and not saved', async () => {
    const draft = { patientId: at.patientId, form: 'group-hour' as const };
    const { drafts } = asClinician(ada).clinician;
    await drafts.save({ ...draft, typed: { hour: hourId, signs: 'none' } });
    expect((await me()).typed).toEqual({ hour: hourId, signs: 'none' });
    await drafts.save({ ...draft, typed: { hour: 'another', signs: 'none' } });
    expect((await me()).typed).toBeNull();
    await send();
    expect(await drafts.get(draft)).toBeNull();
  });

  it('is followed by no dose while the engine has not decided, and by what it says as soon as it has', async () => {
    await send();
    expect((await me()).session?.next).toEqual([]);
    const amends = (await me()).entryId;
    const joints = [{ ...hurt, joint: 'right-knee' as const }];
    await send({ entryId: 'second', amends, joints });
    expect((await me()).session?.next).toMatchObject([{ itemId: item.itemId, decision: 'pause' }]);
  });
});
