/** The desk as people run it: the real command, its real streams and its exit code. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { evaluate } from '#api/inputs/evaluate.ts';
import { calculationById, registry } from '#core/calculations/registry.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const command = [path.join(root, 'src', 'commands', 'run.mjs'), 'calculate'];

const run = (input: string | Buffer, args: readonly string[] = []) => {
  const done = spawnSync(process.execPath, [...command, ...args], { cwd: root, input, maxBuffer: 2 ** 28 });
  const lines = done.stdout.toString('utf8').split('\n');
  expect(lines.pop(), 'the last line has its end').toBe('');
  return { code: done.status, lines: lines.map((line) => JSON.parse(line)), stderr: done.stderr.toString() };
};

const decide = calculationById('decide');
const good = JSON.stringify({ calculation: 'decide', input: decide?.example });
const megabyte = 1024 * 1024;

describe('hostile lines among good ones', () => {
  const lines: readonly (string | Buffer)[] = [
    `\uFEFF${good}\r`,
    '',
    'nope',
    Buffer.concat([Buffer.from('{"calculation":"'), Buffer.from([0xff, 0xfe]), Buffer.from('","input":{}}')]),
    `{"calculation":"decide","input":{"x":"${'y'.repeat(megabyte)}"}}`,
    '   \t',
    '{"calculation":"no-such-thing","input":{}}',
    '{"calculation":"decide","input":{"facts":{}},"also":1}',
    '\0',
    good,
  ];
  const input = Buffer.concat(lines.flatMap((line) => [Buffer.from(line), Buffer.from('\n')]));
  let done: ReturnType<typeof run>;
  beforeAll(() => {
    done = run(input.subarray(0, -1));
  });

  it('are refused by their own number, in order, and the rest go on', () => {
    expect(done.lines.map(({ line, refused }) => [line, refused?.[0].code ?? 'answered'])).toEqual([
      [1, 'answered'],
      [3, 'not-json'],
      [4, 'not-json'],
      [5, 'too-long'],
      [7, 'unknown-calculation'],
      [8, 'unknown-field'],
      [9, 'not-json'],
      [10, 'answered'],
    ]);
  });

  it('leave nothing on standard error and the exit code at 0: each line had its answer', () => {
    expect(done.stderr).toBe('');
    expect(done.code).toBe(0);
  });

  it('name every missing fact of the engine, none of them guessed', () => {
    const facts = done.lines.find(({ line }) => line === 8)?.refused.slice(1);
    expect(facts.length).toBeGreaterThan(30);
    expect(facts.every(({ code }: { code: string }) => code === 'missing')).toBe(true);
  });
});

describe('a line of exactly 1 MiB', () => {
  const padded = (bytes: number) => `${good}${' '.repeat(bytes - Buffer.byteLength(good))}`;
  it.each([
    ['one byte under', megabyte - 1, undefined],
    ['at the limit', megabyte, undefined],
    ['one byte over', megabyte + 1, 'too-long'],
  ])('%s', (_, bytes, code) => {
    const { lines } = run(`${padded(bytes)}\n${good}`);
    expect(lines.map(({ line, refused }) => [line, refused?.[0].code])).toEqual([
      [1, code],
      [2, undefined],
    ]);
  });
});

describe('every calculation answers at the desk as it does in the pages', () => {
  it('gives the result of its example, unrounded', () => {
    const asked = registry.map(({ id, example }) => JSON.stringify({ calculation: id, input: example }));
    const { lines, code } = run(asked.join('\n'));
    expect(code).toBe(0);
    const expected = registry.map((row, at) => {
      const outcome = evaluate(row, row.example);
      return {
        line: at + 1,
        calculation: row.id,
        ...(outcome.ok ? { result: outcome.result, notes: outcome.notes } : { refused: outcome.refused }),
        source: row.citations.map(({ source, locator, mark }) => ({ key: source, locator, mark })),
      };
    });
    expect(lines).toEqual(JSON.parse(JSON.stringify(expected)));
  });
});

describe('--list', () => {
  it('prints one line for each calculation: id, title, input, result and source', () => {
    const { lines, code } = run('', ['--list']);
    expect(code).toBe(0);
    expect(lines.map(({ id }) => id)).toEqual(registry.map(({ id }) => id));
    for (const line of lines) expect(Object.keys(line)).toEqual(['id', 'title', 'input', 'result', 'source']);
    expect(lines.find(({ id }) => id === 'decide').input).toEqual(JSON.parse(JSON.stringify(decide?.input)));
  });
});

describe('wrong use', () => {
  it.each([[['--lst']], [['--list', 'x']], [['decide']]])('%j ends with code 2 and the usage', (args) => {
    const done = run('', args);
    expect(done.code).toBe(2);
    expect(done.stderr).toContain('npm run --silent calculate');
    expect(done.lines).toEqual([]);
  });

  it('an unknown command ends with code 2', () => {
    const done = spawnSync(process.execPath, [command[0] ?? '', 'no-such-command'], { cwd: root });
    expect(done.status).toBe(2);
    expect(done.stderr.toString()).toContain('no-such-command');
  });
});

describe('streaming', () => {
  it('answers a line before the next one is written', async () => {
    const child = spawn(process.execPath, command, { cwd: root });
    child.stdin.write(`${good}\n`);
    const [first] = await once(child.stdout, 'data');
    expect(String(first)).toMatch(/^\{"line":1,"calculation":"decide","result"/);
    child.stdin.end(good);
    const [second] = await once(child.stdout, 'data');
    expect(String(second)).toMatch(/^\{"line":2,"calculation":"decide","result"/);
    const [code] = await once(child, 'close');
    expect(code).toBe(0);
  });

  it('ends quietly when its reader goes away', async () => {
    const child = spawn(process.execPath, command, { cwd: root });
    child.stdin.on('error', () => {});
    child.stdin.write(`${good}\n`.repeat(5000));
    await once(child.stdout, 'data');
    child.stdout.destroy();
    child.stdin.end();
    let complaint = '';
    child.stderr.on('data', (text) => {
      complaint += String(text);
    });
    await once(child, 'close');
    expect(complaint).toBe('');
  });
});
