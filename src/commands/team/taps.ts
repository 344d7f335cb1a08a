/**
 * `npm run --silent taps -- [--desk] [--keep DIR]`: presses the patient's real pages in a browser along seven paths
 * and prints, as JSON lines, how many presses, pages and words each took, and a line for the words of a usual day.
 * One tap is one press of a pointer. After each path the stored entry is read: a fact the engine needs that is
 * missing, or was never pressed, is a fault, and so is a thing to do on a usual day that lies below the first
 * screen. `--keep` leaves the database, a picture of each press and what was read on each page. Exit 1 when a bar is
 * missed or a fact differs, 2 on wrong use. `--desk` counts a round at the clinic's worklist in the same way: presses
 * of the pointer, fields, and pages loaded. `--monday` opens no browser: it makes a clinic of 200 invented people and
 * prints what its Monday worklist asks of a clinician.
 */
import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { build } from '../build.mjs';
import { openBrowser } from './open-browser.ts';
import { moveClock, type OwnServer, ownServer } from './phone-sequences/own-server.ts';
import { phoneSize } from './phone-sequences/sequence.ts';
import { deskPaths } from './taps/desk-paths.ts';
import { deskPeople, whatWaits } from './taps/desk-people.ts';
import { tellMonday } from './taps/monday.ts';
import { type Path, paths } from './taps/paths.ts';
import { fill, tapsNow } from './taps/people.ts';
import { factsThatDiffer } from './taps/stored-facts.ts';
import { walkDesk } from './taps/walk-desk.ts';
import { type Walked, walkPath, wordsOf } from './taps/walk-path.ts';
import { usualDay } from './taps/words-on.ts';

const usage = 'Use: npm run --silent taps -- [--monday] | [--desk] [--keep DIR]';

/** Most words of a usual day: a morning as usual and a session of two exercises. */
const wordBars = { wordsToRead: 250, wordsWithLabels: 370, wordsVisible: 950 } as const;

const keepIn = (args: readonly string[]): string | null | undefined => {
  if (args.length === 0) return null;
  const [name, folder, ...more] = args;
  return name === '--keep' && folder && more.length === 0 ? path.resolve(folder) : undefined;
};

interface Counted {
  readonly walked: ReadonlyMap<string, Walked>;
  readonly faults: readonly string[];
}

const countAll = async (browser: Browser, server: OwnServer, keep: string | null): Promise<Counted> => {
  const walked = new Map<string, Walked>();
  const faults: string[] = [];
  const one = async (path: Path) => {
    const folder = keep === null ? undefined : `${keep}/${path.path}`;
    if (folder) mkdirSync(folder, { recursive: true });
    const found = await walkPath({
      browser,
      address: server.address,
      who: path.who,
      presses: path.presses,
      ...(folder ? { keep: folder } : {}),
    });
    walked.set(path.path, found);
    if (folder) writeFileSync(`${folder}/words.json`, JSON.stringify(found.pages, null, 1));
    console.log(
      JSON.stringify({
        path: path.path,
        taps: found.taps,
        pages: found.headings.length,
        words: wordsOf(found),
        todayPx: found.todayPx,
      }),
    );
    if (found.taps > path.bar) faults.push(`${path.path}: ${found.taps} taps, at most ${path.bar}`);
    const differs = factsThatDiffer(server.file, path);
    if (differs) faults.push(`${path.path}: ${differs}`);
  };
  for (const path of paths) {
    try {
      await one(path);
    } catch (error) {
      faults.push(`${path.path}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  return { walked, faults };
};

const tellUsualDay = (walked: Counted['walked']): readonly string[] => {
  const parts = ['morning-as-usual-one-joint', 'session-two-exercises'].flatMap(
    (name) => walked.get(name) ?? [],
  );
  const words = usualDay(parts.flatMap(({ pages }) => pages));
  console.log(JSON.stringify({ path: 'usual-day', ...words }));
  const low = parts
    .filter(({ todayPx }) => todayPx > phoneSize.height)
    .map(({ todayPx }) => `usual-day: what to do ends at ${todayPx} px, at most ${phoneSize.height}`);
  const long = (Object.keys(wordBars) as (keyof typeof wordBars)[])
    .filter((name) => words[name] > wordBars[name])
    .map((name) => `usual-day: ${name} ${words[name]}, at most ${wordBars[name]}`);
  return [...low, ...long];
};

const countDesk = async (
  browser: Browser,
  { address, file }: OwnServer,
  keep: string | null,
): Promise<readonly string[]> => {
  if (keep) mkdirSync(keep, { recursive: true });
  const faults: string[] = [];
  for (const one of deskPaths) {
    try {
      const found = await walkDesk(browser, address, one, keep);
      console.log(JSON.stringify({ path: one.path, ...found }));
      if (found.taps > one.mostTaps) faults.push(`${one.path}: ${found.taps} taps, at most ${one.mostTaps}`);
      if (found.fields > (one.mostFields ?? Number.POSITIVE_INFINITY))
        faults.push(`${one.path}: ${found.fields} fields, at most ${one.mostFields}`);
      if (found.pages > one.mostPages)
        faults.push(`${one.path}: ${found.pages} pages, at most ${one.mostPages}`);
      const differs = one.differs(file);
      if (differs) faults.push(`${one.path}: ${differs}`);
    } catch (error) {
      faults.push(`${one.path}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  return faults;
};

const countPhone = async (
  browser: Browser,
  server: OwnServer,
  keep: string | null,
): Promise<readonly string[]> => {
  const { walked, faults } = await countAll(browser, server, keep);
  return [...faults, ...tellUsualDay(walked)];
};

export const run = async (args: readonly string[]): Promise<number> => {
  if (args.length === 1 && args[0] === '--monday') {
    await tellMonday();
    return 0;
  }
  const isDesk = args[0] === '--desk';
  const keep = keepIn(isDesk ? args.slice(1) : args);
  if (keep === undefined) {
    console.error(usage);
    return 2;
  }
  await build();
  const server = await ownServer();
  const browser = await openBrowser();
  try {
    const { port } = new URL(server.address);
    await (isDesk ? fill(server.file, port, deskPeople, whatWaits) : fill(server.file, port));
    await server.start();
    await moveClock(server.address, Date.parse(tapsNow));
    const missed = await (isDesk ? countDesk : countPhone)(browser, server, keep);
    for (const fault of missed) console.error(`FAULT ${fault}`);
    await server.stop();
    if (keep) copyFileSync(server.file, path.join(keep, 'clinic.sqlite'));
    return missed.length > 0 ? 1 : 0;
  } finally {
    await browser.close();
    await server.remove();
  }
};
