/** The files for whoever serves a clinic say what the product does: settings, programs, limits, times. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { run as backup } from '#commands/backup.ts';
import { readEnvironment } from '#commands/environment.mjs';
import { addressesIn } from '#commands/server/forwarded.mjs';
import { bounded } from '#commands/server/http-server.mjs';
import { runHere } from '#tests/support/command-here.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = path.join(root, 'src', 'operations', 'deployment');
const textOf = (name: string) => readFileSync(path.join(folder, name), 'utf8');
const proxies = ['nginx.conf', 'Caddyfile'] as const;
const units = ['loadgate.service', 'loadgate-backup.service'] as const;
const readme = readFileSync(path.join(root, 'README.md'), 'utf8');

const secondsIn = (text: string, name: RegExp): number => Number(name.exec(text)?.[1]);

describe('files for whoever serves a clinic', () => {
  it('name only settings there are, in the README as well', () => {
    const known = Object.keys(readEnvironment({}));
    const texts = [...readdirSync(folder).map(textOf), readme];
    const named = texts.flatMap((text) =>
      [...text.matchAll(/\b([A-Z]+(?:_[A-Z]+)+)=/g)].map(([, name = '']) => name),
    );
    expect(named.length).toBeGreaterThan(4);
    expect(named.filter((name) => !known.includes(name) && name !== 'CHROMIUM_PATH')).toEqual([]);
  });

  it.each(units)('%s runs a program that is there, as a user of its own, with rights taken away', (name) => {
    const text = textOf(name);
    const [, program = ''] = /^ExecStart=\/usr\/bin\/node (?:--\S+ )*(\S+)/m.exec(text) ?? [];
    expect(existsSync(path.join(root, program))).toBe(true);
    for (const line of [
      'User=loadgate',
      'UMask=0077',
      'NoNewPrivileges=yes',
      'ProtectSystem=strict',
      'CapabilityBoundingSet=',
    ])
      expect(text.split('\n')).toContain(line);
  });

  it('the backup unit asks as the command understands it', async () => {
    const [, asked = ''] = /run\.mjs backup (.*)$/m.exec(textOf('loadgate-backup.service')) ?? [];
    const { code, problem } = await runHere(backup, asked.split(' '), {
      DATABASE_FILE: './no-such-file.sqlite',
    });
    expect([code, problem]).toEqual([2, expect.stringContaining('does not exist')]);
  });

  it('the service lets answers under way be finished', () => {
    expect(secondsIn(textOf('loadgate.service'), /^TimeoutStopSec=(\d+)$/m)).toBeGreaterThan(10);
  });

  it.each(proxies)('%s drops what a visitor says of their network, bounds bodies and times', (name) => {
    const text = textOf(name);
    expect(text).toMatch(/X-Forwarded-For (\$remote_addr;|\{remote_host\})/);
    expect(text).not.toMatch(/proxy_add_x_forwarded_for/);
    expect(secondsIn(text, /(?:client_max_body_size|max_size) (\d+)k/i)).toBeGreaterThanOrEqual(256);
    const server = bounded(() => undefined, addressesIn([])!);
    expect(secondsIn(text, /keepalive(?:_timeout)? (\d+)s/)).toBeLessThan(server.keepAliveTimeout / 1000);
  });

  it('are all named on the page of the README that tells how to run it', () => {
    const [, section = ''] = /## Run it in your clinic\n(.*?)\n## /s.exec(readme) ?? [];
    expect(readdirSync(folder).filter((name) => !section.includes(name))).toEqual([]);
  });
});
