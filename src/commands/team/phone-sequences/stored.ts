/** What stands in the file, read beside the running server. */
import { connect } from '#data/database/connection.ts';

export const read = <R>(file: string, question: string, ...values: readonly string[]): readonly R[] => {
  const { client } = connect(file);
  try {
    return client.prepare(question).all(...values) as R[];
  } finally {
    client.close();
  }
};

export interface StoredEntry {
  readonly id: string;
  readonly day: string;
  readonly arrivedAt: number;
  readonly isDoubtful: number;
}

export const entriesIn = (table: 'training_session' | 'morning') =>
  `SELECT e.entry_id AS id, e.day AS day, e.arrived_at AS arrivedAt, e.clock_doubtful AS isDoubtful
   FROM ${table} e JOIN auth_user u ON u.patient_id = e.patient_id WHERE u.email = ? ORDER BY e.rowid`;

export const sessionsOf = (file: string, who: string): readonly StoredEntry[] =>
  read<StoredEntry>(file, entriesIn('training_session'), `${who}@demo.invalid`);

export const patientOf = (file: string, who: string): string => {
  const asked = 'SELECT patient_id AS id FROM auth_user WHERE email = ?';
  return read<{ id: string }>(file, asked, `${who}@demo.invalid`)[0]!.id;
};

/** Entries of one person that stand more than once, and entries kept as conflicts. */
export const storedTwice = (file: string): number =>
  read<{ count: number }>(
    file,
    `SELECT (SELECT count(*) FROM (SELECT 1 FROM training_session GROUP BY patient_id, entry_id HAVING count(*) > 1))
          + (SELECT count(*) FROM entry_conflict) AS count`,
  )[0]!.count;
