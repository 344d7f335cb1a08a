import { readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Access } from '#data/access.ts';
import { appendAudit } from '#data/audit/audit.ts';
import { archiveBefore, archiveFileOf, auditStoredSince, type Segment } from '#data/audit/audit-archive.ts';
import { headsFileOf, readHeads, storeHeads } from '#data/audit/audit-heads.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import type { Store } from '#data/database/store.ts';
import { auditKey, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

/** Julian year, as the retention counts: 365.25 days. */
const year = 31_557_600_000;

describe('audit rows older than the clinic’s years', () => {
  let store: Store;
  let clinician: Access;
  let later: Access;

  /** Six rows on the first day, three a year and a day later; the clinic keeps one year. */
  beforeEach(async () => {
    store = freshStore();
    const setting = await twoClinics(store);
    clinician = setting.clinician;
    await signedExercise(clinician, setting.patientId);
    later = { ...clinician, now: clinician.now + year + 86_400_000 };
    await saveSettings(later, { 'audit-retention-years': 1 }, 'Local rule');
    for (const subject of ['one', 'two'])
      await store.write((tx) => appendAudit(tx, later, { act: 'write', subject }));
  });
  afterEach(() => store.close());

  const rowsLeft = () =>
    (
      store.reader.client.prepare("SELECT sequence FROM audit WHERE clinic_id = 'a' ORDER BY 1").all() as {
        sequence: number;
      }[]
    ).map((row) => row.sequence);
  const verify = () => verifyChain(store, auditKey, 'a');
  const archive = async (): Promise<Segment> => (await archiveBefore(later, await auditStoredSince(later)))!;
  const withoutTriggers = (statement: string) => {
    store.writer.client.exec(
      'DROP TRIGGER audit_no_update; DROP TRIGGER audit_no_delete; DROP TRIGGER audit_segment_no_update; DROP TRIGGER audit_segment_no_delete;',
    );
    store.writer.client.exec(statement);
  };

  it('move to a file only their owner reads; the chain goes on and holds, and the move is a row of it', async () => {
    expect(rowsLeft()).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
    const segment = await archive();
    expect(segment.lastSequence).toBe(6);
    expect(rowsLeft()).toEqual([7, 8, 9, 10]);
    const file = archiveFileOf(store.file, segment);
    expect(readFileSync(file, 'utf8').trim().split('\n')).toHaveLength(6);
    expect(statSync(file).mode & 0o077).toBe(0);
    expect(await verify()).toEqual({ ok: true, rows: 4, archived: 6, away: 0 });
    const [last] = store.reader.client
      .prepare("SELECT subject, detail FROM audit WHERE clinic_id = 'a' AND sequence = 10")
      .all() as { subject: string; detail: string }[];
    expect([last?.subject, JSON.parse(last!.detail)]).toEqual([
      'audit-archive',
      { lastSequence: 6, rows: 6 },
    ]);
  });

  it('exactly a year old stays, a moment older moves; the second time nothing is left to move', async () => {
    const at = (now: number) => ({ ...clinician, now });
    expect(await archiveBefore(later, await auditStoredSince(at(clinician.now + year)))).toBeNull();
    expect(await archiveBefore(later, await auditStoredSince(at(clinician.now + year + 1)))).not.toBeNull();
    expect(await archiveBefore(later, await auditStoredSince(at(clinician.now + year + 1)))).toBeNull();
  });

  it('a copy made by a release that knew no archive can be verified as it is', async () => {
    store.writer.client.exec('DROP TRIGGER audit_no_delete; DROP TABLE audit_segment');
    expect(await verify()).toMatchObject({ ok: true, rows: 9, archived: 0 });
  });

  it('other clinics of the file keep theirs', async () => {
    await archive();
    expect(await verifyChain(store, auditKey, 'b')).toMatchObject({ ok: true, rows: 1, archived: 0 });
  });

  it('may be destroyed with their file: what is left still holds, and it is said how many are not at hand', async () => {
    rmSync(archiveFileOf(store.file, await archive()));
    expect(await verify()).toEqual({ ok: true, rows: 4, archived: 6, away: 6 });
  });

  it('the newest row stays even when all are old, so that the chain can go on', async () => {
    const far = { ...later, now: later.now + 5 * year };
    expect((await archiveBefore(far, await auditStoredSince(far)))?.lastSequence).toBe(8);
    expect(rowsLeft()).toEqual([9, 10]);
    expect(await verify()).toMatchObject({ ok: true, archived: 8 });
  });

  it('two moves, one after the other, hold together', async () => {
    await archive();
    const far = { ...later, now: later.now + 2 * year };
    await archiveBefore(far, await auditStoredSince(far));
    expect(await verify()).toMatchObject({ ok: true, rows: 2, archived: 9, away: 0 });
  });

  it('heads kept before the move still agree, and one that was made up does not', async () => {
    await storeHeads(store, auditKey, ['a'], 1);
    await archive();
    const kept = readHeads(headsFileOf(store.file), auditKey);
    const heads = kept.ok ? kept.heads : [];
    expect(await verifyChain(store, auditKey, 'a', heads)).toMatchObject({ ok: true });
    const other = [{ clinicId: 'a', sequence: 6, seal: 'made up' }];
    expect(await verifyChain(store, auditKey, 'a', other)).toMatchObject({ ok: false, sequence: 6 });
  });

  it('rows that nobody noted as moved cannot be deleted', async () => {
    const gone = "DELETE FROM audit WHERE clinic_id = 'a' AND sequence <= 6";
    expect(() => store.writer.client.exec(gone)).toThrow(/append-only/);
    await archive();
    expect(() => store.writer.client.exec("DELETE FROM audit WHERE clinic_id = 'a'")).toThrow(/append-only/);
    expect(() => store.writer.client.exec('DELETE FROM audit_segment')).toThrow(/append-only/);
  });

  it('a note written without the key is found: rows deleted under it are named', async () => {
    store.writer.client.exec(
      "INSERT INTO audit_segment SELECT 'a', 6, seal, at, 1, 'made up' FROM audit WHERE clinic_id = 'a' AND sequence = 6; DELETE FROM audit WHERE clinic_id = 'a' AND sequence <= 6;",
    );
    expect(await verify()).toMatchObject({
      ok: false,
      sequence: 1,
      finding: expect.stringContaining('note'),
    });
  });

  it.each([
    [
      'a row of the file was changed',
      (text: string) =>
        text.replace('"sequence":3', '"sequence": 3').replace('"act":"write"', '"act":"read"'),
      1,
    ],
    [
      'a row was taken out of the file',
      (text: string) =>
        text
          .split('\n')
          .filter((_, place) => place !== 2)
          .join('\n'),
      3,
    ],
    ['the end of the file was cut off', (text: string) => text.split('\n').slice(0, 4).join('\n'), 5],
    ['a line of the file cannot be read', (text: string) => text.replace('"sequence":4', '"sequence":'), 4],
  ])('%s: the first that does not hold is named', async (_, change, sequence) => {
    const file = archiveFileOf(store.file, await archive());
    writeFileSync(file, change(readFileSync(file, 'utf8')));
    expect(await verify()).toMatchObject({ ok: false, sequence });
  });

  it.each([
    ['the note was taken out', 'DELETE FROM audit_segment', 1],
    ['the note names another row', 'UPDATE audit_segment SET last_sequence = 5', 1],
    ['the first row left was deleted', "DELETE FROM audit WHERE clinic_id = 'a' AND sequence = 7", 7],
    [
      'a row was put back among those moved',
      "INSERT INTO audit SELECT clinic_id, 3, at, actor_id, act, subject, subject_id, patient_id, detail, previous, seal FROM audit WHERE clinic_id = 'a' AND sequence = 8",
      3,
    ],
  ])('%s: the first that does not hold is named', async (_, statement, sequence) => {
    await archive();
    withoutTriggers(statement);
    expect(await verify()).toMatchObject({ ok: false, sequence });
  });
});
