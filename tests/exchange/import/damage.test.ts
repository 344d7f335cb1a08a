/** Damaged files: whatever is done to one, it is read or refused with a reason, and nobody's reading breaks off. */
import { describe, expect, it } from 'vitest';
import { joints } from '#core/exercises/joints.ts';
import { bundleOf } from '#exchange/fhir/bundle.ts';
import { columns } from '#exchange/import/csv/columns.ts';
import type { CsvKind } from '#exchange/import/csv/how.ts';
import { type Asked, whyNotTaken } from '#exchange/import/prepare.ts';
import { CannotRead } from '#exchange/import/source.ts';
import { wholeRecord } from '../whole-record.ts';
import { asTable, readThrough, thingsIn } from './read-through.ts';

/** The same numbers each time, so that what fails can be looked at. */
const numbers = (seed: number) => {
  let state = seed;
  return (below: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state % below;
  };
};

const table = `day,joint,pain,stiffness_minutes,fatigue\r\n${Array.from(
  { length: 12 },
  (_, at) => `2026-02-${String(at + 1).padStart(2, '0')},"${joints[at]}",${at % 11},${at * 5},\r\n`,
).join('')}`;
const own = bundleOf(wholeRecord());
const [patient] = own.entry!.filter(({ resource }) => resource?.resourceType === 'Patient');
const measured = own.entry!.filter(({ resource }) => resource?.resourceType === 'Observation').slice(0, 6);
const bundle = JSON.stringify({ ...own, entry: [patient, ...measured] });
const lines = [patient, ...measured].map((one) => JSON.stringify(one!.resource)).join('\n');

const pieces: readonly (readonly number[])[] = [
  ...[
    '"',
    ',',
    ';',
    '\n',
    '\r',
    '\t',
    "'",
    '=',
    '\u0000',
    '\uFEFF',
    '9'.repeat(400),
    '-1',
    'null',
    '{',
    '}',
    '[',
    ']',
  ],
  ...['\u{1F600}', '2026-13-45', '1e999', 'NaN', '\\'],
].map((text) => [...new TextEncoder().encode(text)]);
const bytesAlone = [[0xff], [0xc3], [0xfe, 0xff], [0xed, 0xa0, 0x80]];
const put = [...pieces, ...bytesAlone];

/** One to four places cut out, doubled, changed or put in. */
const damaged = (text: string, seed: number): Uint8Array => {
  const pick = numbers(seed);
  const bytes = [...new TextEncoder().encode(text)];
  for (let time = 0; time <= pick(4); time += 1) {
    const at = pick(bytes.length + 1);
    const kind = pick(5);
    if (kind === 0) bytes.splice(at, pick(40));
    else if (kind === 1) bytes.splice(at, 0, ...bytes.slice(at, at + pick(60)));
    else if (kind === 2) bytes.splice(at, 1, pick(256));
    else if (kind === 3) bytes.splice(pick(2) === 0 ? at : 0, 0, ...put[pick(put.length)]!);
    else bytes.length = at;
  }
  return new Uint8Array(bytes);
};

const nothingConfirmed = { confirmed: [], leavesOutFaulty: true } as const;

/** What became of it: refused as a whole with a sentence, or read to its end with a line for all that is not taken. */
const outcomeOf = async (bytes: Uint8Array, asked: Asked): Promise<'refused' | 'read'> => {
  try {
    const read = await readThrough(bytes, asked);
    const things = await thingsIn(read);
    expect(things).toHaveLength(read.report.taken);
    for (const { day } of things)
      if (day !== null) expect(day >= '1958-06-01' && day <= '2026-03-02').toBe(true);
    for (const { write } of read.faults) expect(write).not.toBe('');
    whyNotTaken(read, nothingConfirmed, []);
    return 'read';
  } catch (error) {
    if (!(error instanceof CannotRead)) throw error;
    expect(error.message).toMatch(/\.$/);
    return 'refused';
  }
};

const kinds: readonly (readonly [string, string, Asked])[] = [
  ['a table', table, asTable],
  ['a table said to be UTF-16', table, { ...asTable, encoding: 'utf-16' }],
  ['a table said to be Windows-1252', table, { ...asTable, encoding: 'windows-1252' }],
  ['a Bundle', bundle, { format: 'fhir', isLines: false }],
  ['lines of FHIR', lines, { format: 'fhir', isLines: true }],
];
const each = 500;

describe('a damaged file', () => {
  it.each(kinds)(`never ends the reading without a reason: ${each} times %s`, async (_, text, asked) => {
    const outcomes = new Set<string>();
    for (let seed = 1; seed <= each; seed += 1) outcomes.add(await outcomeOf(damaged(text, seed), asked));
    expect(outcomes.size).toBeGreaterThan(0);
  });

  it('is whole where nothing was done to it, so that what is refused is the damage', async () => {
    expect(await outcomeOf(new TextEncoder().encode(table), asTable)).toBe('read');
    expect((await readThrough(table)).report).toMatchObject({ taken: 12, faultCount: 0 });
    expect((await readThrough(bundle, { format: 'fhir', isLines: false })).report.taken).toBeGreaterThan(2);
  });

  it('of any column holds nothing outside its bounds', async () => {
    for (const kind of Object.keys(columns) as CsvKind[]) {
      const names = columns[kind].map(({ name }) => name);
      for (let seed = 1; seed <= 60; seed += 1) {
        const pick = numbers(seed);
        const cells = names.map(
          () => ['', '-5', '1e3', '999999', 'x', '0', '5', '2026-02-01', 'right-knee'][pick(9)],
        );
        const { report, faults } = await readThrough(`${names.join(',')}\n${cells.join(',')}\n`, { kind });
        expect(report.taken === 0).toBe(faults.length > 0);
      }
    }
  });
});
