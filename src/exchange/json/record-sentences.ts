/**
 * The words a record is read with: its rows say what is told to the patient by key and values, and stand
 * beside no sentence. Today's wording in every language; the number of the wording is in the rows.
 */
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { PatientCaution } from '#core/prescribing/cautions/patient-caution.ts';
import type { RecordTables } from '#data/patients/record-tables.ts';
import { cautionText } from '#messages/cautions.ts';
import type { Text } from '#messages/text.ts';
import { doseChangeSentences } from './dose-change-sentences.ts';

/** Key and values as they stand in the row, such as "not-checked clots, blood-pressure". */
const nameOf = (patient: PatientCaution): string => {
  switch (patient.key) {
    case 'not-checked':
      return `${patient.key} ${patient.things.join(', ')}`;
    case 'limit':
      return `${patient.key} ${patient.kind}, ${patient.joint}, ${patient.author}`;
    default:
      return patient.key;
  }
};

const cautionsIn = (tables: RecordTables): readonly Caution[] =>
  Object.values(tables)
    .flat()
    .flatMap(({ cautions }) => (cautions ?? []) as readonly Caution[]);

/** Sentences of the cautions that occur, by "caution", key and values, and of the changed doses. */
export const recordSentences = (tables: RecordTables): Readonly<Record<string, Text>> => ({
  ...Object.fromEntries(
    cautionsIn(tables).map(({ patient }) => [`caution ${nameOf(patient)}`, cautionText(patient)]),
  ),
  ...doseChangeSentences(tables),
});
