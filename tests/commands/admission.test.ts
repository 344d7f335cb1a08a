/** Entries of phones are let in so many at a time; who is sent away is told when to come again, and gets in then. */
import { once } from 'node:events';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { type AddressInfo, connect } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import { admission } from '#commands/server/admission.mjs';
import { addressesIn } from '#commands/server/forwarded.mjs';
import { bounded, closed } from '#commands/server/http-server.mjs';

/** 16 at once; in the line 8 places, 16 for those who come again, more once it is seen that saving is fast. */
const line = () => {
  const at = { now: 0 };
  const { enter } = admission(() => at.now);
  const inside: { who: string; leave: () => void }[] = [];
  const come = (who: string): number =>
    enter(who, (leave: () => void) => inside.push({ who, leave: () => leave() }));
  const fill = (count: number, name: string) =>
    Array.from({ length: count }, (_, n) => come(`${name}-${n}`)).filter((seconds) => seconds === 0).length;
  return { at, come, fill, inside };
};

describe('the line of entries', () => {
  it.each([
    [15, 15, 0],
    [16, 16, 0],
    [17, 16, 0],
    [23, 16, 0],
    [24, 16, 0],
    [25, 16, 1],
  ])('of %i at once lets %i in and sends %i away', (count, inside, away) => {
    const { fill, inside: now } = line();
    expect(count - fill(count, 'phone')).toBe(away);
    expect(now).toHaveLength(inside);
  });

  it('lets the next in as one leaves, in the order in which they came, and one that leaves twice counts once', () => {
    const { come, inside } = line();
    for (let n = 0; n < 20; n += 1) come(`${n}`);
    inside[5]!.leave();
    inside[5]!.leave();
    expect(inside.map(({ who }) => who)).toEqual(Array.from({ length: 17 }, (_, n) => `${n}`));
  });

  it('keeps places that newcomers do not get for those it has sent away, up to 16', () => {
    const { come, fill } = line();
    fill(24, 'first');
    expect(come('late')).toBeGreaterThan(0);
    expect(come('other')).toBeGreaterThan(0);
    expect(come('late')).toBe(0);
    expect(come('third')).toBeGreaterThan(0);
    const again = Array.from({ length: 7 }, (_, n) => [come(`again-${n}`), come(`again-${n}`)]);
    expect(again.map(([, second]) => second).every((seconds) => seconds === 0)).toBe(true);
    expect([come('last'), come('last')].every((seconds) => seconds > 0)).toBe(true);
  });

  it('has everybody in at last when each comes again once told, however many keep coming', () => {
    const { come, inside } = line();
    const waits = new Map<string, number>();
    const names = Array.from({ length: 200 }, (_, n) => `phone-${n}`);
    for (const who of names) if (come(who) > 0) waits.set(who, 1);
    for (let turn = 0; turn < 400; turn += 1) {
      // One is saved and sends its next at once; then those who were sent away come again.
      const saved = inside[turn]!;
      saved.leave();
      if (come(saved.who) > 0) waits.set(saved.who, 1);
      for (const who of [...waits.keys()]) if (come(who) === 0) waits.delete(who);
    }
    const saved = new Set(inside.slice(0, 400).map(({ who }) => who));
    expect(names.filter((who) => !saved.has(who))).toEqual([]);
  });

  /** A line from which 32 have left, one in so many milliseconds, and how many newcomers and returners it then takes. */
  const paced = (eachMs: number) => {
    const { at, come, fill, inside } = line();
    fill(23, 'phone');
    for (let n = 0; n < 32; n += 1) {
      come(`next-${n}`);
      at.now += eachMs;
      inside[n]!.leave();
    }
    // 16 are let in, 7 wait.
    const newcomers = 7 + fill(100, 'new');
    const names = Array.from({ length: 200 }, (_, n) => `again-${n}`);
    const told = names.map(come).at(-1)!;
    const returning = newcomers + names.map(come).filter((seconds) => seconds === 0).length;
    return { newcomers, returning, told };
  };

  it.each([
    // 32 in 31 spans of 20 ms are 51.6 a second: 52 in one second, 104 in two; never under 8 and 16.
    ['10 ms', 10, 64, 128, 2],
    ['20 ms', 20, 52, 104, 2],
    ['30 ms', 30, 35, 69, 2],
    ['60 ms', 60, 18, 35, 2],
    ['1 s', 1000, 8, 16, 24],
    ['2 s', 2000, 8, 16, 30],
  ])(
    'takes at one save in %s only as many as are saved in some seconds, and says when to come again',
    (_, eachMs, newcomers, returning, told) => {
      expect(paced(eachMs)).toEqual({ newcomers, returning, told });
    },
  );
});

describe('the server in front of the pages', () => {
  let server: ReturnType<typeof bounded> | null = null;
  afterEach(async () => {
    server?.closeAllConnections();
    if (server) await closed(server);
    server = null;
  });
  const listen = async () => {
    const under: ServerResponse[] = [];
    const bodies: string[] = [];
    server = bounded(async (request: IncomingMessage, response: ServerResponse) => {
      if (!request.url?.startsWith('/api/entries')) return response.end('page');
      let body = '';
      for await (const part of request) body += part;
      bodies.push(body);
      under.push(response);
      return response;
    }, addressesIn([])!);
    server.listen(0, '127.0.0.1');
    await once(server, 'listening');
    const { port } = server.address() as AddressInfo;
    return { under, bodies, port, address: `http://127.0.0.1:${port}` };
  };
  const entry = (address: string, who: string, body = '{}') =>
    fetch(`${address}/api/entries`, { method: 'POST', body, headers: { cookie: who } });
  const until = async (holds: () => boolean) => {
    while (!holds()) await new Promise((resolve) => setImmediate(resolve));
  };

  it('sends those over its bound away with when to come, takes them as they come again, and holds up nothing else', async () => {
    const { address, under } = await listen();
    const refused: { who: string; response: Response }[] = [];
    const taken: string[] = [];
    const send = async (who: string) => {
      const response = await entry(address, who);
      if (response.ok) taken.push(who);
      else refused.push({ who, response });
    };
    const all = Array.from({ length: 200 }, (_, n) => send(`who=${n}`));
    await until(() => refused.length === 176);
    const { response } = refused[0]!;
    expect([response.status, response.headers.get('retry-after')]).toEqual([503, '2']);
    expect(response.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(await response.json()).toMatchObject({ problem: 'busy' });
    // 8 of them get the places that newcomers do not.
    const again = refused.splice(0, 8).map(({ who }) => send(who));
    expect(await (await fetch(`${address}/page`)).text()).toBe('page');
    for (let n = 0; n < 32; n += 1) {
      await until(() => under.length > n);
      expect(under.length).toBeLessThanOrEqual(n + 16);
      under[n]!.end('stored');
    }
    await Promise.all([...all, ...again]);
    expect([new Set(taken).size, refused.length]).toEqual([32, 168]);
  });

  it('hands on a body as it came, short, long or empty', async () => {
    const { address, bodies, under } = await listen();
    for (const [n, body] of ['', '{}', 'x'.repeat(300_000)].entries()) {
      const sent = entry(address, 'who=1', body);
      await until(() => under.length > n);
      under[n]!.end('stored');
      expect((await sent).status).toBe(200);
      expect(bodies[n]!.length).toBe(body.length);
    }
  });

  it('gives a body that trickles in no place, and one that has gone none either', async () => {
    const { address, port, under } = await listen();
    const slow = Array.from({ length: 90 }, () => {
      const socket = connect(port, '127.0.0.1');
      socket.on('error', () => undefined);
      socket.write('POST /api/entries HTTP/1.1\r\nHost: x\r\nContent-Length: 20\r\n\r\n{"kind"');
      return socket;
    });
    await Promise.all(slow.map((socket) => once(socket, 'connect')));
    const sent = entry(address, 'who=1');
    await until(() => under.length === 1);
    under[0]!.end('stored');
    expect((await sent).status).toBe(200);
    for (const socket of slow) socket.destroy();
  });
});
