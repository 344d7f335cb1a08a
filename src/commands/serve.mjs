/**
 * Starts the server on what was built, with the settings of the environment. Builds nothing. Whatever keeps it
 * from working ends it with the reason as the last line.
 */
import { existsSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { readEnvironment } from './environment.mjs';
import { inRoot, root } from './paths.mjs';
import { CannotGoOn, runCommand, say } from './say.mjs';
import { requireWholeFile } from './server/checked-file.mjs';
import { startPages } from './server/http-server.mjs';
import { holdFile } from './server/one-server.mjs';
import { addressOf, checkPortIsFree } from './server/server-process.mjs';
import { quietEnvironment } from './setup.mjs';

/** The first signal ends the server in order, a second one at once. */
const endOnSignal = (running) => {
  let isEnding = false;
  for (const signal of ['SIGTERM', 'SIGINT', 'SIGHUP']) {
    process.on(signal, () => {
      if (isEnding) process.exit(1);
      isEnding = true;
      running.end().then(
        () => process.exit(0),
        (error) => {
          say(`the server did not end in order: ${error?.message ?? error}`);
          process.exit(1);
        },
      );
    });
  }
};

const adviceOn = ({ PUBLIC_ORIGIN, TRUSTED_PROXY }) =>
  PUBLIC_ORIGIN.startsWith('https://') && TRUSTED_PROXY.length === 0
    ? 'Behind a proxy, name its address with TRUSTED_PROXY: until then all of its visitors count as one network.'
    : null;

await runCommand(async () => {
  // What is written from here on is readable by the owner alone.
  process.umask(0o077);
  const settings = readEnvironment();
  if (!existsSync(inRoot('.next', 'BUILD_ID'))) {
    throw new CannotGoOn('Nothing is built yet. Run: node src/commands/build.mjs');
  }
  await checkPortIsFree(settings);
  const file = path.resolve(root, settings.DATABASE_FILE);
  mkdirSync(path.dirname(file), { recursive: true });
  globalThis.loadgateLock = holdFile(file);
  await requireWholeFile(file);
  Object.assign(process.env, quietEnvironment, { NODE_ENV: 'production' });
  const running = await startPages(settings);
  endOnSignal(running);
  const advice = adviceOn(settings);
  if (advice) say(advice);
  say(`serving at ${addressOf(settings)}`);
});
