/** The words that the changed doses of a record are read with: its rows hold the change as data. */
import type { DoseChangeForPatient } from '#core/prescribing/dose-change-for-patient.ts';
import type { RecordTables } from '#data/patients/record-tables.ts';
import { doseChangeText } from '#messages/dose-changes.ts';
import type { Text } from '#messages/text.ts';

/** Sentences of the changes that occur, by "dose-change" and the change as it stands in the row. */
export const doseChangeSentences = ({ proposal = [] }: RecordTables): Readonly<Record<string, Text>> =>
  Object.fromEntries(
    proposal.map(({ changeForPatient }) => {
      const change = changeForPatient as DoseChangeForPatient;
      return [`dose-change ${JSON.stringify(change)}`, doseChangeText(change)];
    }),
  );
