/** Runs a command written in TypeScript: `node src/commands/run.mjs <name> [arguments]`. */
import { existsSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { inRoot } from './paths.mjs';
import { CannotGoOn, runCommand } from './say.mjs';
import { quietEnvironment, setUp } from './setup.mjs';

await runCommand(async () => {
  const [name = '', ...args] = process.argv.slice(2);
  const file = [
    inRoot('src', 'commands', `${name}.ts`),
    inRoot('src', 'commands', 'exchange', `${name}.ts`),
    inRoot('src', 'commands', 'team', `${name}.ts`),
  ].find(existsSync);
  if (!/^[a-z][a-z-]*$/.test(name) || !file) {
    throw new CannotGoOn(`There is no command named "${name}".`, 2);
  }
  setUp();
  // What a command writes of a clinic is readable by the owner alone; what developers' tools write is not a clinic's.
  if (path.dirname(file) !== inRoot('src', 'commands', 'team')) process.umask(0o077);
  Object.assign(process.env, quietEnvironment);
  const { register } = await import('tsx/esm/api');
  register();
  const { run } = await import(pathToFileURL(file).href);
  return run(args);
});
