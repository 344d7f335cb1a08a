/** The worklist items of one patient as they are kept, those that show only later as well, most pressing first. */
import { asc } from 'drizzle-orm';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { worklistItem } from '../schema/schema.ts';

export const itemsOfPatient = patientQuery((db) =>
  db
    .select()
    .from(worklistItem)
    .where(ofPatient(worklistItem))
    .orderBy(asc(worklistItem.rank), asc(worklistItem.since)),
);
