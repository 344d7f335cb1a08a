/** Tokens of other programs: what each opens, for how long, and what is known of it afterwards. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type TokenScope, tokenScopes } from '#core/clinic/token-scopes.ts';
import { addStaff } from '#data/accounts/staff.ts';
import { flushReads } from '#data/audit/audit.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import type { Store } from '#data/database/store.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { makeToken, tokenBySecret } from '#data/programs/tokens.ts';
import { tokenMinute } from '#server/http/program-handler.ts';
import { asAdministrator, asPatient, asPerson } from '#tests/support/callers.ts';
import { accessOf, type Setting, twoClinics } from '#tests/support/clinic.ts';
import { testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { ask } from './program.ts';

let store: Store;
let setting: Setting;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  testRuntime(store);
});
afterEach(() => store.close());

const made = (scopes: readonly TokenScope[] = tokenScopes) =>
  makeToken(setting.clinician, { name: 'Booking', scopes, days: 30 });
const root = '/api/programs/v1';
const sessionsOf = (patientId: string) => `${root}/people/${patientId}/sessions`;
const problemAt = async (address: string, secret: string | null, network?: string) => {
  const { status, json } = await ask(address, secret, network);
  return [status, (json as { problem?: string }).problem ?? null];
};
const audited = async (where: string) => {
  await flushReads(store);
  return store.reader.client
    .prepare(
      `SELECT act, subject, actor_id AS by, patient_id AS patientId, detail FROM audit WHERE ${where} ORDER BY sequence`,
    )
    .all() as { act: string; subject: string; by: string; patientId: string | null; detail: string }[];
};

describe('a token', () => {
  it('is kept as a digest alone: no byte of it is in the file', async () => {
    const { secret } = await made();
    store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
    const { readFileSync } = await import('node:fs');
    expect(readFileSync(store.file).includes(secret.slice('loadgate_'.length))).toBe(false);
    expect(secret).toMatch(/^loadgate_[\w-]{43}$/);
  });

  it('opens until its last millisecond and not at its end', async () => {
    const { secret, expiresAt, id } = await made();
    expect(await tokenBySecret(store, secret, expiresAt - 1)).toMatchObject({ id });
    expect(await tokenBySecret(store, secret, expiresAt)).toBeNull();
    expect(await tokenBySecret(store, secret, expiresAt + 1)).toBeNull();
  });

  it('that is none, or differs in one letter, opens nothing', async () => {
    const { secret } = await made();
    const other = `${secret.slice(0, -1)}${secret.endsWith('A') ? 'B' : 'A'}`;
    expect(await problemAt(`${root}/people`, null)).toEqual([401, 'signed-out']);
    expect(await problemAt(`${root}/people`, other)).toEqual([401, 'signed-out']);
    expect(await problemAt(`${root}/people`, secret)).toEqual([200, null]);
  });

  it('opens what it names and nothing else', async () => {
    const { secret } = await made(['people']);
    expect(await problemAt(`${root}/people`, secret)).toEqual([200, null]);
    expect(await problemAt(`${root}/worklist`, secret)).toEqual([403, 'not-yours']);
    expect(await problemAt(sessionsOf(setting.patientId), secret)).toEqual([403, 'not-yours']);
  });

  it('opens its own clinic alone, and asking for a patient of another is audited', async () => {
    const { secret, id } = await made();
    expect(await problemAt(sessionsOf(setting.strangerPatientId), secret)).toEqual([404, 'not-found']);
    expect(await audited(`actor_id = '${id}'`)).toMatchObject([
      { act: 'refused', subject: 'programs.sessions' },
    ]);
    const { json } = await ask(`${root}/people`, secret);
    const ids = (json as { rows: { id: string }[] }).rows.map((row) => row.id);
    expect(ids).not.toContain(setting.strangerPatientId);
    expect(ids).toContain(setting.patientId);
  });

  it('opens no record that is kept to a care team, and lists none', async () => {
    await saveSettings(setting.clinician, { 'care-team-restriction': 1 }, 'Large clinic');
    const member = await addStaff(setting.clinician, {
      ...{ name: 'Inside', email: 'inside@test.invalid', role: 'clinician', administers: false },
    });
    await setTeamMember(setting.clinician, setting.patientId, member!.userId, true);
    const { secret } = await made();
    expect(await problemAt(sessionsOf(setting.patientId), secret)).toEqual([403, 'care-team']);
    const { json } = await ask(`${root}/people`, secret);
    expect(JSON.stringify(json)).not.toContain(setting.patientId);
  });

  it('is asked with so often a minute, and then says how long to wait', async () => {
    const { secret } = await made();
    for (let count = 0; count < tokenMinute; count += 1)
      expect((await ask(`${root}/nothing`, secret)).status).toBe(404);
    const { status, headers } = await ask(`${root}/people`, secret);
    expect([status, Number(headers.get('retry-after')) > 0]).toEqual([429, true]);
    expect(await problemAt(`${root}/people`, (await made()).secret)).toEqual([200, null]);
  });

  it('that is wrong is tried so often from one network, and another network is still answered', async () => {
    const network = '203.0.113.77';
    for (let count = 0; count < 30; count += 1) await ask(`${root}/people`, 'wrong', network);
    expect(await problemAt(`${root}/people`, 'wrong', network)).toEqual([429, 'too-often']);
    expect(await problemAt(`${root}/people`, 'wrong', '203.0.113.78')).toEqual([401, 'signed-out']);
  });
});

describe('what a program reads', () => {
  it('stands in the audit with the person, and the patient sees the name of the program', async () => {
    const { secret, id } = await made();
    await ask(sessionsOf(setting.patientId), secret);
    await ask(`${root}/people`, secret);
    expect(await audited(`actor_id = '${id}'`)).toMatchObject([
      { act: 'read', subject: 'programs.sessions', patientId: setting.patientId },
      { act: 'read', subject: 'programs.people', patientId: null },
    ]);
    const log = await asPatient(
      accessOf(store, 'a', 'patient-user'),
      setting.patientId,
    ).patient.access.list();
    expect(log.lines).toContainEqual(expect.objectContaining({ name: 'Booking', isProgram: true }));
  });
});

describe('an administrator', () => {
  const admin = () => asAdministrator(setting.clinician).admin.programTokens;
  const wanted = { name: 'Booking', scopes: ['people'] as const, days: 30 };

  it('makes a token, sees it without its secret, and it opens', async () => {
    const { secret } = await admin().make({ ...wanted, scopes: [...wanted.scopes] });
    expect(await problemAt(`${root}/people`, secret)).toEqual([200, null]);
    const listed = await admin().list();
    expect(listed).toMatchObject([{ name: 'Booking', scopes: ['people'], state: 'open', endedAt: null }]);
    expect(JSON.stringify(listed)).not.toContain(secret.slice(-20));
    expect(await audited("subject = 'program-token'")).toMatchObject([{ act: 'write' }]);
  });

  it('withdraws it: it opens nothing from then on, and that stands in the audit', async () => {
    const { secret, id } = await made();
    await admin().withdraw({ tokenId: id });
    expect(await problemAt(`${root}/people`, secret)).toEqual([401, 'signed-out']);
    expect(await admin().list()).toMatchObject([{ state: 'withdrawn' }]);
    expect(await audited("subject = 'program-token-ended'")).toMatchObject([{ act: 'write' }]);
    await expect(admin().withdraw({ tokenId: id })).rejects.toMatchObject({ problem: 'conflict' });
  });

  it('of another clinic cannot withdraw it, nor see it', async () => {
    const { secret, id } = await made();
    const other = asAdministrator(accessOf(store, 'b', 'm')).admin.programTokens;
    await expect(other.withdraw({ tokenId: id })).rejects.toMatchObject({ problem: 'conflict' });
    expect(await other.list()).toEqual([]);
    expect(await problemAt(`${root}/people`, secret)).toEqual([200, null]);
  });

  it('makes none for longer than a year, none that opens nothing, and no more than twenty that hold', async () => {
    for (const wrong of [{ days: 367 }, { days: 0 }, { scopes: [] }, { name: ' ' }])
      await expect(admin().make({ ...wanted, scopes: ['people'], ...wrong })).rejects.toThrow();
    for (let count = 0; count < 20; count += 1) await made();
    await expect(admin().make({ ...wanted, scopes: ['people'] })).rejects.toMatchObject({
      problem: 'conflict',
    });
  });

  it('who proved who they are an hour ago is asked again before one is made', async () => {
    const late = asPerson(setting.clinician, { administers: true, provedAt: Date.now() - 3_600_000 });
    await expect(late.admin.programTokens.make({ ...wanted, scopes: ['people'] })).rejects.toMatchObject({
      problem: 'fresh-sign-in',
    });
  });
});
