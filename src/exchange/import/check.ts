/** A file read through without taking anything: what would be taken, what is wrong with it and what is asked. */
import { createHash } from 'node:crypto';
import type { ImportedKind, ImportedThing } from '#core/record/imported.ts';
import type { Day } from '#core/time/day.ts';
import { type Question, questionsOf } from './questions.ts';
import type { Bytes, Fault, Source } from './source.ts';

export interface ImportReport {
  /** Places of the file that were read. */
  readonly read: number;
  /** Things that would be taken. */
  readonly taken: number;
  readonly byKind: Readonly<Partial<Record<ImportedKind, number>>>;
  readonly firstDay: Day | null;
  readonly lastDay: Day | null;
  readonly faultCount: number;
  /** Places with at least one fault. */
  readonly faultyPlaces: number;
  readonly questions: readonly Question[];
  /** Of the bytes it was read from. */
  readonly fileDigest: string;
}

export const digestOfBytes = async (bytes: Bytes): Promise<string> => {
  const hash = createHash('sha256');
  for await (const chunk of bytes()) hash.update(chunk);
  return hash.digest('hex');
};

export interface Checking {
  readonly today: Day;
  readonly mayBeSwapped: boolean;
  /** Questions that the file as a whole raises. */
  readonly asked?: readonly (readonly ['other-person', string])[];
  readonly onFault: (fault: Fault) => void;
  /** Told after each piece of the file, with the places read so far. */
  readonly onProgress?: (read: number) => void;
}

export const checkImport = async (bytes: Bytes, source: Source, how: Checking): Promise<ImportReport> => {
  const questions = questionsOf(how.today, how.mayBeSwapped);
  for (const [id, example] of how.asked ?? []) questions.ask(id, example);
  const byKind: Partial<Record<ImportedKind, number>> = {};
  const days: { first: Day | null; last: Day | null } = { first: null, last: null };
  let [read, taken, faultCount, faultyPlaces] = [0, 0, 0, 0];
  const see = (place: number, thing: ImportedThing): void => {
    questions.see(place, thing);
    taken += 1;
    byKind[thing.kind] = (byKind[thing.kind] ?? 0) + 1;
    if (thing.day === null) return;
    if (days.first === null || thing.day < days.first) days.first = thing.day;
    if (days.last === null || thing.day > days.last) days.last = thing.day;
  };
  for await (const piece of source.read()) {
    for (const { place, things, faults } of piece) {
      read += 1;
      for (const thing of things) see(place, thing);
      for (const fault of faults) how.onFault(fault);
      faultCount += faults.length;
      if (faults.length > 0) faultyPlaces += 1;
    }
    how.onProgress?.(read);
  }
  return {
    ...{ read, taken, byKind, firstDay: days.first, lastDay: days.last, faultCount, faultyPlaces },
    ...{ questions: questions.all(), fileDigest: await digestOfBytes(bytes) },
  };
};
