/**
 * `npm run soak -- [--sequences N] [--minutes N] [--seed N]`: sessions on a phone in a browser under drawn
 * moves (answer, back, reload, no signal, signal, close and open again, send again, the server stopped and
 * started in the middle, half an hour away, a clock a day ahead, a second phone, signing out without signal),
 * work with a cuff included, 200 of them unless told otherwise. Each has to stand in the file exactly once.
 * With minutes it stops after that time and the next run of the same seed goes on from there. Exit 1 when a
 * sequence fails, 2 on wrong use. With `--kills N` the real server is instead ended hard so many times under
 * 24 savers, and what was acknowledged is looked for. With `--steps N` a migration, a backup and the archiving of
 * audit rows are ended hard before each N-th of their steps, on a file of the demo clinic. With `--requests N` so many
 * generated ones are sent to the real server, of every procedure and address.
 */
import type { Browser } from 'playwright-core';
import { build } from '../build.mjs';
import { readNumbers } from './check-monotonic.ts';
import { openBrowser } from './open-browser.ts';
import { moveClock, type OwnServer, ownServer } from './phone-sequences/own-server.ts';
import { pin, pinPhoneOf } from './phone-sequences/pin-phone.ts';
import { drawSequence, phoneOf, playSequence } from './phone-sequences/sequence.ts';
import { forgetSoak, type SoakProgress, saveSoak, soakedSoFar } from './phone-sequences/soak-progress.ts';
import { patientOf, sessionsOf, storedTwice } from './phone-sequences/stored.ts';
import { playRequests } from './requests/play-requests.ts';
import { playKills } from './server-kills/kills.ts';
import { playStepKills } from './server-kills/play-step-kills.ts';

const usage =
  'Use: npm run soak -- [--sequences N] [--minutes N] [--seed N] | --kills N [--minutes N] [--seed N] | --steps N | --requests N [--minutes N] [--seed N]';
/** People of the demo clinic with a session to do; the last has a cuff. */
const people = ['patient-1', 'patient-2', 'patient-3', 'patient-5', 'patient-8', 'patient-4'] as const;
const dayMs = 86_400_000;
/** From a Monday: most of them train on Monday, Wednesday and Friday. */
const daysOn = [2, 2, 3];
const mostFaults = 5;
/** Rounds without one session played: then there is nothing to test, which is a fault by itself. */
const mostIdleRounds = 10;

const playOne = async (browser: Browser, server: OwnServer, who: string, run: SoakProgress) => {
  const seed = run.nextSeed++;
  const context = await pinPhoneOf(browser, server.address, patientOf(server.file, who));
  const phone = { browser, context, pin, second: () => phoneOf(browser, server.address, who) };
  try {
    const before = sessionsOf(server.file, who).length;
    if (!(await playSequence(context, drawSequence(seed, true), server, phone))) {
      run.idle += 1;
      return;
    }
    run.played += 1;
    const stand = sessionsOf(server.file, who).length - before;
    if (stand !== 1) run.faults.push(`seed ${seed} ${who}: ${stand} sessions stand, not 1`);
  } catch (error) {
    run.faults.push(`seed ${seed} ${who}: ${error instanceof Error ? error.message : String(error)}`);
  } finally {
    // A sequence that broke off may have left it stopped.
    await server.start();
    await context.close();
  }
};

interface Bounds {
  readonly sequences: number;
  /** Instant of the clock; infinity where no minutes were given. */
  readonly until: number;
}

const playAll = async (browser: Browser, server: OwnServer, run: SoakProgress, bounds: Bounds) => {
  const isOver = () =>
    run.played >= bounds.sequences || run.faults.length >= mostFaults || Date.now() >= bounds.until;
  let idleRounds = 0;
  // The demo clinic's today is a Monday; the clock moves on after each round of people.
  let instant = Date.parse('2026-04-20T17:30:00Z');
  for (let round = 0; !isOver(); round++) {
    await moveClock(server.address, instant);
    instant += daysOn[round % daysOn.length]! * dayMs;
    const { played } = run;
    for (const who of people) if (!isOver()) await playOne(browser, server, who, run);
    idleRounds = run.played === played ? idleRounds + 1 : 0;
    if (idleRounds >= mostIdleRounds) run.faults.push(`in ${idleRounds} rounds nobody had a session to do`);
    saveSoak(run);
    console.log(`${run.played} sequences played, ${run.idle} days off, ${run.faults.length} faults`);
  }
  const twice = storedTwice(server.file);
  if (twice > 0) run.faults.push(`${twice} entries stand more than once`);
};

const tell = (run: SoakProgress, sequences: number): void => {
  for (const fault of run.faults) console.error(`FAULT ${fault}`);
  const seeds = `seeds ${run.seed} to ${run.nextSeed - 1}`;
  const left = run.played < sequences && run.faults.length === 0 ? ', to be gone on with' : '';
  console.log(`${run.played} of ${sequences} sequences (${seeds}), ${run.faults.length} faults${left}`);
};

const tellFaults = (faults: readonly string[]): number => {
  for (const fault of faults) console.error(`FAULT ${fault}`);
  return faults.length > 0 ? 1 : 0;
};

export const run = async (args: string[]): Promise<number> => {
  const options = readNumbers(args, {
    minutes: 0,
    seed: 20_260_131,
    sequences: 200,
    kills: 0,
    steps: 0,
    requests: 0,
  });
  if (!options) {
    console.error(usage);
    return 2;
  }
  if (options.steps > 0) return tellFaults(await playStepKills(options.steps));
  await build();
  const until = options.minutes > 0 ? Date.now() + options.minutes * 60_000 : Number.POSITIVE_INFINITY;
  if (options.kills > 0) return tellFaults(await playKills({ ...options, until }));
  if (options.requests > 0) return tellFaults(await playRequests({ ...options, until }));
  const progress = soakedSoFar(options.seed);
  console.log(`seed ${options.seed}, ${progress.played} sequences played before`);
  const server = await ownServer();
  const browser = await openBrowser();
  try {
    await server.start();
    await playAll(browser, server, progress, { sequences: options.sequences, until });
  } finally {
    await browser.close();
    await server.remove();
  }
  tell(progress, options.sequences);
  if (progress.faults.length > 0 || progress.played >= options.sequences) forgetSoak();
  return progress.faults.length > 0 ? 1 : 0;
};
