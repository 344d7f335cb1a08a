/** The same reading in clinics of growing size: what one patient costs must not depend on how many others there are. */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Access } from '#data/access.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import { recordOf } from '#data/patients/record.ts';
import { engineWindowDays } from '#data/patients/record-queries.ts';
import { groupCounts, worklistCounts } from '#data/worklist/worklist-counts.ts';
import { accessTo, benchFolder, groupFile } from '../group/make-group.ts';
import { patientId } from '../group/plan.ts';
import { growthPicture } from '../growth-picture.ts';
import { leastPairs, measurePairs, medianOf } from '../pairs.ts';
import { type BenchSettings, type Measured, type Part, rounded } from '../part.ts';
import { type RawReader, rawRecord } from '../raw-record.ts';
import { pageOf } from './worklist.ts';

const bar = 1.1;
const countsBar = 1.3;
const nothingClosed: ReadonlySet<string> = new Set();
const usualPage = 50;

/** Where the curves are drawn. */
export const growthFile = path.join(benchFolder, 'growth.svg');

const rawReaders = new WeakMap<Access['store'], RawReader>();

const rawOf = ({ store }: Access): RawReader => {
  const known = rawReaders.get(store) ?? rawRecord(store.reader.client);
  rawReaders.set(store, known);
  return known;
};

type Reading = (access: Access, patients: number, pair: number) => Promise<unknown>;

const readings: readonly { readonly title: string; readonly bar: number | null; readonly read: Reading }[] = [
  {
    title: 'patient record',
    bar,
    read: (access, patients, pair) => recordOf(access, patientId((pair * 617) % patients)),
  },
  {
    // What the file itself asks for scattered rows; the record above cannot grow less than this.
    title: 'rows of a record read raw',
    bar: null,
    read: async (access, patients, pair) =>
      rawOf(access).read(access, patientId((pair * 617) % patients), engineWindowDays),
  },
  { title: 'worklist', bar, read: (access) => pageOf(access, usualPage) },
  {
    title: 'worklist counts',
    bar: countsBar,
    read: async (access) => [
      await worklistCounts(access, { kind: null, assignedTo: null }),
      await groupCounts(access, nothingClosed),
    ],
  },
];

const curveOf = async (access: Access, patients: number, read: Reading): Promise<number> => {
  const times: number[] = [];
  for (let run = 0; run < leastPairs; run++) {
    const began = performance.now();
    await read(access, patients, run);
    times.push(performance.now() - began);
  }
  return medianOf(times);
};

const measured = async (
  settings: BenchSettings,
  until: number,
  stores: readonly Store[],
  { title, bar: withBar, read }: (typeof readings)[number],
) => {
  const sizes = settings.growth.map((plan) => plan.patients);
  const accesses = stores.map((store) => accessTo(store));
  const [last, least] = [sizes.length - 1, 0];
  const side = (place: number) => ({
    ready: async (pair: number) => {
      // The first reading of a page comes from the disk and tells of the disk; it is left out on both sides.
      await read(accesses[place]!, sizes[place]!, pair);
      return () => read(accesses[place]!, sizes[place]!, pair);
    },
  });
  const paired = await measurePairs(side(last), side(least), until);
  const curve: number[] = [];
  for (const [place, access] of accesses.entries()) curve.push(await curveOf(access, sizes[place]!, read));
  const figures = Object.fromEntries(sizes.map((size, place) => [`${size} ms`, rounded(curve[place]!)]));
  const about = `${title} at ${sizes[last]} patients ÷ at ${sizes[least]}`;
  return { line: { part: 'growth', title: about, bar: withBar, paired, figures }, title, curve, sizes };
};

export const growthPart: Part = {
  name: 'growth',
  about: 'patient record and worklist in a large clinic ÷ in a small one',
  run: async (settings): Promise<readonly Measured[]> => {
    const stores: Store[] = [];
    try {
      for (const plan of settings.growth) stores.push(openStore(await groupFile(plan)));
      const found = [];
      const share = Math.max(0, settings.until - performance.now()) / readings.length;
      for (const reading of readings)
        found.push(await measured(settings, performance.now() + share, stores, reading));
      writeFileSync(
        growthFile,
        growthPicture(
          found[0]!.sizes,
          found.map(({ title, curve }) => ({ title, milliseconds: curve })),
        ),
      );
      return found.map(({ line }) => line);
    } finally {
      for (const store of stores) store.close();
    }
  },
};
