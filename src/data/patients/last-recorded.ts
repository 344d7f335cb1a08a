/** The latest clinical instant a file speaks of; a clock must not start before it. */
import { max } from 'drizzle-orm';
import type { Store } from '../database/store.ts';
import { audit } from '../schema/schema.ts';

export const lastRecordedAt = async (store: Store): Promise<number | null> => {
  const [row] = await store.read.select({ at: max(audit.at) }).from(audit);
  return row?.at ?? null;
};
