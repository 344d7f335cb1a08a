/**
 * Generated requests to the real server: every procedure and every address, as each of the people of the demo clinic
 * and as nobody. Whatever is answered with 500 or more and says no reason is a fault; the memory held is looked at.
 */
import { demoNow } from '#demo/clinic.ts';
import { seeded } from '#simulation/raises/seeded.ts';
import { percentileOf } from '../bench/pairs.ts';
import { freePort, type OwnServer, ownServer } from '../phone-sequences/own-server.ts';
import { read } from '../phone-sequences/stored.ts';
import { sessionOf, signedIn } from '../server-kills/savers.ts';
import { addressesOfPages, kindsOfPapers } from './asked-pages.ts';
import { describedProcedures } from './described-inputs.ts';
import { type Drawing, drawn } from './generated-values.ts';

export interface Requests {
  readonly requests: number;
  readonly seed: number;
  /** Instant of the clock after which no more are sent. */
  readonly until: number;
}

const who = [
  ...['clinician', 'reviewer', 'admin', 'reception', 'other-clinic', null],
  ...Array.from({ length: 8 }, (_, n) => `patient-${n + 1}`),
];
const atOnce = 8;
const longestAnswerMs = 120_000;
/** Of so many one may end without an answer on a busy machine; more is a fault. */
const unansweredOneIn = 1000;
const pageOneIn = 8;
const oddOneIn = 40;

interface Asked {
  readonly path: string;
  readonly method: 'GET' | 'POST';
  readonly body?: string;
}

interface Run {
  readonly times: number[];
  readonly statuses: Map<number, number>;
  readonly faults: string[];
  readonly memoryMb: number[];
  /** Connections that ended before an answer, as one does that was kept open too long by the side that asks. */
  unanswered: number;
}

const idsIn = (file: string): readonly string[] =>
  ['patient', 'prescription', 'training_session', 'decision', 'episode', 'site'].flatMap((table) =>
    read<{ id: string }>(file, `SELECT id FROM ${table} LIMIT 40`).map(({ id }) => id),
  );

/** What is asked next, one after another: all procedures and addresses come round again and again. */
const asking = (at: Drawing) => {
  const procedures = describedProcedures();
  const pages = addressesOfPages();
  const { random } = at;
  const page = (): Asked => {
    const varied = random
      .pick(pages)
      .replace('[kind]', () => random.pick(kindsOfPapers))
      .replace(/\[[^\]]+\]/g, () => random.pick(at.ids));
    const query = random.chance(0.3) ? `?patient=${random.pick(at.ids)}&weeks=${random.below(6)}` : '';
    const isForm = varied.startsWith('/forms/') || varied.startsWith('/api/');
    const body = JSON.stringify(drawn(at, { type: 'object', properties: {} }));
    return isForm ? { path: varied, method: 'POST', body } : { path: `${varied}${query}`, method: 'GET' };
  };
  let next = 0;
  return (): Asked => {
    if (random.below(pageOneIn) === 0) return page();
    const { path, isQuery, inputs } = procedures[next++ % procedures.length]!;
    const parts = inputs.map((one) => drawn(at, one));
    const areRecords = parts.every((one) => typeof one === 'object' && one !== null);
    const input = areRecords && parts.length > 0 ? Object.assign({}, ...(parts as object[])) : parts[0];
    const text = JSON.stringify(input ?? null);
    return isQuery
      ? { path: `/api/trpc/${path}?input=${encodeURIComponent(text)}`, method: 'GET' }
      : { path: `/api/trpc/${path}`, method: 'POST', body: text };
  };
};

const send = async (address: string, asked: Asked, cookie: string, run: Run): Promise<number> => {
  const began = performance.now();
  const headers = { 'content-type': 'application/json', origin: address, cookie };
  const sent = { method: asked.method, headers, body: asked.body, redirect: 'manual' } as const;
  const signal = AbortSignal.timeout(longestAnswerMs);
  const answer = await fetch(`${address}${asked.path}`, { ...sent, signal }).catch(() => null);
  const said = await answer?.text().catch(() => null);
  if (!answer || typeof said !== 'string') {
    run.unanswered += 1;
    return 0;
  }
  run.times.push(performance.now() - began);
  run.statuses.set(answer.status, (run.statuses.get(answer.status) ?? 0) + 1);
  const isExplained = answer.status === 503 && answer.headers.has('retry-after');
  if (answer.status >= 500 && !isExplained)
    run.faults.push(
      `${answer.status} ${asked.method} ${asked.path} ${asked.body ?? ''}: ${said}`.slice(0, 600),
    );
  return answer.status;
};

/** Who is signed out by a call of theirs signs in again; who cannot goes on as nobody. */
const cookieOf = async (address: string, name: string | null): Promise<string> => {
  if (name === null) return '';
  return (await signedIn(address, name).catch(() => ({ cookie: '' }))).cookie;
};

const play = async (server: OwnServer, memoryAt: string, asked: Requests, run: Run): Promise<void> => {
  const { address } = server;
  const cookies = new Map<string | null, string>();
  for (const name of who) cookies.set(name, await cookieOf(address, name));
  const random = seeded(asked.seed);
  const next = asking({ random, ids: idsIn(server.file), oddOneIn });
  let sent = 0;
  const one = async (): Promise<void> => {
    while (sent < asked.requests && Date.now() < asked.until) {
      sent += 1;
      const name = random.pick(who);
      if (sent % 5000 === 0) {
        const text = await (await fetch(memoryAt)).text();
        run.memoryMb.push(Math.round(Number(/^process_resident_memory_bytes (\d+)/m.exec(text)?.[1]) / 1e6));
        console.log(`${sent} requests, ${run.memoryMb.at(-1)} MB, ${run.faults.length} faults`);
      }
      const status = await send(address, next(), cookies.get(name)!, run);
      if (status === 401 && name !== null && random.below(20) === 0)
        cookies.set(name, await cookieOf(address, name));
    }
  };
  await Promise.all(Array.from({ length: atOnce }, one));
};

/** Whether an entry is still taken, after all of that. */
const stillSaves = async ({ address }: OwnServer, run: Run): Promise<void> => {
  const { cookie } = await signedIn(address, 'patient-9');
  const body = JSON.stringify({ kind: 'session', entry: sessionOf('after-all', Date.parse(demoNow)) });
  const status = await send(address, { path: '/api/entries', method: 'POST', body }, cookie, run);
  if (status !== 200) run.faults.push(`afterwards an entry was answered with ${status}`);
};

/** Answers the faults. */
export const playRequests = async (asked: Requests): Promise<readonly string[]> => {
  const metrics = `127.0.0.1:${await freePort()}`;
  process.env.METRICS_ADDRESS = metrics;
  const server = await ownServer();
  const run: Run = { times: [], statuses: new Map(), faults: [], memoryMb: [], unanswered: 0 };
  try {
    await server.start();
    await play(server, `http://${metrics}/metrics`, asked, run);
    await stillSaves(server, run);
  } finally {
    await server.remove();
  }
  const times = [50, 95, 99].map((one) => Math.round(percentileOf(run.times, one)));
  const statuses = [...run.statuses].sort(([one], [other]) => one - other);
  console.log(`${run.times.length} requests: p50, p95, p99 ${times.join(', ')} ms`);
  console.log(`by status: ${statuses.map(([status, count]) => `${status} ${count}`).join(', ')}`);
  console.log(`without an answer: ${run.unanswered}`);
  if (run.unanswered * unansweredOneIn > run.times.length)
    run.faults.push(`${run.unanswered} requests ended without an answer`);
  console.log(`memory every 5000: ${run.memoryMb.join(', ')} MB`);
  return run.faults;
};
