import { readFileSync, writeFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flushReads, noteRead } from '#data/audit/audit.ts';
import { headsFileOf, readHeads, storeHeads } from '#data/audit/audit-heads.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import type { Store } from '#data/database/store.ts';
import { accessOf, auditKey, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

/** The chain as somebody with the file and no key could tamper with it. */
const tamper = (store: Store, statement: string) => {
  store.writer.client.exec('DROP TRIGGER audit_no_update; DROP TRIGGER audit_no_delete;');
  store.writer.client.exec(statement);
};

describe('the audit chain of a clinic', () => {
  let store: Store;
  beforeEach(async () => {
    store = freshStore();
    const { clinician, patientId } = await twoClinics(store);
    await signedExercise(clinician, patientId);
  });
  afterEach(() => store.close());

  it('holds after ordinary work, one chain per clinic', async () => {
    expect([await verifyChain(store, auditKey, 'a'), await verifyChain(store, auditKey, 'b')]).toEqual([
      { ok: true, rows: 6, archived: 0, away: 0 },
      { ok: true, rows: 1, archived: 0, away: 0 },
    ]);
  });

  it('names the first row that was changed', async () => {
    tamper(store, "UPDATE audit SET actor_id = 'somebody-else' WHERE clinic_id = 'a' AND sequence >= 3");
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({
      ok: false,
      sequence: 3,
      finding: expect.stringContaining('changed'),
    });
  });

  it('names the first row that was removed', async () => {
    tamper(store, "DELETE FROM audit WHERE clinic_id = 'a' AND sequence = 2");
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({ ok: false, sequence: 2 });
  });

  it('names the first row that was inserted without the key', async () => {
    tamper(
      store,
      "INSERT INTO audit SELECT clinic_id, 7, at, actor_id, act, subject, subject_id, patient_id, detail, seal, seal FROM audit WHERE clinic_id = 'a' AND sequence = 6",
    );
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({ ok: false, sequence: 7 });
  });

  it('names the first of two rows that changed places', async () => {
    tamper(
      store,
      "UPDATE audit SET sequence = 99 WHERE clinic_id = 'a' AND sequence = 3; UPDATE audit SET sequence = 3 WHERE clinic_id = 'a' AND sequence = 4; UPDATE audit SET sequence = 4 WHERE clinic_id = 'a' AND sequence = 99;",
    );
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({ ok: false, sequence: 3 });
  });

  it('names the first row that was cut off the end, by a head kept outside the file', async () => {
    await storeHeads(store, auditKey, ['a'], 1);
    const kept = readHeads(headsFileOf(store.file), auditKey);
    expect(kept).toMatchObject({ ok: true, heads: [{ clinicId: 'a', sequence: 6, at: 1 }] });
    tamper(store, "DELETE FROM audit WHERE clinic_id = 'a' AND sequence > 4");
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({ ok: true, rows: 4 });
    const heads = kept.ok ? kept.heads : [];
    expect(await verifyChain(store, auditKey, 'a', heads)).toMatchObject({
      ok: false,
      sequence: 5,
      finding: expect.stringContaining('row 6'),
    });
  });

  it('names the row that somebody with the key wrote anew after its head was kept', async () => {
    await storeHeads(store, auditKey, ['a'], 1);
    const kept = readHeads(headsFileOf(store.file), auditKey);
    const heads = kept.ok ? kept.heads.map((head) => ({ ...head, seal: head.seal.replace(/^./, '-') })) : [];
    expect(await verifyChain(store, auditKey, 'a', heads)).toMatchObject({ ok: false, sequence: 6 });
  });

  it('keeps a head only when the chain has grown, and finds a line taken out of the middle', async () => {
    const access = accessOf(store, 'a', 'clinician-a');
    expect(await storeHeads(store, auditKey, ['a', 'b'], 1)).toBe(2);
    expect(await storeHeads(store, auditKey, ['a', 'b'], 2)).toBe(0);
    noteRead(access, { subject: 'worklist' });
    await flushReads(store);
    expect(await storeHeads(store, auditKey, ['a', 'b'], 3)).toBe(1);
    const file = headsFileOf(store.file);
    const lines = readFileSync(file, 'utf8').split('\n');
    writeFileSync(file, [lines[0], lines[2], ''].join('\n'));
    expect(readHeads(file, auditKey)).toEqual({ ok: false, line: 2 });
  });

  it('does not hold under another key', async () => {
    expect(await verifyChain(store, Buffer.alloc(32, 8), 'a')).toMatchObject({ ok: false, sequence: 1 });
  });

  it('is walked to its end: a later change shows behind an earlier one, and all are counted', async () => {
    tamper(
      store,
      "UPDATE audit SET actor_id = 'x' WHERE clinic_id = 'a' AND sequence = 2; DELETE FROM audit WHERE clinic_id = 'a' AND sequence IN (3, 4); UPDATE audit SET actor_id = 'x' WHERE clinic_id = 'a' AND sequence = 6",
    );
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({
      ok: false,
      sequence: 2,
      more: [
        { sequence: 3, finding: expect.stringContaining('missing') },
        { sequence: 6, finding: expect.stringContaining('changed') },
      ],
      wrong: 4,
    });
  });

  it('seals what the file gives back, whatever text a row names', async () => {
    const access = accessOf(store, 'a', 'somebody\0else');
    const texts = ['cut\0here', 'half \ud800', '\udc00 half', 'whole 😀', 'bell \u0007'];
    for (const text of texts) {
      noteRead(access, { subject: text, subjectId: text, patientId: text, detail: { text, [text]: 1 } });
    }
    await flushReads(store);
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({ ok: true, rows: 6 + texts.length });
  });

  it('writes queued reads in one go, sealed like writes, with no value of the record in them', async () => {
    const access = {
      store,
      auditKey,
      clinicId: 'a',
      actorId: 'clinician-a',
      actorName: 'A',
      now: 1,
      day: '2026-03-02',
    };
    noteRead(access, { subject: 'patient-record', subjectId: 'p1', patientId: 'p1' });
    noteRead(access, { subject: 'worklist', detail: { count: 2 } });
    expect(await flushReads(store)).toBe(2);
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({ ok: true, rows: 8 });
    const text = JSON.stringify(store.reader.client.prepare('SELECT * FROM audit').all());
    expect(['Person', '1958-06-01', 'osteoarthritis'].filter((value) => text.includes(value))).toEqual([]);
  });
});
