/** Mornings and answers two hours later as they stand in the file. */
import { entriesIn, read, type StoredEntry } from '#commands/team/phone-sequences/stored.ts';

export const morningsOf = (file: string, who: string): readonly StoredEntry[] =>
  read<StoredEntry>(file, entriesIn('morning'), `${who}@demo.invalid`);

interface StoredTwoHours {
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
