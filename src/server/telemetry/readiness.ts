/** Whether this process can do its work now. */
import path from 'node:path';
import { pendingMigrations } from '#data/database/migrate.ts';
import { runtime } from '../runtime.ts';

/** What is wrong, in a word for an operator; null when all is well. */
export const readiness = (): string | null => {
  try {
    const { store } = runtime();
    store.reader.client.prepare('SELECT 1').get();
    return pendingMigrations(store, path.join(process.cwd(), 'drizzle')) > 0 ? 'schema is behind' : null;
  } catch {
    return 'store does not answer';
  }
};
