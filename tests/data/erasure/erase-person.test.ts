/** A person erased is found nowhere: not in the file, its log of writes, its heads, a new backup; the rest stands and verifies. */
import fs from 'node:fs';
import path from 'node:path';
import { getTableName } from 'drizzle-orm';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';
import { run as eraseCommand } from '#commands/erase-person.ts';
import { holdFile, lockFileOf } from '#commands/server/one-server.mjs';
import { run as verifyAudit } from '#commands/verify-audit.ts';
import { addDays } from '#core/time/day.ts';
import { storeHeads } from '#data/audit/audit-heads.ts';
import { verifyRows } from '#data/audit/verify-rows.ts';
import { triggerFindings } from '#data/audit/verify-triggers.ts';
import { writeBackup } from '#data/backup/write-backup.ts';
import { dayAt } from '#data/civil-time.ts';
import { takeSession } from '#data/entries/take-entry.ts';
import { recordNote } from '#data/episode/visit-notes.ts';
import { erasePerson, leaveNoTrace } from '#data/erasure/erase-person.ts';
import { sendMessage } from '#data/messages/messages.ts';
import { addPatient, peopleOf } from '#data/patients/people.ts';
import { saveProfile } from '#data/patients/save-profile.ts';
import { appendOnlyTables } from '#data/schema/kit.ts';
import { triggersOfSchema } from '#data/schema/triggers.ts';
import { goesWithPerson } from '#data/schema/words-about-people.ts';
import { worklistPage } from '#data/worklist/worklist.ts';
import { openRuntime, type Runtime } from '#server/runtime.ts';
import { openAccount } from '#server/sign-in/auth.ts';
import { accessOf, clinicNamed, sessionEntry, signedExercise, start, zone } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { freshFile } from '#tests/support/store.ts';
import { plantEverywhere } from './plant-everywhere.ts';

let first: string;
let at: Runtime;
const access = () => ({ ...accessOf(at.store, 'a', 'clinician-a'), auditKey: at.keys.audit });
const all = <R>(sql: string, ...values: readonly string[]): readonly R[] =>
  at.store.writer.client.prepare(sql).all(...values) as R[];

const profile = {
  ...{ inflammatoryArthritis: false, followedJoints: ['right-knee'] as const },
  ...{ ownedLoadsKg: [1, 2], ownedEquipment: [], formulaSex: null },
};
const words = 'Walks with her daughter Quirina';
/** Two people in care, one of whom signs in; each test has a copy. */
let personId: string;
beforeAll(async () => {
  first = freshFile();
  at = openRuntime(readEnvironment({ DATABASE_FILE: first }));
  const { store, keys } = at;
  await clinicNamed(store, 'a');
  const people = ['Zephyrine', 'Other'].map((givenName) => ({
    givenName,
    familyName: 'Person',
    birthDay: '1958-06-01',
  }));
  const ids: string[] = [];
  for (const person of people) ids.push(await addPatient(access(), { ...person, phone: null }));
  personId = ids[0]!;
  const email = 'zephyrine@clinic.example';
  const account = {
    email,
    name: 'Zephyrine Person',
    clinicId: 'a',
    role: 'patient',
    password: 'a long passphrase',
  } as const;
  await openAccount(at.auth, { ...account, patientId: personId });
  for (const id of ids) {
    await saveProfile(access(), id, { ...profile, diagnosis: words });
    await signedExercise(access(), id);
    await takeSession(access(), id, sessionEntry({ entryId: `of-${id}` }));
    const said = { subjective: words, objective: null, assessment: null, plan: null, text: null };
    await recordNote(access(), id, { day: access().day, contact: 'video', ...said });
    await sendMessage(access(), id, words);
  }
  await storeHeads(store, keys.audit, ['a'], 1);
  store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
  store.close();
});
let file: string;
beforeEach(() => {
  file = freshFile();
  for (const end of ['', '.keys', '.audit-heads'])
    fs.cpSync(`${first}${end}`, `${file}${end}`, { recursive: true });
  at = openRuntime(readEnvironment({ DATABASE_FILE: file }));
  return () => at.store.close();
});

const beside = (): readonly string[] =>
  fs
    .readdirSync(path.dirname(file), { recursive: true, encoding: 'utf8' })
    .map((name) => path.join(path.dirname(file), name))
    .filter((one) => one.startsWith(file) && fs.statSync(one).isFile());
const holding = (mark: string): readonly string[] =>
  beside().filter((one) => fs.readFileSync(one).includes(mark));

const mark = 'Zqxmark';
const hasPatient = (table: string): boolean =>
  (at.store.writer.client.pragma(`table_info(${table})`) as { name: string }[]).some(
    ({ name }) => name === 'patient_id',
  );

describe('a person erased', () => {
  it('is found in no byte of the file, of what stands beside it, or of a new backup, whichever column it was', async () => {
    const id = personId;
    plantEverywhere(at.store, id, mark);
    expect(holding(mark).length).toBeGreaterThan(0);
    await erasePerson(access(), [id], 'asked');
    leaveNoTrace(at.store);
    expect(holding(mark)).toEqual([]);
    // As a backup copies it; the planted rows break rules of the schema, so that a whole one would be refused.
    at.store.writer.client.prepare('VACUUM INTO ?').run(`${file}.copy`);
    expect(holding('care_profile')).toContain(`${file}.copy`);
    expect(holding(mark)).toEqual([]);
    expect(at.store.writer.client.pragma('secure_delete')).toEqual([{ secure_delete: 1 }]);
  });

  it('leaves every other row as it was, its own figures, and a history that verifies to the end', async () => {
    const id = personId;
    const counted = () =>
      Object.fromEntries(
        [...appendOnlyTables.keys()]
          .map((table) => getTableName(table))
          .filter((table) => table !== 'audit' && !goesWithPerson.includes(table))
          .map((table) => [table, all(`SELECT count(*) AS n FROM ${table}`)]),
      );
    const others = () => all(`SELECT * FROM visit_note WHERE patient_id <> ? ORDER BY id`, id);
    const figures = () => all('SELECT * FROM set_log WHERE patient_id = ? ORDER BY rowid', id);
    const before = [counted(), others(), figures()];
    expect(await erasePerson(access(), [id], 'asked')).toBeGreaterThan(2);
    leaveNoTrace(at.store);
    writeBackup(at.store, at.keys.audit, { folder: `${file}.backups`, name: 'after', at: 1 });
    expect([counted(), others(), figures()]).toEqual(before);
    expect(triggerFindings(at.store)).toEqual([]);
    expect(() => at.store.writer.client.exec("UPDATE visit_note SET text = 'x'")).toThrow(/append-only/);
    expect(await verifyRows(at.store, at.keys.audit, [])).toMatchObject({ findings: [], wrong: 0 });
    expect(await runHere(verifyAudit, [], { DATABASE_FILE: file })).toMatchObject({ code: 0 });
  });

  it('is in no list, has no sign-in, and stands in the audit as erased, with the reason and no word', async () => {
    const id = personId;
    await erasePerson(access(), [id], 'asked');
    expect((await peopleOf(access())).some((one) => one.id === id)).toBe(false);
    const page = await worklistPage(access(), { after: null, limit: 50, kind: null, assignedTo: null });
    expect(JSON.stringify(page)).not.toContain(id);
    for (const table of goesWithPerson)
      expect([table, all(`SELECT 1 FROM ${table} WHERE patient_id = ?`, id)]).toEqual([table, []]);
    const [row] = all<{ detail: string }>("SELECT detail FROM audit WHERE subject = 'erasure'");
    expect(JSON.parse(row!.detail)).toMatchObject({ because: 'asked', rows: expect.any(Number) });
  });

  it('put back as it was behind the product is found', async () => {
    const id = personId;
    const old = all<{ id: string; diagnosis: string }>(
      'SELECT id, diagnosis FROM care_profile WHERE patient_id = ?',
      id,
    )[0]!;
    await erasePerson(access(), [id], 'asked');
    const { client } = at.store.writer;
    client.exec('DROP TRIGGER care_profile_no_update');
    client.prepare('UPDATE care_profile SET diagnosis = ? WHERE id = ?').run(old.diagnosis, old.id);
    const { findings } = await verifyRows(at.store, at.keys.audit, []);
    expect(findings).toEqual([
      expect.stringMatching(/care_profile, row .*not as the product wrote it/),
      expect.stringMatching(/care_profile: a row .* changed or gone/),
    ]);
  });
});

describe('the command that erases', () => {
  // A command makes what it makes for the owner alone; a thread of the tests cannot say so for itself.
  beforeEach(() => fs.writeFileSync(lockFileOf(file), '', { mode: 0o600 }));
  const asked = (...args: readonly string[]) => runHere(eraseCommand, args, { DATABASE_FILE: file });
  const named = 'zephyrine  PERSON';
  const today = () => dayAt(Date.now(), zone);
  /** An episode of care, ended on a day or going on. */
  const inCare = (endedOn: string | null): readonly string[] => {
    const { client } = at.store.writer;
    const owned = ['a', personId, start, 'c', 'C'];
    client
      .prepare(
        `INSERT INTO episode (id, clinic_id, patient_id, recorded_at, recorded_by, by_name, diagnoses, joints, followed_joints, goals, contacts)
         VALUES ('e', ?, ?, ?, ?, ?, '["d"]', '["left-knee"]', '["left-knee"]', '[]', '[]')`,
      )
      .run(...owned);
    if (endedOn !== null)
      client
        .prepare(
          `INSERT INTO episode_change (id, clinic_id, patient_id, recorded_at, recorded_by, by_name, episode_id, state, on_day, reason, closed_items)
           VALUES ('x', ?, ?, ?, ?, ?, 'e', 'discharged', ?, 'done', '[]')`,
        )
        .run(...owned, endedOn);
    return ['--patient', personId, '--named', named];
  };

  it('refuses another name, an unknown record and care that goes on, each with what to do', async () => {
    const id = personId;
    inCare(null);
    const of = (...more: readonly string[]) => asked('--patient', ...more, '--because', 'asked');
    expect(await of(id, '--named', 'Somebody Else')).toMatchObject({
      code: 2,
      problem: expect.stringContaining('another name'),
    });
    expect(await of('nobody', '--named', 'X')).toMatchObject({
      code: 2,
      problem: expect.stringContaining('no person'),
    });
    expect(await of(id, '--named', named)).toMatchObject({
      code: 1,
      problem: expect.stringContaining('goes on'),
    });
    expect(all('SELECT 1 FROM patient_identity WHERE patient_id = ?', id)).toHaveLength(1);
  });

  // Ten years are 3,652.5 days, so that the day after 3,652 is the first on which they are over.
  it.each([
    [3652, 1],
    [3653, 0],
    [3654, 0],
  ])('erases for the clinic’s years only when they are over: care ended %i days ago', async (days, code) => {
    const args = inCare(addDays(today(), -days));
    const list = await asked('--due');
    expect(list.out.includes(personId)).toBe(code === 0);
    const said = await asked(...args, '--because', 'retention');
    expect([said.code, said.problem]).toEqual([
      code,
      code === 0 ? '' : expect.stringContaining(`until ${addDays(today(), 1)}`),
    ]);
  });

  it.each([
    [3652, 1],
    [3653, 0],
  ])(
    'counts the years of a record without any episode from what was last written of it: %i days ago',
    async (days, code) => {
      const last = Date.parse(`${addDays(today(), -days)}T12:00:00Z`);
      const { client } = at.store.writer;
      for (const { name } of all<{ name: string }>("SELECT name FROM sqlite_master WHERE type = 'trigger'"))
        client.exec(`DROP TRIGGER ${name}`);
      client.exec(`UPDATE patient SET created_at = ${last - 1000}`);
      for (const table of all<{ name: string }>("SELECT name FROM sqlite_master WHERE type = 'table'"))
        for (const { name } of client.pragma(`table_info(${table.name})`) as { name: string }[])
          if (name.endsWith('_at') && hasPatient(table.name))
            client.exec(`UPDATE ${table.name} SET ${name} = ${last - 500}`);
      client.exec(`UPDATE patient_message SET recorded_at = ${last}; UPDATE message SET sent_at = ${last}`);
      for (const { sql } of triggersOfSchema()) client.exec(sql);
      const list = await asked('--due');
      expect(list.out.includes(`${personId}: no episode of care, last written to on`)).toBe(code === 0);
      const said = await asked('--patient', personId, '--named', named, '--because', 'retention');
      expect(said.code).toBe(code);
    },
  );

  it('waits for no server: while one is running nothing is erased', async () => {
    const args = inCare(today());
    const lock = holdFile(file);
    const said = await asked(...args, '--because', 'asked');
    lock.release();
    expect([said.code, said.problem]).toEqual([1, expect.stringMatching(/is running on .*Stop it first/)]);
    expect(all('SELECT 1 FROM patient_identity WHERE patient_id = ?', personId)).toHaveLength(1);
  });

  it('erases at once who has asked, and says what still holds the words', async () => {
    const args = inCare(today());
    const { code, out } = await asked(...args, '--because', 'asked');
    expect([code, out]).toEqual([
      0,
      expect.stringMatching(/erased .*words were taken out of \d+ rows.*Backups made before/s),
    ]);
  });

  it.each([
    [[]],
    [['--due', '--patient', 'x']],
    [['--patient', 'x', '--named', 'y']],
    [['--patient', 'x', '--named', 'y', '--because', 'z']],
  ])('asked for as %j ends with 2 and how to ask', async (args) => {
    expect(await asked(...args)).toMatchObject({ code: 2, problem: expect.stringContaining('Usage') });
  });
});
