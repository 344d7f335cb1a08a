/** When doses of a record were signed, for the pictures of what was measured. */
import { type DoseDay, doseDays } from '#core/review/dose-days.ts';
import type { Access } from '#data/access.ts';
import { proposalsOf } from '#data/decision/decisions.ts';
import { recordOf } from '#data/patients/record.ts';
import { doseCourse } from '../review/dose-review.ts';
import { clinicDays } from '../review/summary.ts';

export const doseDaysOf = async (access: Access, patientId: string): Promise<readonly DoseDay[]> => {
  const record = await recordOf(access, patientId);
  if (!record) return [];
  const proposals = await proposalsOf(access, patientId);
  const dayOf = await clinicDays(access);
  const items = [...new Set(record.prescriptions.map(({ itemId }) => itemId))];
  return doseDays(items.flatMap((itemId) => doseCourse({ record, proposals, itemId, dayOf }).steps));
};
