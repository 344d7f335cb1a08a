/** The built product on the demo clinic, and beside it an empty page of the same framework. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { build } from '#commands/build.mjs';
import { readEnvironment } from '#commands/environment.mjs';
import { inRoot, root } from '#commands/paths.mjs';
import { CannotGoOn, say } from '#commands/say.mjs';
import { addressOf, startServer, untilReady } from '#commands/server/server-process.mjs';
import { quietEnvironment } from '#commands/setup.mjs';
import { benchFolder } from '../group/make-group.ts';

export interface Pages {
  /** Address of the patient's page and the cookie of a signed-in patient. */
  readonly patientPage: string;
  readonly cookie: string;
  readonly emptyPage: string;
  readonly address: string;
  readonly databaseFile: string;
  /** The cookie of one of the demo clinic's people. */
  readonly signIn: (email: string) => Promise<string>;
}

const emptyFolder = path.join(benchFolder, 'empty-page');
const pagesFolder = path.join(benchFolder, 'pages');
const next = inRoot('node_modules', 'next', 'dist', 'bin', 'next');

const emptyFiles: Readonly<Record<string, string>> = {
  'package.json': '{ "name": "empty-page", "private": true, "type": "module" }\n',
  'next.config.js': `export default { turbopack: { root: ${JSON.stringify(path.resolve(root))} } };\n`,
  // Without one of its own the builder would find the product's, further up.
  'instrumentation.js': 'export const register = () => {};\n',
  'app/layout.js':
    'export default function Layout({ children }) { return <html lang="en"><body>{children}</body></html>; }\n',
  'app/page.js': 'export default function Page() { return <p>Empty</p>; }\n',
};

const runNext = (args: readonly string[]): ChildProcess =>
  spawn(process.execPath, [next, ...args], {
    cwd: emptyFolder,
    env: { ...process.env, ...quietEnvironment, NODE_ENV: 'production' },
    stdio: ['ignore', 2, 2],
  });

const buildEmptyPage = async (): Promise<void> => {
  rmSync(emptyFolder, { recursive: true, force: true });
  mkdirSync(path.join(emptyFolder, 'app'), { recursive: true });
  for (const [name, text] of Object.entries(emptyFiles)) writeFileSync(path.join(emptyFolder, name), text);
  say('building an empty page of the same framework …');
  const [code] = await once(runNext(['build']), 'close');
  if (code !== 0) throw new CannotGoOn('The empty page could not be built; the reason stands above.');
};

export const freePort = async (): Promise<number> => {
  const probe = createServer();
  probe.listen(0, '127.0.0.1');
  await once(probe, 'listening');
  const address = probe.address();
  probe.close();
  await once(probe, 'close');
  if (address === null || typeof address === 'string') throw new Error('No port was given.');
  return address.port;
};

const untilAnswers = async (address: string): Promise<void> => {
  for (let tries = 0; tries < 300; tries++) {
    const answer = await fetch(address).catch(() => null);
    if (answer?.ok) return;
    await wait(200);
  }
  throw new CannotGoOn(`Nothing answers at ${address}.`);
};

export const signedIn = async (address: string, email: string, password: string): Promise<string> => {
  const answer = await fetch(`${address}/api/auth/sign-in/email`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: address },
    body: JSON.stringify({ email, password }),
  });
  if (!answer.ok) throw new CannotGoOn(`${email} could not sign in (${answer.status}).`);
  return answer.headers
    .getSetCookie()
    .map((cookie) => cookie.split(';')[0]!)
    .join('; ');
};

export const ended = async (child: ChildProcess): Promise<void> => {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const closed = once(child, 'close');
  child.kill('SIGTERM');
  await closed;
};

export const withPages = async <T>(work: (pages: Pages) => Promise<T>): Promise<T> => {
  await build();
  await buildEmptyPage();
  rmSync(pagesFolder, { recursive: true, force: true });
  mkdirSync(pagesFolder, { recursive: true });
  const settings = readEnvironment({
    DEMO: '1',
    DATABASE_FILE: path.join(pagesFolder, 'clinic.sqlite'),
    PORT: String(await freePort()),
  });
  const server = startServer(settings, {});
  const emptyPort = await freePort();
  const empty = runNext(['start', '--port', String(emptyPort), '--hostname', '127.0.0.1']);
  try {
    const address = addressOf(settings);
    const emptyPage = `http://127.0.0.1:${emptyPort}/`;
    await untilReady(server, address);
    await untilAnswers(emptyPage);
    const signIn = (email: string) => signedIn(address, email, 'demo-clinic-demo');
    const cookie = await signIn('patient-1@demo.invalid');
    const { DATABASE_FILE: databaseFile } = settings;
    return await work({ patientPage: `${address}/today`, cookie, emptyPage, address, databaseFile, signIn });
  } finally {
    await ended(server.child);
    await ended(empty);
    rmSync(pagesFolder, { recursive: true, force: true });
  }
};
