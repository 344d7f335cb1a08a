/** Starts the built server as a process of its own and ends it again, for what needs one beside it. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { setTimeout as wait } from 'node:timers/promises';
import { inRoot, root } from '../paths.mjs';
import { CannotGoOn } from '../say.mjs';

/** The address a person opens; 0.0.0.0 is where a server listens, not where a browser goes. */
export const addressOf = ({ HOST, PORT }) => {
  const reachable = HOST === '0.0.0.0' ? '127.0.0.1' : HOST === '::' ? '::1' : HOST;
  const shown = reachable.includes(':') && !reachable.startsWith('[') ? `[${reachable}]` : reachable;
  return `http://${shown}:${PORT}`;
};

/** Says plainly that a port is taken, before anything is started on it. */
export const checkPortIsFree = async ({ HOST, PORT }) => {
  const probe = createServer();
  const problem = await new Promise((resolve) => {
    probe.once('error', (error) => resolve(error));
    probe.listen({ host: HOST.replace(/^\[|\]$/g, ''), port: PORT, exclusive: true }, () => resolve(null));
  });
  if (!problem) {
    await new Promise((resolve) => probe.close(resolve));
    return;
  }
  if (problem.code === 'EADDRINUSE') {
    throw new CannotGoOn(
      `Port ${PORT} on ${HOST} is in use. Choose another one: PORT=${PORT + 1} npm run demo`,
    );
  }
  throw new CannotGoOn(
    `The server cannot listen on ${HOST}, port ${PORT} (${problem.code}). Set HOST= and PORT=.`,
  );
};

/**
 * A page makes some megabytes of values that are gone once it is sent. With the usual room for new ones the
 * collector runs in the middle of most pages and takes what is still needed for lasting; megabytes, at most three times.
 */
const roomForPages = ['--max-semi-space-size=64'];

/**
 * Starts the server. `env` is what it sees beside this process's own environment.
 * @param {import('../environment.mjs').Settings} settings
 * @param {Record<string, string>} [env]
 * @param {string} [program]
 */
export const startServer = (settings, env = {}, program = inRoot('src', 'commands', 'serve.mjs')) => {
  const child = spawn(process.execPath, [...roomForPages, program], {
    cwd: root,
    env: {
      ...process.env,
      PORT: String(settings.PORT),
      HOST: settings.HOST,
      DATABASE_FILE: settings.DATABASE_FILE,
      DEMO: settings.DEMO ? '1' : '0',
      PUBLIC_ORIGIN: settings.PUBLIC_ORIGIN,
      ...env,
    },
    stdio: ['ignore', 2, 2],
  });
  return { child, ended: once(child, 'close').then(([code, signal]) => code ?? (signal ? 1 : 0)) };
};

/** Ends the server with this process, whichever way a person ends it. */
export const endWithThisProcess = ({ child }) => {
  const state = { isStopping: false };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    process.on(signal, () => {
      state.isStopping = true;
      child.kill('SIGTERM');
    });
  }
  process.on('exit', () => child.kill('SIGKILL'));
  return state;
};

const answersHealthz = async (address) => {
  try {
    return (await fetch(`${address}/healthz`, { signal: AbortSignal.timeout(5000) })).status === 200;
  } catch {
    return false;
  }
};

/** Waits until the server answers, or says why it will not. */
export const untilReady = async ({ child }, address, seconds = 120) => {
  const last = Date.now() + seconds * 1000;
  while (!(await answersHealthz(address))) {
    if (child.exitCode !== null || child.signalCode !== null) {
      throw new CannotGoOn('The server ended before it was ready; the reason stands above.');
    }
    if (Date.now() > last) {
      child.kill('SIGTERM');
      throw new CannotGoOn(`The server did not answer at ${address}/healthz within ${seconds} seconds.`);
    }
    await wait(200);
  }
};
