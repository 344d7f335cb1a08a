/**
 * A patient's record asked as at a past instant, by the very functions that are asked now. `access.knownAt` serves the
 * engine over many instants of one record; this serves every reader at one instant, on a connection of its own that
 * shows the file as it was.
 */
import type { Access } from '../../access.ts';
import { dayAt } from '../../civil-time.ts';
import { connect } from '../../database/connection.ts';
import type { Store } from '../../database/store.ts';
import { clinicOf } from '../../patients/people.ts';
import { pastViews } from './past-views.ts';

const nothingIsWritten = (): never => {
  throw new Error('The past is read and never written.');
};

const pastStore = (file: string, at: number): Store => {
  const connection = connect(file);
  for (const view of pastViews(at)) connection.client.exec(view);
  return {
    file,
    read: connection.db,
    write: async () => nothingIsWritten(),
    beforeCommit: nothingIsWritten,
    collect: nothingIsWritten,
    takeInserted: nothingIsWritten,
    health: { committedAt: null, isFailing: false },
    writer: connection,
    reader: connection,
    close: () => {
      connection.statements.clear();
      connection.client.close();
    },
  };
};

/** `work` is given the access of whoever asks, at that instant and its civil day. */
export const inThePast = async <T>(
  access: Access,
  at: number,
  work: (past: Access) => Promise<T>,
): Promise<T> => {
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  const store = pastStore(access.store.file, at);
  try {
    return await work({ ...access, store, now: at, day: dayAt(at, zone) });
  } finally {
    store.close();
  }
};
