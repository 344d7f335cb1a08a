/** When a measure is to be taken again: the newest row of each measure counts, and one without a day stops it. */
import { and, asc, eq, inArray } from 'drizzle-orm';
import {
  type RetestDue,
  type RetestPlan,
  type RetestStopped,
  retestsDue,
  retestsStopped,
} from '#core/assessment/retest-plan.ts';
import type { CorrectionIndex } from '#core/corrections/correction.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import { measurement, retestPlan } from '../schema/schema.ts';
import { byPatient } from '../worklist/worklist-newest.ts';
import { measurementsOf, standing } from './measurements.ts';

export const retestRows = patientQuery((db) =>
  db.select().from(retestPlan).where(ofPatient(retestPlan)).orderBy(asc(retestPlan.version)),
);

type RetestRow = Awaited<ReturnType<typeof retestRows>>[number];

/** Rows stand oldest first. */
const newestByMeasure = (rows: readonly RetestRow[]): readonly RetestPlan[] => [
  ...new Map(rows.map((row) => [row.measure, row])).values(),
];

export const retestsOf = async (access: Access, patientId: string): Promise<readonly RetestDue[]> => {
  const rows = await retestRows(access, patientId);
  return rows.length === 0 ? [] : retestsDue(newestByMeasure(rows), await measurementsOf(access, patientId));
};

export const stoppedRetestsOf = async (
  access: Access,
  patientId: string,
): Promise<readonly RetestStopped[]> => retestsStopped(newestByMeasure(await retestRows(access, patientId)));

/** What is due of a whole clinic, in two queries. */
export const retestsOfClinic = async (access: Access, index: CorrectionIndex) => {
  const { read } = access.store;
  const mine = eq(retestPlan.clinicId, access.clinicId);
  const rows = await read.select().from(retestPlan).where(mine).orderBy(asc(retestPlan.version));
  const planned = read.select({ patientId: retestPlan.patientId }).from(retestPlan).where(mine);
  const measured = standing(
    await read
      .select()
      .from(measurement)
      .where(and(eq(measurement.clinicId, access.clinicId), inArray(measurement.patientId, planned))),
    index,
  );
  const [plansOf, rowsOf] = [byPatient(rows), byPatient(measured)];
  return (patientId: string): readonly RetestDue[] =>
    retestsDue(
      newestByMeasure(plansOf.get(patientId) ?? []),
      (rowsOf.get(patientId) ?? []).map(({ value }) => value),
    );
};

type Wanted = Omit<RetestPlan, 'setOn'>;

const write = (access: Access, patientId: string, row: Wanted): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    const version = (await retestRows(access, patientId)).length + 1;
    await tx.insert(retestPlan).values({ ...now, ...row, version, setOn: access.day });
    changed(access, patientId);
    const detail = { measure: row.measure, everyDays: row.everyDays };
    await auditWrite(tx, access, 'retest-plan', { subjectId: now.id, patientId, detail });
    return now.id;
  });

export const planRetest = (access: Access, patientId: string, row: Omit<Wanted, 'reason'>): Promise<string> =>
  write(access, patientId, { ...row, reason: null });

/** False where none is planned, or it was stopped. */
export const stopRetest = (
  access: Access,
  patientId: string,
  measure: string,
  reason: string,
): Promise<boolean> =>
  access.store.write(async () => {
    const plan = newestByMeasure(await retestRows(access, patientId)).find((row) => row.measure === measure);
    if (!plan || plan.dueOn === null) return false;
    await write(access, patientId, { measure: plan.measure, dueOn: null, everyDays: null, reason });
    return true;
  });
