/**
 * Checks an audit chain from its first row to its last, and against heads kept outside the file. Where
 * old rows were moved to a file, the notes of it are checked, and the moved rows as well when they are
 * still at hand.
 */
import { and, asc, desc, eq, gt, min } from 'drizzle-orm';
import type { Store } from '../database/store.ts';
import { audit } from '../schema/schema.ts';
import { archivedRows, firstNote, noteSealOf, type Segment, segmentsOf } from './audit-archive.ts';
import { type AuditKeys, type AuditRow, chainRoot, keysIn } from './seal.ts';
import { type SealingKey, sealingKey } from './sealing-key.ts';

/** What does not hold, at the row it begins with. */
interface Finding {
  readonly sequence: number;
  readonly finding: string;
}

/**
 * `rows` are those in the database; `archived` were moved to files, of which `away` are not at hand. A chain
 * that does not hold is walked to its end all the same: `sequence` and `finding` are the first, `more` some
 * that follow it, `wrong` counts the rows that were changed or are missing.
 */
export type Verdict =
  | { readonly ok: true; readonly rows: number; readonly archived: number; readonly away: number }
  | (Finding & { readonly ok: false; readonly more: readonly Finding[]; readonly wrong: number });

/** Findings that are told one by one; the rest are counted. */
const mostTold = 20;

/** The last row of a chain as it stood at some instant. */
export interface ChainHead {
  readonly clinicId: string;
  readonly sequence: number;
  readonly seal: string;
}

const pageSize = 2000;

const pageAfter = (store: Store, clinicId: string, sequence: number): Promise<readonly AuditRow[]> =>
  Promise.resolve(
    store.read
      .select()
      .from(audit)
      .where(and(eq(audit.clinicId, clinicId), gt(audit.sequence, sequence)))
      .orderBy(asc(audit.sequence))
      .limit(pageSize),
  );

const firstRow = async (store: Store, clinicId: string): Promise<number | null> => {
  const [row] = await store.read
    .select({ sequence: min(audit.sequence) })
    .from(audit)
    .where(eq(audit.clinicId, clinicId));
  return row?.sequence ?? null;
};

/** A walk along a chain: where it stands, and what it has found. */
interface Walk {
  readonly keys: readonly Uint8Array[];
  readonly sealing: SealingKey;
  readonly kept: ReadonlyMap<number, string>;
  readonly findings: Finding[];
  wrong: number;
  previous: string;
  expected: number;
}

const found = (walk: Walk, sequence: number, finding: string, rows = 1): void => {
  walk.wrong += rows;
  if (walk.findings.length < mostTold) walk.findings.push({ sequence, finding });
};

/** What is wrong with a row that stands where it should, or null. After a gap nobody knows what it should follow. */
const findingOf = (walk: Walk, row: AuditRow): string | null => {
  const isAfterGap = row.sequence !== walk.expected;
  if (isAfterGap) walk.sealing.skip();
  if (!isAfterGap && row.previous !== walk.previous) return 'The row does not follow the one before it.';
  if (!walk.sealing.seals(row)) return 'The row was changed after it was sealed.';
  const head = walk.kept.get(row.sequence);
  return head !== undefined && head !== row.seal ? 'The row is not the one whose head was kept.' : null;
};

/** Goes on past a row that does not hold, from what is written in it: what follows is judged by itself. */
const walkRows = (walk: Walk, rows: readonly AuditRow[]): void => {
  for (const row of rows) {
    const gap = row.sequence - walk.expected;
    if (gap !== 0) found(walk, walk.expected, 'A row is missing or out of order.', Math.max(1, gap));
    const finding = findingOf(walk, row);
    if (finding) found(walk, row.sequence, finding);
    walk.previous = row.seal;
    walk.expected = row.sequence + 1;
  }
};

/** One moved stretch: its note, then its rows when their file is there. Answers how many are not. */
const walkSegment = (walk: Walk, file: string, segment: Segment, previousNote: string): number => {
  const { seal, ...note } = segment;
  const end = segment.lastSequence;
  const begin = walk.expected;
  if (!walk.keys.some((key) => noteSealOf(key, note, previousNote) === seal)) {
    found(walk, begin, `Rows up to ${end} are gone, and the note that they were archived is not ours.`);
  }
  const rows = archivedRows(file, segment);
  if (rows) walkRows(walk, rows);
  const missing = end - walk.expected + 1;
  if (rows && missing !== 0) {
    found(walk, walk.expected, 'A row is missing from the archive.', Math.max(1, missing));
  }
  const head = walk.kept.get(end);
  const isOther = (rows && walk.previous !== segment.lastSeal) || (head && head !== segment.lastSeal);
  if (isOther && missing <= 0) {
    found(walk, end, `The archive does not end in the row that was noted as ${end}.`);
  }
  walk.previous = segment.lastSeal;
  walk.expected = end + 1;
  if (!rows) walk.sealing.skip();
  return rows ? 0 : end - begin + 1;
};

const walkArchive = async (walk: Walk, store: Store, clinicId: string): Promise<number> => {
  let away = 0;
  let previousNote = firstNote;
  for (const segment of await segmentsOf(store, clinicId)) {
    away += walkSegment(walk, store.file, segment, previousNote);
    previousNote = segment.seal;
  }
  return away;
};

const walkStored = async (
  walk: Walk,
  store: Store,
  clinicId: string,
  onRows: (sequence: number) => void,
): Promise<void> => {
  for (;;) {
    const page = await pageAfter(store, clinicId, walk.expected - 1);
    walkRows(walk, page);
    onRows(walk.expected - 1);
    if (page.length < pageSize) return;
  }
};

/** Walks a clinic's chain to its end and names what does not hold. `onRows` is told how far it is. */
export const verifyChain = async (
  store: Store,
  keys: AuditKeys,
  clinicId: string,
  heads: readonly ChainHead[] = [],
  onRows: (sequence: number) => void = () => undefined,
): Promise<Verdict> => {
  const own = heads.filter((head) => head.clinicId === clinicId);
  const kept = new Map(own.map((head) => [head.sequence, head.seal]));
  const begin = { keys: keysIn(keys), sealing: sealingKey(keys), previous: chainRoot, expected: 1 };
  const walk: Walk = { ...begin, kept, findings: [], wrong: 0 };
  const away = await walkArchive(walk, store, clinicId);
  const archived = walk.expected - 1;
  const back = await firstRow(store, clinicId);
  if (back !== null && back <= archived) {
    found(walk, back, 'A row stands here that was archived, or never was.');
  }
  await walkStored(walk, store, clinicId, onRows);
  const last = walk.expected - 1;
  const furthest = own.reduce((most, head) => Math.max(most, head.sequence), 0);
  if (last < furthest) {
    const finding = `The chain ends before it, but the head of row ${furthest} was kept: the end was cut off.`;
    found(walk, walk.expected, finding, furthest - last);
  }
  // A chain that had rows when a key was changed has the row that hands over; a later one begins with the last key.
  if (last > 0 && !walk.sealing.isLast())
    found(walk, last, 'The chain ends under an earlier key: the row that hands over to the next is gone.');
  const [first, ...more] = walk.findings;
  if (first) return { ok: false, ...first, more, wrong: walk.wrong };
  return { ok: true, rows: last - archived, archived, away };
};

/** The last row of a chain, for heads kept outside the file. */
export const chainHead = async (store: Store, clinicId: string): Promise<ChainHead | null> => {
  const [last] = await store.read
    .select({ clinicId: audit.clinicId, sequence: audit.sequence, seal: audit.seal })
    .from(audit)
    .where(eq(audit.clinicId, clinicId))
    .orderBy(desc(audit.sequence))
    .limit(1);
  return last ?? null;
};
