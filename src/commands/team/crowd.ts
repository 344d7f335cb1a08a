/**
 * `npm run crowd -- [--seconds N] [--clients N] [--slow N]`: so many phones sending one entry after another, and so
 * many connections that trickle, against the built server; once with the line in front of it and once without.
 * Says of each how many were saved a second and how long one took. Exit 1 when under 90 of 100 as many are saved
 * with the line, or one in a hundred takes over 5 seconds with it.
 */
import { connect, type Socket } from 'node:net';
import { setTimeout as wait } from 'node:timers/promises';
import { demoNow } from '#demo/clinic.ts';
import { inRoot } from '../paths.mjs';
import { percentileOf } from './bench/pairs.ts';
import { readNumbers } from './check-monotonic.ts';
import { ownServer } from './phone-sequences/own-server.ts';
import { people, post, type Saver, sessionOf, signedIn } from './server-kills/savers.ts';

const usage = 'Use: npm run crowd -- [--seconds N] [--clients N] [--slow N]';
const signInsEach = 3;
const longestMs = 5000;
const leastShare = 0.9;

interface Crowd {
  readonly seconds: number;
  readonly clients: number;
  readonly slow: number;
}

interface Seen {
  /** Of each answer that took an entry: from the try that got it until the answer. */
  readonly answers: number[];
  /** The same from the first try on. */
  readonly saves: number[];
  sentAway: number;
  failed: number;
  isOver: boolean;
}

/** Headers and bodies that come a byte at a time, and are begun again when the server ends them. */
const trickle = (address: string, seen: Seen): void => {
  const { hostname, port } = new URL(address);
  const begin = (): Socket => {
    const socket = connect(Number(port), hostname);
    socket.write('POST /api/entries HTTP/1.1\r\nHost: x\r\nContent-Length: 5000\r\n\r\n');
    const drip = setInterval(() => socket.write('x'), 1000);
    socket.on('error', () => undefined);
    socket.on('close', () => {
      clearInterval(drip);
      if (!seen.isOver) setTimeout(begin, 500);
    });
    socket.on('data', () => undefined);
    return socket;
  };
  begin().unref();
};

/** Empty where none came in time. */
const answerTo = async (sent: Promise<Response>): Promise<{ said: string; seconds: string | null }> => {
  try {
    const answer = await sent;
    return { said: await answer.text(), seconds: answer.headers.get('retry-after') };
  } catch {
    return { said: '', seconds: null };
  }
};

/** One phone: an entry is sent until it is taken, after as many seconds as it is told, then the next. */
const phone = async ({ address, cookie }: Saver, name: string, seen: Seen): Promise<void> => {
  const now = Date.parse(demoNow);
  for (let count = 0; !seen.isOver; count += 1) {
    const began = performance.now();
    for (let isTaken = false; !isTaken && !seen.isOver; ) {
      const tried = performance.now();
      const body = { kind: 'session', entry: sessionOf(`${name}-${count}`, now) };
      const { said, seconds } = await answerTo(post(address, '/api/entries', body, cookie));
      isTaken = said.includes('"stored"');
      if (seen.isOver) return;
      if (isTaken) {
        seen.answers.push(performance.now() - tried);
        seen.saves.push(performance.now() - began);
        continue;
      }
      if (seconds) seen.sentAway += 1;
      else seen.failed += 1;
      await wait(Number(seconds ?? 5) * 1000);
    }
  }
};

interface Figures {
  readonly perSecond: number;
  readonly p99: number;
}

const measured = async (title: string, crowd: Crowd, program?: string): Promise<Figures> => {
  const server = await ownServer(program);
  const seen: Seen = { answers: [], saves: [], sentAway: 0, failed: 0, isOver: false };
  try {
    await server.start();
    const savers: Saver[] = [];
    for (const who of people)
      for (let n = 0; n < signInsEach; n += 1) savers.push(await signedIn(server.address, who));
    for (let n = 0; n < crowd.slow; n += 1) trickle(server.address, seen);
    const phones = Array.from({ length: crowd.clients }, (_, n) =>
      phone(savers[n % savers.length]!, `phone-${n}`, seen),
    );
    await wait(crowd.seconds * 1000);
    seen.isOver = true;
    await Promise.all(phones);
  } finally {
    seen.isOver = true;
    await server.remove();
  }
  const of = (all: readonly number[]) => [50, 95, 99].map((one) => Math.round(percentileOf(all, one)));
  const perSecond = Math.round((seen.answers.length / crowd.seconds) * 10) / 10;
  console.log(
    `${title}: ${seen.answers.length} saved, ${perSecond} a second; an answer p50, p95, p99 ${of(seen.answers).join(', ')} ms; from the first try on ${of(seen.saves).join(', ')} ms; ${seen.sentAway} sent away, ${seen.failed} failed`,
  );
  return { perSecond, p99: percentileOf(seen.answers, 99) };
};

export const run = async (args: string[]): Promise<number> => {
  const crowd = readNumbers(args, { seconds: 60, clients: 200, slow: 300 });
  if (!crowd) {
    console.error(usage);
    return 2;
  }
  const without = await measured(
    'without',
    crowd,
    inRoot('src', 'commands', 'team', 'crowd', 'without-turns.mjs'),
  );
  const withLine = await measured('with', crowd);
  const share = withLine.perSecond / without.perSecond;
  console.log(`${Math.round(share * 100)} of 100 as many are saved with the line`);
  return share >= leastShare && withLine.p99 <= longestMs ? 0 : 1;
};
