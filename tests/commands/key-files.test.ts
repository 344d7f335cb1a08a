/** The keys of a file: made for an empty one, remembered by it, and never made anew beside records. */
import { existsSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';
import { appendAudit } from '#data/audit/audit.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { openRuntime, type Runtime } from '#server/runtime.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { freshFile } from '#tests/support/store.ts';

const names = ['audit', 'encryption'] as const;
const settingOf = { audit: 'AUDIT_KEY_FILE', encryption: 'ENCRYPTION_KEY_FILE' } as const;

let file: string;
let running: Runtime | null;
const keyFile = (name: string) => path.join(`${file}.keys`, `${name}.key`);
const start = (env: Record<string, string> = {}): Runtime => {
  running = openRuntime(readEnvironment({ DATABASE_FILE: file, ...env }));
  return running;
};
const stop = () => {
  running?.store.close();
  running = null;
};
const populate = async (at: Runtime): Promise<void> => {
  await clinicNamed(at.store, 'a');
  const access = { ...accessOf(at.store, 'a', 'clinician-a'), auditKey: at.keys.audit };
  await at.store.write((tx) => appendAudit(tx, access, { act: 'write', subject: 'one' }));
};
const reasonOf = (env: Record<string, string> = {}): string => {
  try {
    start(env);
  } catch (error) {
    return (error as Error).message;
  }
  throw new Error('It started.');
};
const other = 'ab'.repeat(32);

beforeEach(() => {
  file = freshFile();
  running = null;
});
afterEach(stop);

describe('keys beside an empty file', () => {
  it('are made, and made anew as long as nothing is in the file', () => {
    start();
    const first = names.map((name) => readFileSync(keyFile(name), 'utf8'));
    expect(first.every((text) => /^[0-9a-f]{64}$/.test(text))).toBe(true);
    stop();
    rmSync(`${file}.keys`, { recursive: true });
    start();
    expect(names.map((name) => readFileSync(keyFile(name), 'utf8'))).not.toEqual(first);
  });
});

describe.each(names)('the %s key of a file that holds records', (name) => {
  beforeEach(async () => {
    await populate(start());
    stop();
  });

  it('missing: the start is refused with the reason and the way out, and no key is made', () => {
    rmSync(keyFile(name));
    const reason = reasonOf();
    expect(reason).toContain(`${keyFile(name)} is missing`);
    expect(reason).toMatch(/holds records/);
    expect(reason).toMatch(/Put the right key back/);
    expect(reason).toContain(settingOf[name]);
    expect(existsSync(keyFile(name))).toBe(false);
  });

  it('another one: the start is refused, beside the file and by its setting', () => {
    const right = readFileSync(keyFile(name), 'utf8');
    writeFileSync(keyFile(name), other);
    expect(reasonOf()).toMatch(/is not the one .* was made with.*Put the right key back/s);
    writeFileSync(keyFile(name), right);
    const elsewhere = `${file}.other-key`;
    writeFileSync(elsewhere, other, { mode: 0o600 });
    expect(reasonOf({ [settingOf[name]]: elsewhere })).toContain(`The key in ${elsewhere} is not the one`);
  });

  it('unreadable as a key: the start is refused with what it should hold', () => {
    writeFileSync(keyFile(name), 'not a key');
    expect(reasonOf()).toMatch(/64 hexadecimal digits/);
  });

  it('put back, or moved and named: it starts, and the audit holds', async () => {
    const elsewhere = `${file}.moved-${name}`;
    renameSync(keyFile(name), elsewhere);
    reasonOf();
    const at = start({ [settingOf[name]]: elsewhere });
    expect(await verifyChain(at.store, at.keys.audit, 'a')).toMatchObject({ ok: true, rows: 1 });
    stop();
    renameSync(elsewhere, keyFile(name));
    start();
  });
});

describe('a file that holds records', () => {
  it('names both keys at once when both are gone, and is not changed by the refused start', async () => {
    await populate(start());
    stop();
    rmSync(`${file}.keys`, { recursive: true });
    const before = readFileSync(file);
    const reason = reasonOf();
    for (const name of names) expect(reason).toContain(keyFile(name));
    expect(readFileSync(file).equals(before)).toBe(true);
    expect(existsSync(`${file}.keys`)).toBe(false);
  });

  it('holds fingerprints that give nothing of the keys away', () => {
    const at = start();
    const rows = at.store.reader.client
      .prepare('SELECT name, fingerprint FROM key_fingerprint ORDER BY name')
      .all();
    expect(rows).toMatchObject(
      names.map((name) => ({ name, fingerprint: expect.stringMatching(/^[0-9a-f]{32}$/) })),
    );
    const text = JSON.stringify(rows);
    for (const name of names) {
      const key = readFileSync(keyFile(name), 'utf8');
      for (let place = 0; place + 8 <= key.length; place += 1) {
        expect(text).not.toContain(key.slice(place, place + 8));
      }
    }
  });
});
