/**
 * The demo clinic in one command: installs what is missing, builds, starts the server on an
 * embedded file of its own, and prints the address. Ctrl-C ends all of it.
 */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { build } from './build.mjs';
import { readEnvironment } from './environment.mjs';
import { inRoot } from './paths.mjs';
import { runCommand, say } from './say.mjs';
import {
  addressOf,
  checkPortIsFree,
  endWithThisProcess,
  startServer,
  untilReady,
} from './server/server-process.mjs';
import { setUp } from './setup.mjs';

const passphrase = 'demo-clinic-demo';
const signInsFile = inRoot('demo-clinic', 'sign-ins.json');

/** The people of the demo clinic, one line each. */
const signInLines = () => {
  if (!existsSync(signInsFile)) return [];
  const people = JSON.parse(readFileSync(signInsFile, 'utf8'));
  const widest = Math.max(...people.map(({ email }) => email.length));
  return people.map(
    ({ who, email, story }) => `  ${email.padEnd(widest)}  ${[who, story].filter(Boolean).join(': ')}`,
  );
};

await runCommand(async () => {
  const settings = readEnvironment({
    ...process.env,
    DATABASE_FILE: process.env.DATABASE_FILE || path.join('.local', 'demo.sqlite'),
    DEMO: '1',
  });
  await checkPortIsFree(settings);
  setUp();
  await build();
  const address = addressOf(settings);
  say(`starting the server on ${settings.DATABASE_FILE} …`);
  const server = startServer(settings);
  const state = endWithThisProcess(server);
  await untilReady(server, address);
  const lines = signInLines();
  if (lines.length > 0) {
    console.log(
      `Demo sign-ins, passphrase ${passphrase} (invented people; never use this clinic for real records):`,
    );
    for (const line of lines) console.log(line);
  }
  console.log(`ready ${address}`);
  const code = await server.ended;
  return state.isStopping ? 0 : code;
});
