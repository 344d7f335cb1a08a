/** Tables written and read as exports and imports do, against the bare library on the same rows. */
import { parse } from 'csv-parse';
import { stringify } from 'csv-stringify/sync';
import { csvLines } from '#exchange/csv/cells.ts';
import { checkImport } from '#exchange/import/check.ts';
import { type CsvAsked, csvMapping, csvSource } from '#exchange/import/csv/read-csv.ts';
import { measurePairs } from '../pairs.ts';
import { type BenchSettings, type Measured, type Part, rounded } from '../part.ts';

const bar = 2;
const rows = 20_000;
const piece = 65_536;

const heading = ['day', 'joint', 'pain', 'stiffness_minutes', 'fatigue'];
const places = ['right-knee', 'left-knee', 'right-hip', 'left-hip', 'neck'];
const today = '2026-03-02';

/** Days of five joints, as a diary has them. */
const diary = Array.from({ length: rows }, (_, at) => {
  const day = new Date(Date.UTC(2016, 0, 1 + Math.floor(at / places.length))).toISOString().slice(0, 10);
  return [day < today ? day : today, places[at % places.length]!, at % 11, at % 60, at % 7];
});

const asked: CsvAsked = {
  ...{ kind: 'mornings', separator: 'comma', encoding: 'utf-8', days: 'YYYY-MM-DD', decimal: 'point' },
  map: '',
};

const bareLines = (): string => stringify([...diary], { record_delimiter: '\r\n' });

const bytesOf = (file: Buffer) =>
  async function* () {
    for (let from = 0; from < file.length; from += piece) yield file.subarray(from, from + piece);
  };

/** Through the mapping, the bounds, the questions and the digest of the file. */
const readThrough = async (file: Buffer): Promise<number> => {
  const bytes = bytesOf(file);
  const mapping = await csvMapping(bytes, asked);
  const source = csvSource(bytes, asked, mapping, { today, born: '1958-06-01' });
  const report = await checkImport(bytes, source, { today, mayBeSwapped: false, onFault: () => undefined });
  if (report.taken !== rows) throw new Error(`${report.taken} of ${rows} rows were read.`);
  return report.taken;
};

const readBare = async (file: Buffer): Promise<number> => {
  const parser = parse();
  let count = 0;
  parser.on('data', () => {
    count += 1;
  });
  const ended = new Promise((done) => parser.on('end', done));
  for await (const some of bytesOf(file)()) parser.write(some);
  parser.end();
  await ended;
  return count;
};

const run = async ({ until }: BenchSettings): Promise<readonly Measured[]> => {
  const half = performance.now() + (until - performance.now()) / 2;
  const file = Buffer.from(csvLines([heading, ...diary]));
  const written = await measurePairs(
    { ready: async () => () => csvLines([heading, ...diary]) },
    { ready: async () => bareLines },
    half,
  );
  const read = await measurePairs(
    { ready: async () => () => readThrough(file) },
    { ready: async () => () => readBare(file) },
    until,
  );
  const perSecond = (ms: number) => rounded((rows / ms) * 1000);
  const figures = ({ firstMs, secondMs }: typeof read) => ({
    rows,
    'rows per second': perSecond(firstMs),
    'bare library': perSecond(secondMs),
  });
  return [
    {
      part: 'exchange',
      title: 'table written, bare library',
      bar,
      paired: written,
      figures: figures(written),
    },
    {
      part: 'exchange',
      title: 'table read through, bare library',
      bar,
      paired: read,
      figures: figures(read),
    },
  ];
};

export const exchangePart: Part = {
  name: 'exchange',
  about: 'a table written and read through against the bare library',
  run,
};
