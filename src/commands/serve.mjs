/** Starts the server on what was built, with the settings of the environment. Builds nothing. */
import { existsSync } from 'node:fs';
import { readEnvironment } from './environment.mjs';
import { inRoot } from './paths.mjs';
import { CannotGoOn, runCommand, say } from './say.mjs';
import {
  addressOf,
  checkPortIsFree,
  endWithThisProcess,
  startServer,
  untilReady,
} from './server-process.mjs';

await runCommand(async () => {
  const settings = readEnvironment();
  if (!existsSync(inRoot('.next', 'BUILD_ID'))) {
    throw new CannotGoOn('Nothing is built yet. Run: node src/commands/build.mjs');
  }
  await checkPortIsFree(settings);
  const server = startServer(settings);
  const state = endWithThisProcess(server);
  await untilReady(server, addressOf(settings));
  say(`serving at ${addressOf(settings)}`);
  const code = await server.ended;
  return state.isStopping ? 0 : code;
});
