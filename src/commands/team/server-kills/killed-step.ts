/**
 * A process that does one act to a file and ends itself hard before the so-manieth step of it, or before the first
 * whose words are named: a statement that writes, or a call by which something reaches the disk or gets its name.
 */
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { connect } from '#data/database/connection.ts';
import { type Act, doAct } from './acts.ts';

interface Asked {
  readonly act: Act;
  readonly file: string;
  readonly auditKeyHex: string;
  /** The schema of the release that does it. */
  readonly release: string;
  readonly at: number | string;
}

const asked = JSON.parse(process.argv[2]!) as Asked;
let count = 0;

const before = (step: string): void => {
  count += 1;
  if (typeof asked.at === 'number' ? count === asked.at : step.includes(asked.at))
    process.kill(process.pid, 'SIGKILL');
};

type Call = (...values: unknown[]) => unknown;

const watched = (on: object, name: string, told: (values: readonly unknown[]) => string): void => {
  const methods = on as Record<string, Call>;
  const call = methods[name]!;
  methods[name] = function (this: unknown, ...values: unknown[]) {
    before(told(values));
    return call.apply(this, values);
  };
};

const writes = /^\s*(insert|update|delete|replace|vacuum)/i;
/** What all connections of this process have in common. */
const connections = (() => {
  const { client } = connect(':memory:');
  client.close();
  return Object.getPrototypeOf(client) as typeof client;
})();
const { prepare } = connections;
connections.prepare = function (this: typeof connections, sql: string) {
  const statement = prepare.call(this, sql);
  if (writes.test(sql)) watched(statement, 'run', () => sql);
  return statement;
} as typeof prepare;
watched(connections, 'exec', ([sql]) => String(sql));
for (const name of [
  'fsyncSync',
  'renameSync',
  'copyFileSync',
  'writeFileSync',
  'cpSync',
  'mkdirSync',
  'rmSync',
])
  watched(fs, name, (values) => `${name} ${String(values[0])}`);
syncBuiltinESMExports();

await doAct(asked.act, asked.file, Buffer.from(asked.auditKeyHex, 'hex'), asked.release);
