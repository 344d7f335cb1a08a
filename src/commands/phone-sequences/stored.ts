/** What stands in the file, read beside the running server. */
import { connect } from '#data/store/connection.ts';

const read = <R>(file: string, question: string, ...values: readonly string[]): readonly R[] => {
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

const entriesIn = (table: 'training_session' | 'morning') =>
  `SELECT e.entry_id AS id, e.day AS day, e.arrived_at AS arrivedAt, e.clock_doubtful AS isDoubtful
   FROM ${table} e JOIN auth_user u ON u.patient_id = e.patient_id WHERE u.email = ? ORDER BY e.rowid`;

export const sessionsOf = (file: string, who: string): readonly StoredEntry[] =>
  read<StoredEntry>(file, entriesIn('training_session'), `${who}@demo.invalid`);

export const morningsOf = (file: string, who: string): readonly StoredEntry[] =>
  read<StoredEntry>(file, entriesIn('morning'), `${who}@demo.invalid`);

export interface StoredTwoHours {
  readonly joint: string;
  readonly pain: number | null;
  /** Of the session it speaks of, as the phone made it. */
  readonly session: string;
}

export const twoHoursOf = (file: string, who: string): readonly StoredTwoHours[] =>
  read<StoredTwoHours>(
    file,
    `SELECT e.joint AS joint, e.pain_0_10 AS pain, s.entry_id AS session
     FROM two_hours e JOIN training_session s ON s.id = e.session_id
     JOIN auth_user u ON u.patient_id = e.patient_id WHERE u.email = ? ORDER BY e.rowid`,
    `${who}@demo.invalid`,
  );

/** Entries of one person that stand more than once, and entries kept as conflicts. */
export const storedTwice = (file: string): number =>
  read<{ count: number }>(
    file,
    `SELECT (SELECT count(*) FROM (SELECT 1 FROM training_session GROUP BY patient_id, entry_id HAVING count(*) > 1))
          + (SELECT count(*) FROM entry_conflict) AS count`,
  )[0]!.count;
