/** Starting: what cannot work is said before anything is installed, built or opened. */
import { spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { type AddressInfo, createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

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

describe('npm test', () => {
  it('knows its parts by name', () => {
    const done = spawnSync(process.execPath, ['src/commands/team/test.mjs', '--only', 'cores'], {
      cwd: root,
    });
    expect(done.status).toBe(2);
    expect(done.stderr.toString()).toContain('core');
  });
});
