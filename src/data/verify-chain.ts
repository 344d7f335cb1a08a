/** Checks an audit chain from its first row to its last, and against heads kept outside the file. */
import { and, asc, desc, eq, gt } from 'drizzle-orm';
import { type AuditRow, chainRoot, sealOf } from './audit.ts';
import { audit } from './schema/schema.ts';
import type { Store } from './store/store.ts';

export type Verdict =
  | { readonly ok: true; readonly rows: number }
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

/** Walks a clinic's chain and names the first row that does not hold. */
export const verifyChain = async (
  store: Store,
  key: Uint8Array,
  clinicId: string,
  heads: readonly ChainHead[] = [],
): Promise<Verdict> => {
  const kept = new Map(
    heads.filter((head) => head.clinicId === clinicId).map((head) => [head.sequence, head.seal]),
  );
  const furthest = Math.max(0, ...kept.keys());
  let previous = chainRoot;
  let expected = 1;
  for (;;) {
    const page = await pageAfter(store, clinicId, expected - 1);
    for (const row of page) {
      const finding = findingOf(key, row, expected, previous, kept.get(expected));
      if (finding) return { ok: false, sequence: expected, finding };
      previous = row.seal;
      expected += 1;
    }
    if (page.length === pageSize) continue;
    const rows = expected - 1;
    if (rows >= furthest) return { ok: true, rows };
    const finding = `The chain ends before it, but the head of row ${furthest} was kept: the end was cut off.`;
    return { ok: false, sequence: expected, finding };
  }
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
