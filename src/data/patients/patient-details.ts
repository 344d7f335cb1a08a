/** Details of a patient as append-only versions; the identity row holds what is in force for lists. */
import { randomUUID } from 'node:crypto';
import { and, asc, eq } from 'drizzle-orm';
import type { Refusal } from '#core/outcome.ts';
import { detailRefusals } from '#core/record/patient-detail-checks.ts';
import {
  type DetailChange,
  type DetailValues,
  type DetailVersion,
  detailInForce,
  type PatientDetail,
  patientDetails,
} from '#core/record/patient-details.ts';
import { type Access, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { patientDetail, patientIdentity } from '../schema/schema.ts';

const detailRows = patientQuery((db) =>
  db
    .select({
      detail: patientDetail.detail,
      version: patientDetail.version,
      value: patientDetail.value,
      because: patientDetail.because,
      reason: patientDetail.reason,
      strikes: patientDetail.strikes,
      recordedAt: patientDetail.recordedAt,
      byName: patientDetail.byName,
    })
    .from(patientDetail)
    .where(ofPatient(patientDetail))
    .orderBy(asc(patientDetail.detail), asc(patientDetail.version)),
);

export interface DetailHistory {
  readonly detail: PatientDetail;
  readonly value: string | null;
  /** Newest version, 0 where there is none; a change names it. */
  readonly seen: number;
  /** Oldest first. */
  readonly versions: readonly DetailVersion[];
}

/** Every detail in the order of the form, with its versions. */
export const detailsOf = async (access: Access, patientId: string): Promise<readonly DetailHistory[]> => {
  const rows: readonly DetailVersion[] = await detailRows(access, patientId);
  return patientDetails.map((detail) => {
    const versions = rows.filter((row) => row.detail === detail);
    return {
      detail,
      value: detailInForce(versions)?.value ?? null,
      seen: versions.at(-1)?.version ?? 0,
      versions,
    };
  });
};

export type DetailsChanged =
  | { readonly ok: true; readonly changed: readonly PatientDetail[] }
  | { readonly ok: false; readonly refused: readonly Refusal[] }
  | { readonly ok: false; readonly overtaken: readonly DetailVersion[] };

const valuesOf = (known: readonly DetailHistory[]): DetailValues =>
  Object.fromEntries(known.map(({ detail, value }) => [detail, value])) as DetailValues;

/** The version a change becomes; null where it would change nothing. */
const versionOf = (change: DetailChange, known: DetailHistory): DetailVersion | null => {
  const before = detailInForce(known.versions);
  const isError = change.because === 'entered-in-error';
  const value = change.value?.trim() ?? null;
  if (isError ? before === null : value === known.value) return null;
  return {
    detail: change.detail,
    version: known.seen + 1,
    value,
    because: change.because,
    reason: change.reason?.trim() || null,
    strikes: isError && before ? before.version : null,
    recordedAt: 0,
    byName: '',
  };
};

/**
 * Changes details in one go, or none of them. A version recorded since the one that was seen stops it.
 * Age enters screening and doses, so whatever rests on the record is looked at again before the commit.
 */
export const changeDetails = (
  access: Access,
  patientId: string,
  changes: readonly DetailChange[],
): Promise<DetailsChanged> =>
  access.store.write(async (tx) => {
    const known = await detailsOf(access, patientId);
    const of = (detail: PatientDetail) => known.find((one) => one.detail === detail)!;
    const overtaken = changes.filter(({ detail, seen }) => of(detail).seen !== seen);
    if (overtaken.length > 0)
      return { ok: false, overtaken: overtaken.flatMap(({ detail }) => of(detail).versions.slice(-1)) };
    const rows = changes.flatMap((change) => versionOf(change, of(change.detail)) ?? []);
    const after = valuesOf(
      known.map((one) => {
        const versions = [...one.versions, ...rows.filter(({ detail }) => detail === one.detail)];
        return { ...one, value: detailInForce(versions)?.value ?? null };
      }),
    );
    const refused = detailRefusals(changes, after, access.day);
    if (refused.length > 0) return { ok: false, refused };
    if (rows.length === 0) return { ok: true, changed: [] };
    const owned = { ...recordedFor(access, patientId), byName: access.actorName };
    await tx.insert(patientDetail).values(rows.map((row) => ({ ...row, id: randomUUID(), ...owned })));
    const { givenName, familyName, birthDay, phone, email, patientNumber } = after;
    await tx
      .update(patientIdentity)
      .set({
        givenName: givenName ?? undefined,
        familyName: familyName ?? undefined,
        birthDay: birthDay ?? undefined,
        phone,
        email,
        patientNumber,
      })
      .where(and(eq(patientIdentity.clinicId, access.clinicId), eq(patientIdentity.patientId, patientId)));
    changed(access, patientId);
    const fields = rows.map(({ detail, because }) => `${detail}: ${because}`);
    await auditWrite(tx, access, 'patient-detail', { subjectId: patientId, patientId, detail: { fields } });
    return { ok: true, changed: rows.map(({ detail }) => detail) };
  });
