/** One server on one whole file, readable by nobody else, and what comes in is told apart by who really sent it. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, existsSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { type AddressInfo, connect } from 'node:net';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';
import { requireWholeFile } from '#commands/server/checked-file.mjs';
import { addressesIn, networkOfPeer } from '#commands/server/forwarded.mjs';
import { bounded, closed } from '#commands/server/http-server.mjs';
import { holdFile, lockFileOf } from '#commands/server/one-server.mjs';
import { migrateStore } from '#data/database/migrate.ts';
import { openStore } from '#data/open-store.ts';
import { openToOthers } from '#server/file-modes.ts';
import { openRuntime } from '#server/runtime.ts';
import { clinicNamed } from '#tests/support/clinic.ts';
import { freshFile, freshStore, migrationsFolder } from '#tests/support/store.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

describe('the lock of a file', () => {
  const other = (file: string) =>
    spawn(
      process.execPath,
      [
        '--input-type=module',
        '--eval',
        `const { holdFile } = await import('./src/commands/server/one-server.mjs');
         globalThis.held = holdFile(${JSON.stringify(file)});
         process.stdout.write('held');
         setInterval(() => undefined, 1000);`,
      ],
      { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] },
    );

  it('keeps a second server off, names the process that has it, and goes with that process however it ends', async () => {
    const file = freshFile();
    const first = other(file);
    await once(first.stdout, 'data');
    expect(() => holdFile(file)).toThrow(
      new RegExp(`Another server \\(process ${first.pid}\\) is running on .*End that one first`),
    );
    first.kill('SIGKILL');
    await once(first, 'close');
    holdFile(file).release();
    expect(existsSync(lockFileOf(file))).toBe(true);
  });

  it('is of one file and not of another', () => {
    const [one, two] = [holdFile(freshFile()), holdFile(freshFile())];
    one.release();
    two.release();
  });
});

describe('a file looked at before a start', () => {
  it('passes when it is whole, empty or not there yet', async () => {
    const store = freshStore();
    await requireWholeFile(store.file);
    const empty = freshFile();
    await requireWholeFile(empty);
    writeFileSync(empty, '');
    await requireWholeFile(empty);
    store.close();
  });

  it('is not looked through over a size at which a clinic would wait for its server', async () => {
    const store = freshStore();
    await clinicNamed(store, 'a');
    store.writer.client.exec("UPDATE clinic SET name = CAST(x'41ff' AS TEXT)");
    store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
    const { size } = statSync(store.file);
    await expect(requireWholeFile(store.file, size)).rejects.toThrow(/no text/);
    await requireWholeFile(store.file, size - 1);
    store.close();
  });

  it('is refused with what is wrong and the way out when a text in it would end the process that reads it', async () => {
    const store = freshStore();
    await clinicNamed(store, 'a');
    store.writer.client.exec("UPDATE clinic SET name = CAST(x'41ff' AS TEXT)");
    const read = spawnSync(
      process.execPath,
      [
        '--eval',
        `new (require('libsql'))(${JSON.stringify(store.file)}).prepare('SELECT name FROM clinic').get()`,
      ],
      { cwd: root },
    );
    // What this guards against: no catch in that process could have stood in the way.
    expect(read.signal ?? read.status).not.toBe(0);
    await expect(requireWholeFile(store.file)).rejects.toThrow(
      /cannot be used: clinic, row 1: the bytes in name are no text\. .*npm run restore/,
    );
    store.close();
  });
});

describe('the rights of the clinic’s files', () => {
  it('are the owner’s alone from the start, whatever a process leaves to others', async () => {
    const file = freshFile();
    const { store } = openRuntime(readEnvironment({ DATABASE_FILE: file }));
    await clinicNamed(store, 'a');
    expect(process.umask() & 0o044).toBe(0);
    expect(readdirSync(`${file}.keys`)).toHaveLength(2);
    expect(existsSync(`${file}-wal`)).toBe(true);
    expect(openToOthers(file)).toEqual([]);
    store.close();
  });

  it.each([
    [0o600, 0],
    [0o640, 1],
    [0o604, 1],
    [0o620, 1],
    [0o601, 1],
  ])('%o leaves %i file open to others', (mode, count) => {
    const store = freshStore();
    store.close();
    chmodSync(store.file, mode);
    expect(openToOthers(store.file)).toHaveLength(count);
    expect(statSync(store.file).mode & 0o777).toBe(mode);
  });

  it('are asked for before anything is changed, by every command that opens a clinic’s file', async () => {
    const file = freshFile();
    const store = openStore(file);
    migrateStore(store, migrationsFolder);
    await clinicNamed(store, 'a');
    store.close();
    chmodSync(file, 0o644);
    expect(() => openRuntime(readEnvironment({ DATABASE_FILE: file }))).toThrow(/chmod go= '/);
    expect(existsSync(`${file}.keys`)).toBe(false);
  });
});

describe('the network of a request', () => {
  const of = (trusted: readonly string[], peer: string, forwarded?: string) =>
    networkOfPeer(addressesIn(trusted)!, peer, forwarded);

  it.each([
    ['without a proxy the header is nobody’s word', [], '203.0.113.5', '127.0.0.1', '203.0.113.5'],
    ['without a header', [], '203.0.113.5', undefined, '203.0.113.5'],
    ['an old address in the new form', [], '::ffff:203.0.113.5', '10.9.9.9', '203.0.113.5'],
    ['the proxy’s own word', ['127.0.0.1'], '127.0.0.1', '203.0.113.5', '203.0.113.5'],
    ['what a visitor put before it', ['127.0.0.1'], '127.0.0.1', '10.9.9.9, 203.0.113.5', '203.0.113.5'],
    ['two proxies', ['10.0.0.0/8'], '10.0.0.2', '1.2.3.4, 203.0.113.5, 10.7.0.1', '203.0.113.5'],
    ['a proxy that says nothing', ['127.0.0.1'], '127.0.0.1', undefined, '127.0.0.1'],
    ['a proxy that hands on nonsense', ['127.0.0.1'], '127.0.0.1', 'unknown', '127.0.0.1'],
    ['a proxy that is not named', ['10.0.0.1'], '10.0.0.2', '203.0.113.5', '10.0.0.2'],
    ['another family', ['::1', 'fd00::/8'], '::1', '2001:db8::7, fd00::9', '2001:db8::7'],
  ])('%s', (_, trusted, peer, forwarded, network) => {
    expect(of(trusted, peer, forwarded)).toBe(network);
  });
});

describe('the server in front of the pages', () => {
  let server: ReturnType<typeof bounded> | null = null;
  afterEach(async () => {
    if (server) await closed(server);
    server = null;
  });
  const listen = async (trusted: readonly string[] = []) => {
    const seen: string[] = [];
    server = bounded((request, response) => {
      seen.push(String(request.headers['x-forwarded-for']));
      response.end('page');
    }, addressesIn(trusted)!);
    server.listen(0, '127.0.0.1');
    await once(server, 'listening');
    return { seen, port: (server.address() as AddressInfo).port };
  };
  const raw = async (port: number, text: string): Promise<string> => {
    const socket = connect(port, '127.0.0.1');
    let said = '';
    socket.on('data', (part) => {
      said += part;
    });
    socket.write(text);
    await once(socket, 'close');
    return said;
  };

  it.each(['TRACE', 'PUT', 'DELETE', 'PATCH', 'PROPFIND'])(
    '%s reaches no page and is answered with the headers of everything else',
    async (method) => {
      const { seen, port } = await listen();
      const said = await raw(port, `${method} / HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`);
      expect(said).toMatch(/^HTTP\/1\.1 405 /);
      for (const line of [
        'Allow: GET, HEAD, POST, OPTIONS',
        'X-Content-Type-Options: nosniff',
        'X-Frame-Options: DENY',
      ])
        expect(said).toContain(line);
      expect(said).toContain("Content-Security-Policy: default-src 'none'");
      expect(seen).toEqual([]);
    },
  );

  it('hands on one network, found by itself, however many the visitor has made up', async () => {
    const made = { 'x-forwarded-for': '198.51.100.7, 127.0.0.2' };
    const open = await listen();
    await fetch(`http://127.0.0.1:${open.port}/`, { headers: made });
    expect(open.seen).toEqual(['127.0.0.1']);
    await closed(server!);
    const proxied = await listen(['127.0.0.0/8']);
    await fetch(`http://127.0.0.1:${proxied.port}/`, { headers: made });
    expect(proxied.seen).toEqual(['198.51.100.7']);
  });

  it('bounds how long headers and bodies may take, and how many connect', async () => {
    await listen();
    expect(server).toMatchObject({ headersTimeout: 10_000, requestTimeout: 30_000, maxConnections: 1000 });
  });

  it('finishes the answers under way before it ends, and takes nothing new', async () => {
    let answer: (() => void) | null = null;
    server = bounded((_, response) => {
      answer = () => response.end('late but whole');
    }, addressesIn([])!);
    server.listen(0, '127.0.0.1');
    await once(server, 'listening');
    const { port } = server.address() as AddressInfo;
    const asked = fetch(`http://127.0.0.1:${port}/`);
    await once(server, 'request');
    const ended = closed(server);
    await expect(fetch(`http://127.0.0.1:${port}/`)).rejects.toThrow();
    answer!();
    expect(await (await asked).text()).toBe('late but whole');
    await ended;
    server = null;
  });
});
