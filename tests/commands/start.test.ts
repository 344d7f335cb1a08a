/** Starting: what cannot work is said before anything is installed, built or opened. */
import { spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { environmentForBuild } from '#commands/build.mjs';
import { readEnvironment } from '#commands/environment.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

const start = (file: string, env: Record<string, string>) => {
  const done = spawnSync(process.execPath, [`src/commands/${file}`], {
    cwd: root,
    env: { ...process.env, ...env },
  });
  return { code: done.status, out: done.stdout.toString(), problem: done.stderr.toString() };
};

describe('npm run demo', () => {
  it('says plainly that the port is taken, and how to choose another', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await once(other, 'listening');
    const { port } = other.address() as AddressInfo;
    const { code, out, problem } = start('demo.mjs', { PORT: String(port), HOST: '127.0.0.1' });
    other.close();
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(problem).toContain(`Port ${port} on 127.0.0.1 is in use`);
    expect(problem).toContain('PORT=');
  });

  it('names every wrong setting', () => {
    const { code, problem } = start('demo.mjs', { PORT: 'x', CLINIC_NOW: 'noon', JOBS: '2' });
    expect(code).toBe(1);
    for (const name of ['PORT', 'CLINIC_NOW', 'JOBS']) expect(problem).toContain(`  ${name} `);
  });
});

describe('building', () => {
  it('sees neither the clinic’s file nor its keys, whatever the environment names', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-build-'));
    const named = {
      DATABASE_FILE: fileURLToPath(import.meta.url),
      AUDIT_KEY_FILE: fileURLToPath(import.meta.url),
      ENCRYPTION_KEY_FILE: fileURLToPath(import.meta.url),
      DEMO: '1',
      CLINIC_NOW: '2026-03-02T09:00:00+01:00',
      PATH: 'as it is',
    };
    for (const env of [named, {}]) {
      const seen = environmentForBuild(env, folder);
      const settings = readEnvironment(seen);
      expect(path.dirname(settings.DATABASE_FILE)).toBe(folder);
      expect(settings).toMatchObject({
        AUDIT_KEY_FILE: null,
        ENCRYPTION_KEY_FILE: null,
        DEMO: false,
        JOBS: false,
      });
      expect(seen).toMatchObject('PATH' in env ? { PATH: 'as it is' } : {});
    }
    rmSync(folder, { recursive: true });
  });
});

describe('npm test', () => {
  it('knows its parts by name', () => {
    const done = spawnSync(process.execPath, ['src/commands/team/test.mjs', '--only', 'cores'], {
      cwd: root,
    });
    expect(done.status).toBe(2);
    expect(done.stderr.toString()).toContain('core');
  });
});
