/**
 * The calculation desk: JSON lines on standard input, one JSON line for each on standard output.
 * Exit codes: 0 when every line had its answer (a refusal is an answer), 1 when a calculation
 * itself failed, 2 for wrong use.
 */
import { isUtf8 } from 'node:buffer';
import { once } from 'node:events';
import { type Answered, answerLine, notJson, sourcesOf, tooLong } from '#api/batch/answer-line.ts';
import { LineSplitter } from '#api/batch/split-lines.ts';
import { calculationById, registry } from '#core/calculations/registry.ts';

const limitBytes = 1024 * 1024;
const usage = `Usage:
  npm run --silent calculate < lines.jsonl     one {"calculation":"…","input":{…}} on each line
  npm run --silent calculate -- --list         every calculation with its input, result and source
`;

const isBlank = (text: string): boolean => text.trim() === '';

/**
 * Collects the answers to one piece of input and hands them on together, waiting whenever the
 * reader is slower than we are. A program that writes one line and waits gets its answer at once.
 */
class Output {
  #text = '';

  add(line: string): void {
    this.#text += `${line}\n`;
  }

  async flush(): Promise<void> {
    if (this.#text === '') return;
    const text = this.#text;
    this.#text = '';
    if (!process.stdout.write(text)) await once(process.stdout, 'drain');
  }
}

const list = async (): Promise<number> => {
  const output = new Output();
  for (const row of registry) {
    const { id, title, input, result } = row;
    output.add(JSON.stringify({ id, title, input, result, source: sourcesOf(row) }));
  }
  await output.flush();
  return 0;
};

const answerAll = async (): Promise<number> => {
  const output = new Output();
  let faults = 0;
  const take = ({ text, fault }: Answered, number: number): void => {
    output.add(text);
    if (fault === undefined) return;
    faults += 1;
    process.stderr.write(`calculate: line ${number}: ${String(fault)}\n`);
  };
  const splitter = new LineSplitter(limitBytes, {
    overlong: (number) => take(tooLong(number, limitBytes), number),
    line: (bytes, number) => {
      if (!isUtf8(bytes)) return take(notJson(number), number);
      const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('utf8');
      if (!isBlank(text)) take(answerLine(text, number, calculationById), number);
    },
  });
  for await (const chunk of process.stdin) {
    splitter.push(chunk as Buffer);
    await output.flush();
  }
  splitter.end();
  await output.flush();
  return faults > 0 ? 1 : 0;
};

/** A reader that went away, as `head` does, is no fault of ours. */
const leaveQuietlyOnClosedPipe = (): void => {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });
};

export const run = async (args: readonly string[]): Promise<number> => {
  leaveQuietlyOnClosedPipe();
  if (args.length === 1 && args[0] === '--list') return list();
  if (args.length > 0) {
    process.stderr.write(usage);
    return 2;
  }
  if (process.stdin.isTTY) process.stderr.write(usage);
  return answerAll();
};
