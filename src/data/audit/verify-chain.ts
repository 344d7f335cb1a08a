/**
 * Checks an audit chain from its first row to its last, and against heads kept outside the file. Where
 * old rows were moved to a file, the notes of it are checked, and the moved rows as well when they are
 * still at hand.
 */
import { and, asc, desc, eq, gt, min } from 'drizzle-orm';
import type { Store } from '../database/store.ts';
import { audit } from '../schema/schema.ts';
import { type AuditRow, chainRoot, sealOf } from './audit.ts';
import { archivedRows, firstNote, noteSealOf, type Segment, segmentsOf } from './audit-archive.ts';

/** `rows` are those in the database; `archived` were moved to files, of which `away` are not at hand. */
export type Verdict =
  | { readonly ok: true; readonly rows: number; readonly archived: number; readonly away: number }
  | { readonly ok: false; readonly sequence: number; readonly finding: string };

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

const findingOf = (
  key: Uint8Array,
  row: AuditRow,
  expected: number,
  previous: string,
  head: string | undefined,
): string | null => {
  const { seal, ...rest } = row;
  if (row.sequence !== expected) return 'A row is missing or out of order.';
  if (row.previous !== previous) return 'The row does not follow the one before it.';
  if (sealOf(key, rest) !== seal) return 'The row was changed after it was sealed.';
  if (head !== undefined && head !== seal) return 'The row is not the one whose head was kept.';
  return null;
};

const firstRow = async (store: Store, clinicId: string): Promise<number | null> => {
  const [row] = await store.read
    .select({ sequence: min(audit.sequence) })
    .from(audit)
    .where(eq(audit.clinicId, clinicId));
  return row?.sequence ?? null;
};

/** Where a walk along a chain stands. */
interface Place {
  previous: string;
  expected: number;
}

type Broken = Extract<Verdict, { ok: false }>;

interface PrescribingContext {
  readonly key: Uint8Array;
  readonly kept: ReadonlyMap<number, string>;
}

const walk = (context: PrescribingContext, rows: readonly AuditRow[], place: Place): Broken | null => {
  for (const row of rows) {
    const { expected, previous } = place;
    const finding = findingOf(context.key, row, expected, previous, context.kept.get(expected));
    if (finding) return { ok: false, sequence: expected, finding };
    place.previous = row.seal;
    place.expected = expected + 1;
  }
  return null;
};

/** One moved stretch: its note, then its rows when their file is there. Answers how many are not. */
const walkSegment = (
  context: PrescribingContext,
  file: string,
  segment: Segment,
  previousNote: string,
  place: Place,
): Broken | number => {
  const { seal, ...note } = segment;
  const end = segment.lastSequence;
  const broken = (finding: string): Broken => ({ ok: false, sequence: place.expected, finding });
  if (noteSealOf(context.key, note, previousNote) !== seal) {
    return broken(`Rows up to ${end} are gone, and the note that they were archived is not ours.`);
  }
  const count = end - place.expected + 1;
  const rows = archivedRows(file, segment);
  const found = rows ? walk(context, rows, place) : null;
  if (found) return found;
  if (rows && place.expected !== end + 1) return broken('A row is missing from the archive.');
  const head = context.kept.get(end);
  const isOther = (rows && place.previous !== segment.lastSeal) || (head && head !== segment.lastSeal);
  if (isOther) return broken(`The archive does not end in the row that was noted as ${end}.`);
  place.previous = segment.lastSeal;
  place.expected = end + 1;
  return rows ? 0 : count;
};

const walkArchive = async (context: PrescribingContext, store: Store, clinicId: string, place: Place) => {
  let away = 0;
  let previousNote = firstNote;
  for (const segment of await segmentsOf(store, clinicId)) {
    const answer = walkSegment(context, store.file, segment, previousNote, place);
    if (typeof answer !== 'number') return answer;
    away += answer;
    previousNote = segment.seal;
  }
  return away;
};

/** Walks a clinic's chain and names the first row that does not hold. `onRows` is told how far it is. */
export const verifyChain = async (
  store: Store,
  key: Uint8Array,
  clinicId: string,
  heads: readonly ChainHead[] = [],
  onRows: (sequence: number) => void = () => undefined,
): Promise<Verdict> => {
  const own = heads.filter((head) => head.clinicId === clinicId);
  const kept = new Map(own.map((head) => [head.sequence, head.seal]));
  const context = { key, kept };
  const place: Place = { previous: chainRoot, expected: 1 };
  const away = await walkArchive(context, store, clinicId, place);
  if (typeof away !== 'number') return away;
  const archived = place.expected - 1;
  const back = await firstRow(store, clinicId);
  if (back !== null && back <= archived) {
    return { ok: false, sequence: back, finding: 'A row stands here that was archived, or never was.' };
  }
  for (;;) {
    const page = await pageAfter(store, clinicId, place.expected - 1);
    const broken = walk(context, page, place);
    if (broken) return broken;
    onRows(place.expected - 1);
    if (page.length < pageSize) break;
  }
  const last = place.expected - 1;
  const furthest = own.reduce((most, head) => Math.max(most, head.sequence), 0);
  if (last >= furthest) return { ok: true, rows: last - archived, archived, away };
  const finding = `The chain ends before it, but the head of row ${furthest} was kept: the end was cut off.`;
  return { ok: false, sequence: place.expected, finding };
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
