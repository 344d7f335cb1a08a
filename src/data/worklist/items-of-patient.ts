/** The worklist items of one patient. */
import { and, asc } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import type { Asked } from '../database/read-together.ts';
import { mergedWith } from '../patients/merges.ts';
import { worklistItem } from '../schema/schema.ts';
import { due, whenAsked } from './what-shows.ts';
import { byDanger, type StoredItem } from './worklist-cells.ts';

/** As they are kept, those that show only later as well, most pressing first. */

export const itemsOfPatient = patientQuery((db) =>
  db
    .select()
    .from(worklistItem)
    .where(ofPatient(worklistItem))
    .orderBy(asc(worklistItem.rank), asc(worklistItem.since)),
);

const rowsDue = patientQuery((db) =>
  db
    .select()
    .from(worklistItem)
    .where(and(due(whenAsked, worklistItem), ofPatient(worklistItem))),
);

const momentOf = ({ day, now }: Access) => ({ day, now });

/** Those that show now, to be read together with what else is asked of the record. */
export const itemsDueNow: Asked = { query: rowsDue, values: momentOf };

/** What waits today for one person, under whichever of the records that were merged, most pressing first. */
export const itemsDueOf = async (access: Access, patientId: string): Promise<readonly StoredItem[]> => {
  const patientIds = [patientId, ...(await mergedWith(access, patientId))];
  const rows = await Promise.all(patientIds.map((id) => rowsDue(access, id, momentOf(access))));
  return rows.flat().sort(byDanger);
};
