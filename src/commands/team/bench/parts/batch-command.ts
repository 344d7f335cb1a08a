/** Lines a second through the calculation desk as a process of its own, every calculation in turn. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { inRoot, root } from '#commands/paths.mjs';
import { registry } from '#core/calculations/registry.ts';
import { type Measured, type Part, rounded } from '../part.ts';

const lines = 200_000;
const linesAtOnce = 1000;

const feed = async (input: NodeJS.WritableStream): Promise<void> => {
  const texts = registry.map((row) => JSON.stringify({ calculation: row.id, input: row.example }));
  for (let from = 0; from < lines; from += linesAtOnce) {
    const some = Array.from({ length: linesAtOnce }, (_, at) => texts[(from + at) % texts.length]!);
    if (!input.write(`${some.join('\n')}\n`)) await once(input, 'drain');
  }
  input.end();
};

export const batchCommandPart: Part = {
  name: 'desk',
  about: 'calculation desk',
  run: async (): Promise<readonly Measured[]> => {
    const child = spawn(process.execPath, [inRoot('src', 'commands', 'run.mjs'), 'calculate'], {
      cwd: root,
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    const seen = { lines: 0, bytes: 0, firstAt: 0, lastAt: 0 };
    child.stdout.on('data', (chunk: Buffer) => {
      seen.lastAt = performance.now();
      seen.firstAt ||= seen.lastAt;
      seen.bytes += chunk.length;
      for (const byte of chunk) if (byte === 10) seen.lines++;
    });
    const ended = once(child, 'close');
    await feed(child.stdin);
    const [code] = await ended;
    const seconds = (seen.lastAt - seen.firstAt) / 1000;
    const figures = {
      lines: seen.lines,
      'lines per second': rounded(seen.lines / seconds),
      'exit code': code,
    };
    const failed = code !== 0 || seen.lines !== lines;
    return [{ part: 'desk', title: batchCommandPart.about, bar: null, paired: null, figures, failed }];
  },
};
