/**
 * Saving a session so that it outlives a power cut, against the same rows written raw: the entry alone,
 * and the entry with the engine's decision, doses and worklist, which one transaction holds together.
 */
import type { SessionEntry } from '#core/record/entries.ts';
import type { Access } from '#data/access.ts';
import type { Store } from '#data/database/store.ts';
import { storeSession } from '#data/entries/entries.ts';
import { takeSession } from '#data/entries/take-entry.ts';
import { accessTo } from '../group/make-group.ts';
import { patientId } from '../group/plan.ts';
import { leastPairs, pairedOf } from '../pairs.ts';
import { type BenchSettings, type Measured, type Part, rounded } from '../part.ts';
import { instantOf, sessionToSend, withCopies } from './sessions-to-send.ts';
import { marksOf, rawWriter, writtenSince } from './written-rows.ts';

const bar = 1.5;
/** The engine reads four months of a record and judges them before it writes. */
const decidedBar = 3;
/** Saves are quick; more pairs than the least narrow the interval over the weather of the disk. */
const usualPairs = leastPairs * 4;
/** A server has saved before; the first saves of a process run code that is not compiled yet. */
const warmUpPairs = 100;

type Save = (access: Access, patientId: string, entry: SessionEntry) => Promise<{ readonly kind: string }>;

const clocked = async (work: () => Promise<unknown> | unknown): Promise<number> => {
  const began = performance.now();
  await work();
  return performance.now() - began;
};

const savePairs = async (
  settings: BenchSettings,
  [product, raw]: readonly Store[],
  save: Save,
  firstPatient: number,
) => {
  const times: [number, number][] = [];
  const found = { rows: 0, statements: 0 };
  const count = () => {
    found.statements += 1;
  };
  const watch = (listener: typeof count | null) => {
    for (const { statements } of [product!.reader, product!.writer]) statements.watch(listener);
  };
  const write = rawWriter(raw!.writer.client);
  for (let pair = -warmUpPairs; pair < usualPairs || performance.now() < settings.until; pair++) {
    const place = pair + warmUpPairs;
    const access = accessTo(product!, instantOf(place + 1));
    const number = (firstPatient + place * 13) % settings.plan.patients;
    const id = patientId(number);
    const entry = await sessionToSend(access, number);
    const marks = marksOf(product!.writer.client, id);
    if (pair >= 0) watch(count);
    const saveMs = await clocked(async () => {
      const stored = await save(access, id, entry);
      if (stored.kind !== 'stored') throw new Error(`The session was not stored: ${stored.kind}.`);
    });
    watch(null);
    const written = writtenSince(product!.writer.client, marks, id);
    const rawMs = await clocked(write(written, id));
    if (pair < 0) continue;
    found.rows += written.reduce((sum, table) => sum + table.rows.length, 0);
    times.push([saveMs, rawMs]);
  }
  const { rows, statements } = found;
  return { paired: pairedOf(times), rows: rows / times.length, perRow: statements / rows };
};

const partOf = (name: string, about: string, save: Save, withBar: number): Part => ({
  name,
  about,
  run: (settings): Promise<readonly Measured[]> =>
    withCopies(settings.plan, [`${name}-product`, `${name}-raw`], async (stores) => {
      const { paired, rows, perRow } = await savePairs(settings, stores, save, 7);
      const figures = {
        'rows a save': rounded(rows),
        'statements a row': rounded(perRow),
        'product ms': rounded(paired.firstMs),
        'raw ms': rounded(paired.secondMs),
      };
      return [{ part: name, title: about, bar: withBar, paired, figures }];
    }),
});

export const savePart = partOf(
  'save',
  'durable save of a session ÷ the same rows written raw',
  storeSession,
  bar,
);

export const savedAndDecidedPart = partOf(
  'decide',
  'save with decision, doses and worklist ÷ the same rows written raw',
  takeSession,
  decidedBar,
);
