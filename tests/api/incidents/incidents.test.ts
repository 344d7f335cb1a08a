/** Incidents and near misses: written down once, corrected by a later entry, closed with a reason, read by no rule. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flushReads } from '#data/audit/audit.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import type { Store } from '#data/database/store.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { asAdministrator, asClinician } from '#tests/support/callers.ts';
import { accessOf, type Setting, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let at: Setting;
beforeEach(async () => {
  store = freshStore();
  at = await twoClinics(store);
});
afterEach(() => store.close());

const staff = () => asClinician(at.clinician).clinician;
const administrator = () => asAdministrator(accessOf(store, 'a', 'manager-a')).clinician;
const told = (over: object = {}) => ({
  when: '2026-03-02T08:15',
  kind: 'near-miss',
  happened: 'The cuff was laid out for the wrong arm.',
  doneAtOnce: 'Changed before it was filled.',
  wouldPrevent: null,
  told: 'The clinic’s lead',
  ...over,
});
const write = (over: object = {}, patientId: string | null = null) =>
  staff().incidents.record({ incident: told(over), patientId });
const list = () => staff().incidents.list();
const rows = (sql: string) => store.reader.client.prepare(sql).all() as readonly Record<string, unknown>[];

describe('an incident', () => {
  it('stands with its day and time, kind and words, who wrote it and when; what was not said stays empty', async () => {
    await write();
    expect(await list()).toMatchObject([
      {
        isOpen: true,
        changes: [],
        earlier: [],
        entry: { ...told(), about: { is: 'nobody' }, writtenBy: 'clinician-a', writtenAt: start },
      },
    ]);
  });

  it('may be of a day whose time is not known', async () => {
    await write({ when: '2026-03-01' });
    expect((await list())[0]?.entry.when).toBe('2026-03-01');
  });

  it('has happened: of this minute is taken; of the next minute or of tomorrow is refused, and nothing kept', async () => {
    // 09:00 UTC is 09:00 in Lisbon in March.
    await write({ when: '2026-03-02T09:00' });
    await expect(write({ when: '2026-03-02T09:01' })).rejects.toThrow(/still to come/);
    await expect(write({ when: '2026-03-03' })).rejects.toThrow(/today or earlier/);
    expect(await list()).toHaveLength(1);
  });

  it('says what happened, and of which kind: without either it is refused by name', async () => {
    await expect(write({ happened: ' \n ' })).rejects.toThrow(/happened/);
    await expect(write({ kind: 'other' })).rejects.toThrow(/kind/i);
    expect(await list()).toEqual([]);
  });

  it('stands before those of earlier days, whenever each was written', async () => {
    await write({ when: '2026-03-02T08:00' });
    await write({ when: '2026-02-20' });
    await write({ when: '2026-03-02T08:30' });
    expect((await list()).map(({ entry }) => entry.when)).toEqual([
      '2026-03-02T08:30',
      '2026-03-02T08:00',
      '2026-02-20',
    ]);
  });

  it('is the clinic’s own: another clinic neither reads, corrects nor closes it', async () => {
    const incidentId = await write();
    const other = asClinician(at.stranger).clinician.incidents;
    expect(await other.list()).toEqual([]);
    await expect(other.close({ incidentId, reason: 'Seen.' })).rejects.toThrow(/no such incident/);
    await expect(other.correct({ incidentId, seen: 1, incident: told() })).rejects.toThrow(/no such/);
  });

  it('changes no decision, dose, worklist or plan of anybody', async () => {
    const { patientId } = at;
    await signedExercise(at.clinician, patientId);
    const kept = () => {
      const tables = rows(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'incident%' AND name <> 'audit'",
      );
      return tables.map(({ name }) => [name, rows(`SELECT * FROM ${name}`)]);
    };
    await list();
    await flushReads(store);
    const before = kept();
    const incidentId = await write({ kind: 'harm' }, patientId);
    await staff().incidents.correct({ incidentId, seen: 1, incident: told({ kind: 'no-harm' }) });
    await staff().incidents.close({ incidentId, reason: 'Learned from.' });
    expect(kept()).toEqual(before);
  });
});

describe('an incident that was written down wrongly', () => {
  it('is corrected by a later entry in its place; the first stays as it was, with who wrote it', async () => {
    const incidentId = await write();
    const later = asAdministrator({ ...accessOf(store, 'a', 'manager-a'), now: start + 60_000 });
    const incident = told({ kind: 'harm' });
    await later.clinician.incidents.correct({ incidentId, seen: 1, incident });
    expect(await list()).toMatchObject([
      {
        id: incidentId,
        entry: { kind: 'harm', version: 2, writtenBy: 'manager-a' },
        earlier: [{ kind: 'near-miss', version: 1, writtenBy: 'clinician-a' }],
      },
    ]);
  });

  it('is not corrected over a correction that was not seen', async () => {
    const incidentId = await write();
    const correct = (kind: string) =>
      staff().incidents.correct({ incidentId, seen: 1, incident: told({ kind }) });
    await correct('harm');
    await expect(correct('no-harm')).rejects.toThrow(/Reload/);
    expect((await list())[0]?.entry.kind).toBe('harm');
  });

  it('stays about its patient, until another or nobody is named', async () => {
    const incidentId = await write({}, at.patientId);
    const aboutOnce = async (seen: number, about: object) => {
      await staff().incidents.correct({ incidentId, seen, incident: told(), ...about });
      return (await list())[0]?.entry.about;
    };
    expect(await aboutOnce(1, {})).toMatchObject({ patientId: at.patientId });
    expect(await aboutOnce(2, { patientId: at.otherPatientId })).toMatchObject({ name: 'Other Person' });
    expect(await aboutOnce(3, { patientId: null })).toEqual({ is: 'nobody' });
  });

  it('is refused by the file itself to change or go', async () => {
    await write();
    const { client } = store.writer;
    expect(() => client.exec("UPDATE incident SET happened = 'Nothing.'")).toThrow(/append-only/);
    expect(() => client.exec('DELETE FROM incident')).toThrow(/append-only/);
  });
});

describe('closing an incident', () => {
  it('takes a reason, keeps it, and may be taken back with one', async () => {
    const incidentId = await write();
    const { close, reopen } = staff().incidents;
    await expect(close({ incidentId, reason: '  ' })).rejects.toThrow(/reason/);
    await close({ incidentId, reason: 'The cuffs are marked now.' });
    expect(await list()).toMatchObject([
      {
        isOpen: false,
        changes: [{ state: 'closed', reason: 'The cuffs are marked now.', by: 'clinician-a' }],
      },
    ]);
    await expect(close({ incidentId, reason: 'Again.' })).rejects.toThrow(/closed already/);
    await reopen({ incidentId, reason: 'It happened again.' });
    expect((await list())[0]).toMatchObject({ isOpen: true, changes: [{}, { state: 'reopened' }] });
    await expect(reopen({ incidentId, reason: 'Again.' })).rejects.toThrow(/open already/);
  });
});

describe('the patient of an incident', () => {
  it('is of this clinic, and named by clinicians alone', async () => {
    await expect(write({}, at.strangerPatientId)).rejects.toThrow(/no such patient/);
    const { patientId } = at;
    await expect(administrator().incidents.record({ incident: told(), patientId })).rejects.toThrow(
      /Only clinicians/,
    );
    expect(await list()).toEqual([]);
  });

  it('has no name for an administrator who is no clinician, and no id either', async () => {
    await write({}, at.patientId);
    const [incident] = await administrator().incidents.list();
    expect(incident?.entry.about).toEqual({ is: 'unnamed' });
    expect(JSON.stringify(incident)).not.toContain(at.patientId);
  });

  it('of a record kept to a care team is named to the team, and neither named to nor by anybody else', async () => {
    const { patientId, clinician } = at;
    await write({}, patientId);
    await saveSettings(clinician, { 'care-team-restriction': 1 }, 'Large clinic');
    store.writer.client.exec(
      "INSERT INTO auth_user (id, clinic_id, name, email, role, email_verified, created_at, updated_at) SELECT 'clinician-a', 'a', 'Clinician A', 'a@test.invalid', 'clinician', 1, 0, 0",
    );
    expect(await setTeamMember(clinician, patientId, 'clinician-a', true)).toBe(true);
    const outside = asClinician(accessOf(store, 'a', 'outside')).clinician.incidents;
    expect((await list())[0]?.entry.about).toMatchObject({ is: 'named', name: 'Test Person' });
    expect((await outside.list())[0]?.entry.about).toEqual({ is: 'unnamed' });
    expect(await outside.file()).not.toContain('Test Person');
    await expect(outside.record({ incident: told(), patientId })).rejects.toThrow(/care team/);
  });
});

describe('the audit', () => {
  it('has a row for each entry and change without their words, and one for each reading of the list or the file', async () => {
    const incidentId = await write({}, at.patientId);
    await staff().incidents.correct({ incidentId, seen: 1, incident: told() });
    await staff().incidents.close({ incidentId, reason: 'Cuffs are marked.' });
    await list();
    await staff().incidents.file();
    await flushReads(store);
    const lines = rows("SELECT act, subject, patient_id, detail FROM audit WHERE subject LIKE 'incident%'");
    expect(lines.map(({ act, subject, patient_id: whose }) => [act, subject, whose])).toEqual([
      ['write', 'incident', at.patientId],
      ['write', 'incident', at.patientId],
      ['write', 'incident-change', at.patientId],
      ['read', 'incidents', null],
      ['read', 'incident-file', null],
    ]);
    expect(JSON.stringify(lines)).not.toMatch(/cuff/i);
  });
});
