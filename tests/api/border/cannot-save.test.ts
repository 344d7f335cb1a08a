/** When nothing can be saved: readiness says so, nobody reads past the audit, and no row of it is lost. */
import { renameSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Problem } from '#api/errors.ts';
import { readEnvironment } from '#commands/environment.mjs';
import { flushReads, isAuditFailing, noteRead } from '#data/audit/audit.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { addPatient } from '#data/patients/people.ts';
import { headsState, keepWhileRunning } from '#server/jobs/audit-anchoring.ts';
import { openRuntime, type Runtime } from '#server/runtime.ts';
import { isFull, readiness } from '#server/telemetry/readiness.ts';
import { makeTelemetry, type Telemetry } from '#server/telemetry/telemetry.ts';
import { asClinician } from '#tests/support/callers.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { freshFile } from '#tests/support/store.ts';
import { GET as readyzGet } from '../../../src/app/readyz/route.ts';

let at: Runtime;
let patientId: string;
const lines: string[] = [];
const held = globalThis as { loadgateRuntime?: Runtime; loadgateTelemetry?: Telemetry };
const access = () => ({ ...accessOf(at.store, 'a', 'clinician-a'), auditKey: at.keys.audit });

beforeEach(async () => {
  lines.length = 0;
  held.loadgateTelemetry = makeTelemetry({ write: (line) => lines.push(line) });
  at = openRuntime(readEnvironment({ DATABASE_FILE: freshFile(), JOBS: '0' }));
  held.loadgateRuntime = at;
  await clinicNamed(at.store, 'a');
  const person = { givenName: 'Test', familyName: 'Person', birthDay: '1958-06-01', phone: null };
  patientId = await addPatient(access(), person);
  keepWhileRunning(at);
});
afterEach(() => at.store.close());

/** The disk takes nothing more, as far as the writing connection can tell. */
const takesNothing = (yes: boolean): void => {
  at.store.writer.client.pragma(`query_only = ${yes ? 'ON' : 'OFF'}`);
};
const reads = () =>
  at.store.reader.client.prepare("SELECT subject FROM audit WHERE act = 'read' ORDER BY sequence").all();
const open = () =>
  asClinician(access()).clinician.review.get({ patientId, from: '2026-02-01', to: '2026-03-01' } as never);

describe('a read whose row cannot be written', () => {
  it('waits with its row, in order, and is written when it can be', async () => {
    for (const subject of ['one', 'two']) noteRead(access(), { subject, patientId });
    takesNothing(true);
    await expect(flushReads(at.store)).rejects.toThrow();
    noteRead(access(), { subject: 'three', patientId });
    await expect(flushReads(at.store)).rejects.toThrow();
    takesNothing(false);
    expect(await flushReads(at.store)).toBe(3);
    expect(reads()).toEqual(['one', 'two', 'three'].map((subject) => ({ subject })));
    expect(await verifyChain(at.store, at.keys.audit, 'a')).toMatchObject({ ok: true });
  });

  it('is counted and logged without a word of what was read', async () => {
    noteRead(access(), { subject: 'the subject', patientId });
    takesNothing(true);
    await expect(flushReads(at.store)).rejects.toThrow();
    expect(held.loadgateTelemetry!.metrics.text()).toContain('loadgate_audit_failures_total 1');
    const [line = ''] = lines.filter((one) => one.includes('audit-not-written'));
    expect(JSON.parse(line)).toMatchObject({
      waiting: 1,
      fault: { errorCode: expect.stringMatching(/^SQLITE_/) },
    });
    expect(line).not.toMatch(/the subject/);
  });

  it('keeps records shut to whoever asks next, in words, and opens them when it was written', async () => {
    noteRead(access(), { subject: 'one', patientId });
    takesNothing(true);
    await expect(flushReads(at.store)).rejects.toThrow();
    const problem = (await open().then(
      () => null,
      (error: unknown) => error,
    )) as Problem;
    expect(problem).toMatchObject({ code: 'SERVICE_UNAVAILABLE', problem: 'not-recorded' });
    expect(problem.text).toMatchObject({
      en: expect.stringMatching(/could not be noted who looked/),
      de: expect.stringMatching(/nicht festgehalten/),
    });
    const { prescriptions } = asClinician(access()).clinician;
    await expect(prescriptions.propose({ patientId, request: {} })).rejects.toMatchObject({
      problem: 'not-recorded',
    });
    takesNothing(false);
    await flushReads(at.store);
    expect(isAuditFailing(at.store)).toBe(false);
    const again = (await open().then(
      () => null,
      (error: unknown) => error,
    )) as Problem | null;
    expect(again?.problem).not.toBe('not-recorded');
  });
});

describe('readiness', () => {
  it('means that what is typed will be kept: 503 while nothing can be written, 200 again when it can', async () => {
    const asked = async () => {
      const answer = await readyzGet();
      return [answer.status, await answer.text()];
    };
    expect(await asked()).toEqual([200, 'ready\n']);
    takesNothing(true);
    await expect(at.store.write((tx) => tx.run('DELETE FROM sign_in_attempt' as never))).rejects.toThrow();
    expect(await asked()).toEqual([503, 'nothing can be saved\n']);
    takesNothing(false);
    expect(await asked()).toEqual([200, 'ready\n']);
  });

  it('tries a write when none was made lately, and does not count one that failed as made', async () => {
    (at.store.health as { committedAt: number | null }).committedAt = Date.now() - 60_000;
    takesNothing(true);
    expect(await readiness(at)).toBe('nothing can be saved');
    takesNothing(false);
    expect(await readiness(at)).toBeNull();
    expect(at.store.health.committedAt).toBeGreaterThan(Date.now() - 30_000);
  });

  it('names rows of the audit that wait, a key file that is gone, and heads that are old', async () => {
    noteRead(access(), { subject: 'one', patientId });
    takesNothing(true);
    await expect(flushReads(at.store)).rejects.toThrow();
    takesNothing(false);
    expect(await readiness(at)).toBe('the audit cannot be written');
    await flushReads(at.store);
    const key = path.join(`${at.store.file}.keys`, 'encryption.key');
    renameSync(key, `${key}.away`);
    expect(await readiness(at)).toBe('a key file is missing or another one');
    renameSync(`${key}.away`, key);
    const working = { ...at, settings: { ...at.settings, JOBS: true } };
    headsState(at.store).keptAt = Date.now() - 3 * 3_600_000;
    expect([await readiness(at), await readiness(working)]).toEqual([null, 'audit heads are not kept']);
    headsState(at.store).keptAt = Date.now();
    expect(await readiness(working)).toBeNull();
  });

  it('looks at the room left on the disk of the file', () => {
    expect([isFull(at.store.file, 0), isFull(at.store.file, Number.MAX_SAFE_INTEGER)]).toEqual([false, true]);
  });
});
