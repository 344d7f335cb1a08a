/** Group hours: planned, corrected by a later entry, ended with a reason, for up to twelve people of the own clinic. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addStaff } from '#data/accounts/staff.ts';
import { flushReads } from '#data/audit/audit.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import type { Store } from '#data/database/store.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { addPatient } from '#data/patients/people.ts';
import { asClinician } from '#tests/support/callers.ts';
import { type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { change, episode } from '../episode/setting.ts';

let store: Store;
let at: Setting;
let clinicianId: string;
beforeEach(async () => {
  store = freshStore();
  at = await twoClinics(store);
  const taker = {
    name: 'Ada Verrin',
    email: 'ada@test.invalid',
    role: 'clinician',
    administers: false,
  } as const;
  clinicianId = (await addStaff(at.clinician, taker))!.userId;
});
afterEach(() => store.close());

const groups = () => asClinician(at.clinician).clinician.groupHours;
const hourOf = (over: object = {}) => ({
  name: 'Knees on Monday',
  place: 'Large room',
  when: '2026-03-02T10:00',
  minutes: 60,
  clinicianId,
  ...over,
});
const plan = (over: object = {}) => groups().plan({ hour: hourOf(over) });
const rows = (sql: string) => store.reader.client.prepare(sql).all() as readonly Record<string, unknown>[];
const person = (familyName: string) =>
  addPatient(at.clinician, { givenName: 'One', familyName, birthDay: '1960-01-01', phone: null });

describe('a group hour', () => {
  it('stands with name, place, beginning, length and who takes it', async () => {
    const hourId = await plan();
    expect(await groups().get({ hourId })).toMatchObject({
      entry: { ...hourOf(), clinicianName: 'Ada Verrin', version: 1, writtenBy: 'clinician-a' },
      ended: null,
      members: [],
    });
  });

  it.each([
    [14, false],
    [15, true],
    [180, true],
    [181, false],
  ])('of %i minutes is taken: %s', async (minutes, isTaken) => {
    const answer = plan({ minutes });
    await (isTaken
      ? expect(answer).resolves.toBeTypeOf('string')
      : expect(answer).rejects.toThrow(/minutes/));
  });

  it('is taken by a clinician of the own clinic only', async () => {
    await expect(plan({ clinicianId: 'clinician-of-nobody' })).rejects.toThrow(/clinician of your clinic/);
  });

  it('is corrected by an entry in its place: the earlier one stays, and an old page overwrites nothing', async () => {
    const hourId = await plan();
    await groups().correct({ hourId, seen: 1, hour: hourOf({ place: 'Small room' }) });
    expect(await groups().get({ hourId })).toMatchObject({
      entry: { place: 'Small room', version: 2 },
      earlier: [{ place: 'Large room', version: 1 }],
    });
    await expect(groups().correct({ hourId, seen: 1, hour: hourOf() })).rejects.toThrow(/meanwhile/);
  });

  it('is cancelled or entered in error with a reason, and planned again', async () => {
    const hourId = await plan();
    await expect(groups().change({ hourId, state: 'cancelled', reason: ' ' })).rejects.toThrow(/reason/i);
    await groups().change({ hourId, state: 'cancelled', reason: 'The room is shut.' });
    await expect(groups().change({ hourId, state: 'cancelled', reason: 'Again.' })).rejects.toThrow(
      /already/,
    );
    expect((await groups().get({ hourId })).ended).toBe('cancelled');
    await expect(groups().add({ hourId, patientId: at.patientId })).rejects.toThrow(/Plan it again/);
    await groups().change({ hourId, state: 'planned-again', reason: 'The room is open.' });
    await groups().add({ hourId, patientId: at.patientId });
    await groups().change({ hourId, state: 'entered-in-error', reason: 'Wrong week.' });
    expect(await groups().get({ hourId })).toMatchObject({
      ended: 'entered-in-error',
      changes: [{ state: 'cancelled' }, { state: 'planned-again' }, { state: 'entered-in-error' }],
      members: [{ patientId: at.patientId }],
    });
  });

  it('is the clinic’s own: another clinic reads, changes and fills none of it, and lends nobody to it', async () => {
    const hourId = await plan();
    const other = asClinician(at.stranger).clinician.groupHours;
    expect(await other.list()).toEqual([]);
    await expect(other.get({ hourId })).rejects.toThrow(/no such group hour/);
    await expect(other.correct({ hourId, seen: 1, hour: hourOf() })).rejects.toThrow(/your clinic/);
    await expect(other.change({ hourId, state: 'cancelled', reason: 'x' })).rejects.toThrow(/no such/);
    await expect(other.add({ hourId, patientId: at.strangerPatientId })).rejects.toThrow(/no such group/);
    await expect(groups().add({ hourId, patientId: at.strangerPatientId })).rejects.toThrow(
      /no such patient/,
    );
  });
});

describe('who belongs to it', () => {
  it('are up to twelve: the twelfth joins, the thirteenth is refused until somebody leaves', async () => {
    const hourId = await plan();
    const people = await Promise.all(Array.from({ length: 13 }, (_, place) => person(`Person ${place}`)));
    for (const patientId of people.slice(0, 12)) await groups().add({ hourId, patientId });
    const last = { hourId, patientId: people[12]! };
    await expect(groups().add(last)).rejects.toThrow(/up to 12 people/);
    await groups().remove({ hourId, patientId: people[0]! });
    await groups().add(last);
    const { members, left } = await groups().get({ hourId });
    expect(members.map(({ patientId }) => patientId)).toEqual(people.slice(1));
    expect(left).toMatchObject([{ patientId: people[0], name: 'One Person 0' }]);
  });

  it('is nobody twice, and nobody whose care has ended', async () => {
    const hourId = await plan();
    const { patientId } = at;
    await groups().add({ hourId, patientId });
    await expect(groups().add({ hourId, patientId })).rejects.toThrow(/already/);
    const patient = { patientId: at.otherPatientId };
    const { episodes } = asClinician(at.clinician).clinician;
    const episodeId = await episodes.open({ ...patient, episode, reason: 'Begins.' });
    await episodes.change({ ...patient, change: change(episodeId, 'discharged', at.clinician.day) });
    await expect(groups().add({ hourId, ...patient })).rejects.toThrow(/Care of this person has ended/);
    await expect(groups().remove({ hourId, ...patient })).rejects.toThrow(/does not belong/);
  });

  it('is not named to who may not open the record, and may leave all the same', async () => {
    const hourId = await plan();
    await groups().add({ hourId, patientId: at.patientId });
    await saveSettings(at.clinician, { 'care-team-restriction': 1 }, 'Large clinic');
    await setTeamMember(at.clinician, at.patientId, clinicianId, true);
    expect((await groups().get({ hourId })).members).toEqual([{ patientId: at.patientId, name: null }]);
    await groups().remove({ hourId, patientId: at.patientId });
    await expect(groups().add({ hourId, patientId: at.patientId })).rejects.toThrow(/care team/);
  });

  it('changes no decision, dose, worklist or plan of anybody', async () => {
    await signedExercise(at.clinician, at.patientId);
    const kept = () => {
      const tables = rows(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'group%' AND name NOT LIKE 'audit%' AND name NOT LIKE 'sqlite%'",
      );
      return tables.map(({ name }) => [name, rows(`SELECT count(*) AS n FROM "${String(name)}"`)]);
    };
    const before = kept();
    const hourId = await plan();
    await groups().add({ hourId, patientId: at.patientId });
    await groups().change({ hourId, state: 'cancelled', reason: 'Snow.' });
    expect(kept()).toEqual(before);
  });
});

it('each plan, change, joining and leaving of a group hour is audited, and so is reading one', async () => {
  const hourId = await plan();
  await groups().add({ hourId, patientId: at.patientId });
  await groups().remove({ hourId, patientId: at.patientId });
  await groups().change({ hourId, state: 'cancelled', reason: 'Snow.' });
  await groups().get({ hourId });
  await flushReads(store);
  const lines = rows("SELECT subject, patient_id FROM audit WHERE subject LIKE 'group%' ORDER BY sequence");
  expect(lines).toEqual([
    { subject: 'group-hour', patient_id: null },
    { subject: 'group-member', patient_id: at.patientId },
    { subject: 'group-member', patient_id: at.patientId },
    { subject: 'group-hour-change', patient_id: null },
    { subject: 'group-hour', patient_id: null },
  ]);
});
