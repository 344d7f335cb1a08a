import { executionAsyncResource } from 'node:async_hooks';
import { readFileSync } from 'node:fs';
import { eq } from 'drizzle-orm';
import { afterEach, describe, expect, it } from 'vitest';
import { migrateStore } from '#data/database/migrate.ts';
import type { Store } from '#data/database/store.ts';
import { takeSession } from '#data/entries/take-entry.ts';
import { openStore } from '#data/open-store.ts';
import { addPatient } from '#data/patients/people.ts';
import { appendOnlyTables } from '#data/schema/kit.ts';
import { audit, patient, trainingSession } from '#data/schema/schema.ts';
import { sessionEntry, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshFile, freshStore, migrationsFolder } from '#tests/support/store.ts';

let store: Store;
afterEach(() => store.close());

const pragma = (client: Store['writer']['client'], name: string) =>
  Object.values((client.pragma(name) as object[])[0]!)[0];

describe('durability', () => {
  it('acknowledges a write only under WAL with full synchronisation, foreign keys on, on the connection that writes', () => {
    store = freshStore();
    const { client } = store.writer;
    expect({
      journal: pragma(client, 'journal_mode'),
      synchronous: pragma(client, 'synchronous'),
      foreignKeys: pragma(client, 'foreign_keys'),
      recursiveTriggers: pragma(client, 'recursive_triggers'),
      busyTimeout: pragma(client, 'busy_timeout'),
      secureDelete: pragma(client, 'secure_delete'),
    }).toEqual({
      ...{ journal: 'wal', synchronous: 2, foreignKeys: 1, recursiveTriggers: 1 },
      ...{ busyTimeout: 5000, secureDelete: 1 },
    });
  });

  it('overwrites what is deleted where it stood', async () => {
    store = freshStore();
    const { client } = store.writer;
    client.exec("CREATE TABLE note (text TEXT); INSERT INTO note VALUES ('Zqxmark')");
    client.pragma('wal_checkpoint(TRUNCATE)');
    expect(readFileSync(store.file).includes('Zqxmark')).toBe(true);
    client.exec('DELETE FROM note');
    client.pragma('wal_checkpoint(TRUNCATE)');
    expect(readFileSync(store.file).includes('Zqxmark')).toBe(false);
  });

  it('saves sessions sent by 100 phones at once: each is there once, none fails', async () => {
    store = freshStore();
    const { clinician, patientId } = await twoClinics(store);
    const { prescriptionId, itemId } = await signedExercise(clinician, patientId);
    const sets = [
      {
        ...{ prescriptionId, itemId, set: 1 },
        repetitions: 20,
        loadKg: 4,
        reserve: 2,
        stopReason: 'none' as const,
      },
    ];
    const answers = await Promise.all(
      Array.from({ length: 100 }, (_, n) =>
        takeSession(clinician, patientId, sessionEntry({ entryId: `phone-${n}`, sets })),
      ),
    );
    const kept = await store.read.select({ id: trainingSession.entryId }).from(trainingSession);
    expect([
      answers.filter((answer) => answer.kind === 'stored').length,
      new Set(kept.map((row) => row.id)).size,
    ]).toEqual([100, 100]);
  });
});

/** What every promise of the process carries along. */
const carried = async (): Promise<number> => {
  await Promise.resolve();
  return Object.getOwnPropertySymbols(executionAsyncResource()).length;
};

it('leaves nothing of a closed store on the promises made after it', async () => {
  const before = await carried();
  for (let count = 0; count < 3; count++) {
    store = freshStore();
    const { clinician, patientId } = await twoClinics(store);
    await takeSession(clinician, patientId, sessionEntry({ entryId: 'after-close', sets: [] }));
    store.close();
  }
  expect(await carried()).toBe(before);
  store = freshStore();
});

describe('one write is all or nothing', () => {
  it('leaves neither row nor audit row when the work fails after both were written', async () => {
    store = freshStore();
    const { clinician } = await twoClinics(store);
    const before = await store.read.select().from(audit);
    const attempt = store.write(async () => {
      await addPatient(
        clinician,
        { givenName: 'A', familyName: 'B', birthDay: '1950-01-01', phone: null },
        'half-written',
      );
      throw new Error('power cut');
    });
    await expect(attempt).rejects.toThrow('power cut');
    expect(await store.read.select().from(patient).where(eq(patient.id, 'half-written'))).toEqual([]);
    expect((await store.read.select().from(audit)).length).toBe(before.length);
  });

  it('keeps a reader from seeing rows of a write that has not been committed', async () => {
    store = freshStore();
    const { clinician } = await twoClinics(store);
    const outside = openStore(store.file);
    await store.write(async () => {
      await addPatient(
        clinician,
        { givenName: 'A', familyName: 'B', birthDay: '1950-01-01', phone: null },
        'not-yet',
      );
      expect(await outside.read.select().from(patient).where(eq(patient.id, 'not-yet'))).toEqual([]);
      expect((await store.read.select().from(patient).where(eq(patient.id, 'not-yet'))).length).toBe(1);
    });
    expect((await outside.read.select().from(patient).where(eq(patient.id, 'not-yet'))).length).toBe(1);
    outside.close();
  });

  it('refuses a row of a clinic that does not exist', async () => {
    store = freshStore();
    const attempt = store.write((tx) =>
      tx.insert(patient).values({ id: 'x', clinicId: 'nowhere', createdAt: 0 }),
    );
    await expect(attempt).rejects.toThrow(/FOREIGN KEY/);
  });
});

describe('the record is append-only', () => {
  it('refuses to change, delete or replace a row of every clinical table and of the audit', () => {
    store = freshStore();
    const { client } = store.writer;
    const triggers = client
      .prepare(
        "SELECT tbl_name AS name, count(*) AS n FROM sqlite_master WHERE type = 'trigger' GROUP BY tbl_name",
      )
      .all() as { name: string; n: number }[];
    const held = [
      'audit',
      'audit_segment',
      'baseline',
      'care_event',
      'care_limit',
      'care_limit_lift',
      'care_profile',
      'care_team',
      'clearance',
      'clinic_detail_change',
      'clinic_machine',
      'clinic_settings_version',
      'consent',
      'consent_wording',
      'contact_attempt',
      'correction',
      'covering_clinician',
      'decision',
      'decision_response',
      'decision_settings',
      'distance_finding',
      'dose_handed_over',
      'dose_template',
      'dose_template_change',
      'effusion_test',
      'emergency_access',
      'entry_conflict',
      'episode',
      'episode_change',
      'goal_step',
      'group_hour',
      'group_hour_change',
      'group_member',
      'home_answers',
      'home_check',
      'home_questions',
      'home_questions_end',
      ...['import_batch', 'import_undo', 'imported_row'],
      'incident',
      'incident_change',
      'letter_draft',
      'letter_signature',
      'letter_void',
      'measurement',
      'medicine_change',
      'message',
      'morning',
      'morning_joint',
      'nutrition_advice',
      'patient_detail',
      'patient_merge',
      'patient_message',
      'patient_site',
      'pause',
      'pause_owner',
      'pause_resumption',
      'plan_seen',
      'pre_approval',
      'pre_approval_end',
      'pre_visit',
      ...['prescription', 'prescription_end', 'program_token', 'program_token_end'],
      'programme',
      'proposal',
      'protocol',
      'protocol_phase',
      'protocol_step',
      'questionnaire_retirement',
      'questionnaire_version',
      'record_file',
      'retest_plan',
      'review_booking',
      'screening',
      'session_joint',
      'set_log',
      'short_signs_approval',
      'signature',
      'signature_withdrawal',
      'supervised_session',
      'training_session',
      'two_hours',
      'visit',
      'visit_note',
      'warning_sign',
      'worklist_item_action',
    ];
    expect(triggers.map((row) => row.name).sort()).toEqual(held);
    expect(triggers.filter((row) => row.n !== 3)).toEqual([]);
  });

  it('keeps every append-only table against replacement, and looks through no other table for a row put into one', () => {
    store = freshStore();
    const { client } = store.writer;
    const kept = client
      .prepare("SELECT tbl_name AS name FROM sqlite_master WHERE name LIKE '%\\_no\\_replace' ESCAPE '\\'")
      .all();
    const whole = (kept as { name: string }[]).flatMap(({ name }) =>
      (client.prepare(`EXPLAIN QUERY PLAN INSERT INTO ${name} DEFAULT VALUES`).all() as { detail: string }[])
        .map(({ detail }) => detail)
        .filter((detail) => detail.startsWith('SCAN')),
    );
    expect(whole).toEqual([]);
    expect(kept.length).toBe(appendOnlyTables.size);
  });

  it('aborts an update and a delete of a session that was logged', async () => {
    store = freshStore();
    const { clinician, patientId } = await twoClinics(store);
    await signedExercise(clinician, patientId);
    await takeSession(clinician, patientId, sessionEntry({ entryId: 'one' }));
    expect(() => store.writer.client.exec("UPDATE training_session SET day = '2020-01-01'")).toThrow(
      /append-only/,
    );
    expect(() => store.writer.client.exec('DELETE FROM training_session')).toThrow(/append-only/);
    expect((await store.read.select().from(trainingSession)).length).toBe(1);
  });

  it('refuses by the file itself a pain of 11, a pain of 3.5 and a load of −3', async () => {
    store = freshStore();
    const { clinician, patientId } = await twoClinics(store);
    await signedExercise(clinician, patientId);
    await takeSession(clinician, patientId, sessionEntry({ entryId: 'one' }));
    const { client } = store.writer;
    const session = (client.prepare('SELECT id FROM training_session').get() as { id: string }).id;
    const joint = (pain: number) =>
      `INSERT INTO session_joint (session_id, clinic_id, patient_id, joint, pain_before_0_10, pain_two_hours_state, gave_way) VALUES ('${session}', 'a', '${patientId}', 'right-knee', ${pain}, 'asked', 0)`;
    expect(() => client.exec(joint(11))).toThrow(/CHECK/);
    expect(() => client.exec(joint(3.5))).toThrow(/CHECK/);
    const prescription = client.prepare('SELECT id, item_id AS line FROM prescription').get() as {
      id: string;
      line: string;
    };
    const set = `INSERT INTO set_log (id, clinic_id, patient_id, session_id, prescription_id, item_id, set_number, load_kg, stop_reason) VALUES ('s', 'a', '${patientId}', '${session}', '${prescription.id}', '${prescription.line}', 1, -3, 'none')`;
    expect(() => client.exec(set)).toThrow(/CHECK/);
    expect(() => client.exec(joint(10))).not.toThrow();
  });
});

describe('bringing a file up to date', () => {
  it('applies every step once, and nothing the second time', () => {
    store = openStore(freshFile());
    const first = migrateStore(store, migrationsFolder);
    expect(first).toMatchObject({ ok: true, backup: null });
    expect(migrateStore(store, migrationsFolder)).toEqual({ ok: true, applied: 0, backup: null });
  });

  it('refuses a file that a newer release has written, and says what to do', () => {
    store = freshStore();
    const later = "INSERT INTO __drizzle_migrations (hash, created_at) VALUES ('later', 9999999999999)";
    store.writer.client.exec(later);
    const migrated = migrateStore(store, migrationsFolder);
    expect(migrated.ok ? '' : migrated.reason).toMatch(/newer release.*restore a backup/s);
  });
});
