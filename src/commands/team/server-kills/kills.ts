/**
 * The real server under savers, ended hard again and again: whatever was acknowledged has to stand in the file
 * exactly once, and its history to hold.
 */
import { setTimeout as wait } from 'node:timers/promises';
import { demoNow } from '#demo/clinic.ts';
import { seeded } from '#simulation/raises/seeded.ts';
import { run as verifyAudit } from '../../verify-audit.ts';
import { percentileOf } from '../bench/pairs.ts';
import { type OwnServer, ownServer } from '../phone-sequences/own-server.ts';
import { read, storedTwice } from '../phone-sequences/stored.ts';
import { people, post, type Saver, sessionOf, signedIn } from './savers.ts';

const saversEach = 3;

interface Load {
  readonly acknowledged: string[];
  /** Of each acknowledged one: milliseconds from the try that got it until the answer. */
  readonly answers: number[];
  readonly refused: string[];
  isOver: boolean;
}

/** Sends one after another, each again and again until it is answered, as a phone does. */
const save = async ({ address, cookie }: Saver, name: string, load: Load, now: number): Promise<void> => {
  for (let count = 0; !load.isOver; count += 1) {
    const entry = sessionOf(`${name}-${count}`, now);
    for (;;) {
      const tried = performance.now();
      const answer = await post(address, '/api/entries', { kind: 'session', entry }, cookie).catch(
        () => null,
      );
      const said = answer?.ok
        ? ((await answer.json().catch(() => null)) as { stored?: string } | null)
        : null;
      if (said?.stored === 'stored' || said?.stored === 'known') {
        load.acknowledged.push(entry.entryId);
        load.answers.push(performance.now() - tried);
      }
      if (said) break;
      if (answer && !answer.ok && answer.status < 500 && answer.status !== 429) {
        load.refused.push(`${entry.entryId}: ${answer.status}`);
        break;
      }
      if (load.isOver) return;
      await wait(200);
    }
  }
};

/** `until` is an instant of the clock, after which no more kills follow. */
interface Kills {
  readonly kills: number;
  readonly seed: number;
  readonly until: number;
}

/** Answers how long the server took to be back after each. */
const killedAgain = async (server: OwnServer, load: Load, asked: Kills): Promise<readonly number[]> => {
  const random = seeded(asked.seed);
  const back: number[] = [];
  while (back.length < asked.kills && Date.now() < asked.until) {
    const enough = load.acknowledged.length + 1 + random.below(30);
    while (load.acknowledged.length < enough) await wait(5);
    await server.kill();
    const began = performance.now();
    await server.start();
    back.push(performance.now() - began);
    if (back.length % 10 === 0) console.log(`${back.length} kills, ${load.acknowledged.length} acknowledged`);
  }
  return back;
};

const spread = (all: readonly number[]): string =>
  `p50, p95, p99 ${[50, 95, 99].map((one) => Math.round(percentileOf(all, one))).join(', ')} ms`;

const faultsIn = async (server: OwnServer, load: Load): Promise<readonly string[]> => {
  const stored = new Set(
    read<{ id: string }>(server.file, 'SELECT entry_id AS id FROM training_session').map(({ id }) => id),
  );
  const lost = load.acknowledged.filter((id) => !stored.has(id));
  const twice = storedTwice(server.file);
  process.env.DATABASE_FILE = server.file;
  const verified = await verifyAudit([]);
  return [
    ...lost.map((id) => `acknowledged and lost: ${id}`),
    ...load.refused.slice(0, 5).map((one) => `refused: ${one}`),
    ...(twice > 0 ? [`${twice} entries stand more than once`] : []),
    ...(verified === 0 ? [] : ['the audit or a row of the record does not hold']),
  ];
};

/** Answers the faults. */
export const playKills = async (asked: Kills): Promise<readonly string[]> => {
  const server = await ownServer();
  const load: Load = { acknowledged: [], answers: [], refused: [], isOver: false };
  try {
    await server.start();
    const now = Date.parse(demoNow);
    const savers: Promise<void>[] = [];
    for (const who of people) {
      const saver = await signedIn(server.address, who);
      for (let n = 0; n < saversEach; n += 1) savers.push(save(saver, `${who}-${n}`, load, now));
    }
    const back = await killedAgain(server, load, asked);
    load.isOver = true;
    await Promise.all(savers);
    await server.stop();
    console.log(
      `${back.length} kills under ${savers.length} savers: ${load.acknowledged.length} acknowledged, ${spread(load.answers)}; back after ${spread(back)}, at most ${Math.round(Math.max(0, ...back))} ms`,
    );
    return await faultsIn(server, load);
  } finally {
    load.isOver = true;
    await server.remove();
  }
};
