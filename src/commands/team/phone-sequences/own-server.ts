/** A server of its own on the demo clinic, which can be stopped and started on the same file. */
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { readEnvironment } from '#commands/environment.mjs';
import { addressOf, startServer, untilReady } from '#commands/server/server-process.mjs';

export const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() =>
        address && typeof address === 'object' ? resolve(address.port) : reject(new Error('no port')),
      );
    });
  });

export interface OwnServer {
  readonly address: string;
  readonly file: string;
  readonly start: () => Promise<void>;
  readonly stop: () => Promise<void>;
  /** Ends it hard, in the middle of whatever it does. */
  readonly kill: () => Promise<void>;
  readonly remove: () => Promise<void>;
}

/** On a machine that does much else a start of some seconds has taken two minutes. */
const longestStartSeconds = 600;

/** `program`: another start than the product's own, for comparing. */
export const ownServer = async (program?: string): Promise<OwnServer> => {
  const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-phone-'));
  const file = path.join(folder, 'clinic.sqlite');
  const settings = readEnvironment({
    PORT: String(await freePort()),
    HOST: '127.0.0.1',
    DEMO: '1',
    DATABASE_FILE: file,
  });
  const address = addressOf(settings);
  let running: ReturnType<typeof startServer> | null = null;
  const end = async (signal: 'SIGTERM' | 'SIGKILL') => {
    running?.child.kill(signal);
    await running?.ended;
    running = null;
  };
  const stop = () => end('SIGTERM');
  return {
    address,
    file,
    start: async () => {
      running ??= startServer(settings, {}, program);
      await untilReady(running, address, longestStartSeconds);
    },
    stop,
    kill: () => end('SIGKILL'),
    remove: async () => {
      await stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};

/** The clinical clock of a demo server moves to an instant. */
export const moveClock = async (address: string, instant: number): Promise<void> => {
  await fetch(`${address}/demo/clock`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ now: new Date(instant).toISOString() }),
  });
};
