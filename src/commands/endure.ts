/**
 * `npm run endure -- [--minutes N] [--seed N] [--sequences N]`: sessions on a phone in a browser under
 * drawn moves (answer, back, reload, no signal, signal, close and open again, send again, and the server
 * stopped and started), at least 200 of them. Each has to stand in the file exactly once. Exit 1 when one
 * does not, 2 on wrong use.
 */
import type { Browser } from 'playwright-core';
import { browserArguments, installedBrowser, noBrowserAdvice } from './browser.mjs';
import { build } from './build.mjs';
import { type OwnServer, ownServer } from './phone-sequences/own-server.ts';
import { drawSequence, phoneOf, playSequence } from './phone-sequences/sequence.ts';
import { sessionsOf, storedTwice } from './phone-sequences/stored.ts';
import { readNumbers } from './prove.ts';
import { CannotGoOn } from './say.mjs';

const usage = 'Use: npm run endure -- [--minutes N] [--seed N] [--sequences N]';
/** People of the demo clinic with a session to do. */
const people = ['patient-1', 'patient-2', 'patient-3', 'patient-5', 'patient-8'] as const;
const dayMs = 86_400_000;

const openBrowser = async (): Promise<Browser> => {
  const executablePath = installedBrowser();
  if (!executablePath) throw new CannotGoOn(noBrowserAdvice);
  const { chromium } = await import('playwright-core');
  return chromium.launch({ executablePath, args: browserArguments });
};

const moveTo = async (address: string, instant: number): Promise<void> => {
  await fetch(`${address}/demo/clock`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ now: new Date(instant).toISOString() }),
  });
};

interface Tally {
  played: number;
  /** Nothing was planned, or the engine asked for rest. */
  idle: number;
  readonly faults: string[];
}

const playOne = async (browser: Browser, server: OwnServer, who: string, seed: number, tally: Tally) => {
  const context = await phoneOf(browser, server.address, who);
  try {
    const before = sessionsOf(server.file, who).length;
    const wasPlayed = await playSequence(context, drawSequence(seed));
    if (!wasPlayed) {
      tally.idle += 1;
      return;
    }
    tally.played += 1;
    const after = sessionsOf(server.file, who).length;
    if (after !== before + 1)
      tally.faults.push(`seed ${seed} ${who}: ${after - before} sessions stand, not 1`);
  } catch (error) {
    tally.faults.push(`seed ${seed} ${who}: ${error instanceof Error ? error.message : String(error)}`);
  } finally {
    await context.close();
  }
};

export const run = async (args: string[]): Promise<number> => {
  const options = readNumbers(args, { minutes: 0, seed: 20_260_131, sequences: 200 });
  if (!options) {
    console.error(usage);
    return 2;
  }
  await build();
  const server = await ownServer();
  const browser = await openBrowser();
  const tally: Tally = { played: 0, idle: 0, faults: [] };
  const until = Date.now() + options.minutes * 60_000;
  // The demo clinic's today is a Monday; the clock moves a day after each round of people.
  let instant = Date.parse('2026-04-20T17:30:00Z');
  console.log(`seed ${options.seed}`);
  try {
    await server.start();
    for (let seed = options.seed; tally.faults.length < 5; instant += dayMs) {
      await moveTo(server.address, instant);
      for (const who of people) await playOne(browser, server, who, seed++, tally);
      console.log(`${tally.played} sequences played, ${tally.idle} days off, ${tally.faults.length} faults`);
      if (tally.played >= options.sequences && Date.now() >= until) break;
      // A server that goes and comes back is part of what is endured.
      await server.stop();
      await server.start();
    }
    const twice = storedTwice(server.file);
    if (twice > 0) tally.faults.push(`${twice} entries stand more than once`);
  } finally {
    await browser.close();
    await server.remove();
  }
  for (const fault of tally.faults) console.error(`FAULT ${fault}`);
  console.log(`${tally.played} sequences, ${tally.faults.length} faults`);
  return tally.faults.length > 0 ? 1 : 0;
};
