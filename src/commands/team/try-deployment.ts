/**
 * `npm run try-deployment`: the files of src/operations/deployment really run where their programs are installed:
 * nginx and Caddy with TLS in front of a server of their own, and the unit files through systemd-analyze. Says of
 * each what was tried and what was not. Exit 1 when something does not hold.
 */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { type RequestOptions, request } from 'node:https';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { build } from '../build.mjs';
import { readEnvironment } from '../environment.mjs';
import { inRoot } from '../paths.mjs';
import { addressOf, endWithThisProcess, startServer, untilReady } from '../server/server-process.mjs';
import { freePort } from './phone-sequences/own-server.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-deployment-'));
const kit = (name: string) => inRoot('src', 'operations', 'deployment', name);
const ports = {
  server: await freePort(),
  nginx: await freePort(),
  plain: await freePort(),
  caddy: await freePort(),
} as const;
const host = 'clinic.example';

const isInstalled = (program: string): boolean => spawnSync(program, ['version']).error === undefined;

let findings = 0;
const told = (what: string, holds: boolean): void => {
  console.log(`${holds ? 'holds' : 'DOES NOT HOLD'}  ${what}`);
  if (!holds) findings += 1;
};

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, unknown>>;
}

const ask = (port: number, options: RequestOptions, body = ''): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const headers = { host, origin: `https://${host}`, ...options.headers };
    const sent = request(
      { port, path: '/sign-in', ...options, headers, servername: host, rejectUnauthorized: false },
      (answer) => {
        answer.resume();
        resolve({ status: answer.statusCode ?? 0, headers: answer.headers });
      },
    );
    sent.on('error', reject);
    sent.end(body);
  });

const guess = (port: number, n: number) =>
  ask(
    port,
    {
      method: 'POST',
      path: '/api/auth/sign-in/email',
      headers: { 'content-type': 'application/json', 'x-forwarded-for': `203.0.113.${n}` },
    },
    JSON.stringify({ email: `nobody-${port}-${n}@demo.invalid`, password: 'some wrong words here' }),
  );

/** Somebody who connects, begins to ask and never ends. Answers after how many seconds the line was closed. */
const slowLine = async (port: number): Promise<number> => {
  const began = performance.now();
  const socket = connect(port, '127.0.0.1');
  socket.on('error', () => undefined);
  // What it is told is read, or its end would never be seen.
  socket.resume();
  socket.write('GET / HTTP/1.1\r\nHost: x\r\nX-Slow: ');
  await Promise.race([once(socket, 'close'), wait(40_000)]);
  socket.destroy();
  return (performance.now() - began) / 1000;
};

const tryProxy = async (name: string, port: number): Promise<void> => {
  const page = await ask(port, {});
  told(
    `${name}: a page over TLS, remembered by browsers`,
    page.status === 200 && 'strict-transport-security' in page.headers,
  );
  const policy = String(page.headers['content-security-policy'] ?? '');
  told(`${name}: the policy of the page arrives as it was sent`, policy.includes("'nonce-"));
  const long = await ask(
    port,
    { method: 'POST', path: '/api/entries', headers: { 'content-type': 'application/json' } },
    'x'.repeat(600_000),
  );
  told(`${name}: a body of 600 kB is refused (${long.status})`, [400, 413, 502].includes(long.status));
  told(`${name}: TRACE is refused`, (await ask(port, { method: 'TRACE' })).status === 405);
  told(`${name}: counts are not there`, (await ask(port, { path: '/metrics' })).status === 404);
  const answers: number[] = [];
  for (let n = 1; n <= 34; n += 1) answers.push((await guess(port, n)).status);
  told(`${name}: made-up networks are one network`, answers.at(-1) === 429 && answers[0] === 401);
};

const untilListening = async (port: number): Promise<void> => {
  for (let tries = 0; tries < 100; tries += 1) {
    try {
      await ask(port, { path: '/healthz' });
      return;
    } catch {
      await wait(100);
    }
  }
};

const withCertificate = (): { readonly certificate: string; readonly key: string } => {
  const [certificate, key] = [path.join(folder, 'fullchain.pem'), path.join(folder, 'privkey.pem')];
  const made = ['req', '-x509', '-newkey', 'rsa:2048', '-nodes', '-days', '2', '-subj', `/CN=${host}`];
  spawnSync('openssl', [...made, '-keyout', key, '-out', certificate], { stdio: 'ignore' });
  return { certificate, key };
};

const nginxFile = ({ certificate, key }: ReturnType<typeof withCertificate>): string => {
  const site = readFileSync(kit('nginx.conf'), 'utf8')
    .replace(/^ *listen \[::\].*$/gm, '')
    .replace('listen 80;', `listen 127.0.0.1:${ports.plain};`)
    .replace('listen 443 ssl http2;', `listen 127.0.0.1:${ports.nginx} ssl http2;`)
    .replace(`/etc/ssl/${host}/fullchain.pem`, certificate)
    .replace(`/etc/ssl/${host}/privkey.pem`, key)
    .replace('127.0.0.1:3000', `127.0.0.1:${ports.server}`);
  const file = path.join(folder, 'nginx.conf');
  const around = `daemon off;\npid ${folder}/nginx.pid;\nerror_log ${folder}/nginx.log;\nevents {}\n`;
  writeFileSync(file, `${around}http {\n${site}\n}\n`);
  return file;
};

const caddyFile = ({ certificate, key }: ReturnType<typeof withCertificate>): string => {
  const site = readFileSync(kit('Caddyfile'), 'utf8')
    .replace(/^\{$/m, '{\n\tadmin off\n\tauto_https off')
    .replace(`${host} {`, `https://${host}:${ports.caddy} {\n\tbind 127.0.0.1\n\ttls ${certificate} ${key}`)
    .replace('127.0.0.1:3000', `127.0.0.1:${ports.server}`);
  const file = path.join(folder, 'Caddyfile');
  writeFileSync(file, site);
  return file;
};

const inFront = async (name: string, args: readonly string[], port: number): Promise<void> => {
  if (!isInstalled(name)) {
    console.log(`not tried: ${name} is not installed`);
    return;
  }
  const proxy = spawn(name, args, {
    stdio: 'ignore',
    env: { ...process.env, XDG_DATA_HOME: folder, XDG_CONFIG_HOME: folder },
  });
  const ended = once(proxy, 'close');
  try {
    await untilListening(port);
    await tryProxy(name, port);
  } finally {
    proxy.kill('SIGTERM');
    await ended;
  }
};

const tryUnits = (): void => {
  if (!isInstalled('systemd-analyze')) {
    console.log('not tried: systemd-analyze is not installed');
    return;
  }
  const units = ['loadgate.service', 'loadgate-backup.service', 'loadgate-backup.timer'].map(kit);
  const { status, stderr } = spawnSync('systemd-analyze', ['verify', ...units], { encoding: 'utf8' });
  told(`the units are read without a complaint ${stderr.trim()}`, status === 0);
};

export const run = async (): Promise<number> => {
  await build();
  const settings = readEnvironment({
    ...{ PORT: String(ports.server), HOST: '127.0.0.1', DEMO: '1', JOBS: '0' },
    ...{ DATABASE_FILE: path.join(folder, 'clinic.sqlite'), PUBLIC_ORIGIN: `https://${host}` },
  });
  const server = startServer(settings, { TRUSTED_PROXY: '127.0.0.1', JOBS: '0' });
  endWithThisProcess(server);
  try {
    await untilReady(server, addressOf(settings));
    const seconds = await slowLine(ports.server);
    told(
      `the server itself ends a line on which nothing comes, after ${Math.round(seconds)} s`,
      seconds < 30,
    );
    const pair = withCertificate();
    await inFront('nginx', ['-c', nginxFile(pair)], ports.nginx);
    await wait(61_000);
    await inFront('caddy', ['run', '--adapter', 'caddyfile', '--config', caddyFile(pair)], ports.caddy);
    tryUnits();
  } finally {
    server.child.kill('SIGTERM');
    await server.ended;
    rmSync(folder, { recursive: true, force: true });
  }
  return findings > 0 ? 1 : 0;
};
