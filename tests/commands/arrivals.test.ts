/** Who connects is taken before the next work begins: Node takes one in each turn, and a turn of work is long. */
import { once } from 'node:events';
import { type AddressInfo, connect, type Socket } from 'node:net';
import { expect, it } from 'vitest';
import { admission } from '#commands/server/admission.mjs';
import { arrivals } from '#commands/server/arrivals.mjs';
import { addressesIn } from '#commands/server/forwarded.mjs';
import { bounded, closed } from '#commands/server/http-server.mjs';

/** Turns and time by hand; `turn(n)` is a turn of the loop in which n connections are taken. */
const byHand = () => {
  const at = { now: 0 };
  const looks: (() => void)[] = [];
  const { came, settled } = arrivals(
    () => at.now,
    (look: () => void) => looks.push(look),
  );
  const turn = (connections: number, ms = 1): void => {
    at.now += ms;
    for (let n = 0; n < connections; n += 1) came();
    for (const look of looks.splice(0)) look();
  };
  return { settled, turn };
};

it.each([
  ['nobody comes', [0, 0], 2],
  ['one comes in the turn in which it is asked', [1, 0], 2],
  ['one comes in each of three turns', [1, 1, 1, 0], 4],
])('where %s, work begins after the first whole turn without anybody', (_, connections, turns) => {
  const { settled, turn } = byHand();
  let begun = 0;
  settled(() => {
    begun += 1;
  });
  for (const [n, count] of connections.entries()) {
    expect([n, begun]).toEqual([n, 0]);
    turn(count);
  }
  expect([connections.length, begun]).toEqual([turns, 1]);
});

it.each([
  [999, 0],
  [1000, 1],
  [1001, 1],
])('after %i ms with somebody new in each turn, work has begun %i times', (ms, times) => {
  const { settled, turn } = byHand();
  let begun = 0;
  settled(() => {
    begun += 1;
  });
  turn(1);
  turn(1, ms - 1);
  expect(begun).toBe(times);
});

it('the line lets all that wait in at once when nobody else is coming, and asks anew for the next', () => {
  const asked: (() => void)[] = [];
  const { enter } = admission(
    () => 0,
    (go: () => void) => asked.push(go),
  );
  const leaves: (() => void)[] = [];
  const come = (count: number) =>
    Array.from({ length: count }, (_, n) => enter(`phone-${n}`, (leave: () => void) => leaves.push(leave)));
  // As many find a place as without waiting for others: 16, and 8 in the line.
  expect(come(25).filter((seconds) => seconds > 0)).toHaveLength(1);
  expect([asked.length, leaves.length]).toEqual([1, 0]);
  asked[0]!();
  expect(leaves).toHaveLength(16);
  leaves[0]!();
  leaves[1]!();
  expect([asked.length, leaves.length]).toEqual([2, 16]);
  asked[1]!();
  expect(leaves).toHaveLength(18);
});

it('a hundred who connect while entries wait are all taken before one of these is begun', async () => {
  const taken: number[] = [];
  let connections = 0;
  const server = bounded((_, response) => {
    taken.push(connections);
    response.end('stored');
  }, addressesIn([])!);
  server.on('connection', () => {
    connections += 1;
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  const post = 'POST /api/entries HTTP/1.1\r\nHost: x\r\nContent-Length: 2\r\n\r\n{}';
  const begin = (): Socket => {
    const socket = connect(port, '127.0.0.1');
    socket.resume();
    socket.write(post);
    return socket;
  };
  const sockets = Array.from({ length: 100 }, begin);
  while (taken.length < 24) await new Promise((resolve) => setImmediate(resolve));
  expect(taken[0]).toBe(100);
  for (const socket of sockets) socket.destroy();
  await closed(server);
});
