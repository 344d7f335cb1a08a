/**
 * One decision to be handed on, with all that it rests on and what holds it: the audit row in which the digest of its
 * row stands. Who has the audit key can tell from the certificate alone whether a byte of it was changed since.
 */
import { createHash } from 'node:crypto';
import { and, asc, eq } from 'drizzle-orm';
import { byTable, type TableVerdict } from '#core/decision/independent/by-table.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Access } from '../../access.ts';
import type { AuditRow } from '../../audit/seal.ts';
import type { Store } from '../../database/store.ts';
import { audit, decision, decisionSettings } from '../../schema/schema.ts';
import { ofItsSettings } from '../settings-stored.ts';

export type CertifiedRow = typeof decision.$inferSelect;

export interface CertificateBody {
  readonly certificate: 'decision';
  readonly format: 1;
  /** The row as it is kept: what the rules were given, what they answered and why. */
  readonly decision: CertifiedRow;
  /** Their digest is the row’s `settingsId`. */
  readonly settings: SettingValues;
  /** The row of the audit whose detail holds the digest of the decision’s row; its seal is made with the clinic’s key. */
  readonly audit: AuditRow;
}

export interface Certificate extends CertificateBody {
  /** Of all the rest, for whoever has no key. */
  readonly sha256: string;
}

export const sha256Of = (body: CertificateBody): string =>
  createHash('sha256').update(JSON.stringify(body)).digest('hex');

export const tableVerdictOf = ({ decision: row, settings }: CertificateBody): TableVerdict =>
  byTable({
    facts: row.facts as unknown as Readonly<Record<string, unknown>>,
    settings,
    engineVersion: row.engineVersion,
    answers: row,
    rules: row.reasons.map(({ rule }) => rule),
  });

/** Decisions of one evaluation are told to the audit together, with the first of them. */
const sealedWith = async (access: Access, row: CertifiedRow): Promise<AuditRow | null> => {
  const rows = await access.store.read
    .select()
    .from(audit)
    .where(
      and(
        eq(audit.clinicId, row.clinicId),
        eq(audit.patientId, row.patientId),
        eq(audit.at, row.evaluatedAt),
        eq(audit.subject, 'decision'),
      ),
    )
    .orderBy(asc(audit.sequence));
  const own = rows.findIndex(({ subjectId }) => subjectId === row.id);
  return rows.slice(0, own + 1).findLast(({ detail }) => 'written' in detail) ?? null;
};

export type Certified =
  | { readonly ok: true; readonly certificate: Certificate }
  | { readonly ok: false; readonly why: 'no-such-decision' | 'audit-row-away' };

export const certificateOf = async (access: Access, patientId: string, id: string): Promise<Certified> => {
  const [found] = await access.store.read
    .select({ row: decision, settings: decisionSettings.settings })
    .from(decision)
    .innerJoin(decisionSettings, ofItsSettings())
    .where(
      and(eq(decision.clinicId, access.clinicId), eq(decision.patientId, patientId), eq(decision.id, id)),
    );
  if (!found) return { ok: false, why: 'no-such-decision' };
  const sealed = await sealedWith(access, found.row);
  if (!sealed) return { ok: false, why: 'audit-row-away' };
  const body: CertificateBody = {
    certificate: 'decision',
    format: 1,
    decision: found.row,
    settings: found.settings,
    audit: sealed,
  };
  return { ok: true, certificate: { ...body, sha256: sha256Of(body) } };
};

/** Seal of the row at the same place of the chain; null where the file has none there. */
export const sealInChain = async (
  store: Store,
  { clinicId, sequence }: Pick<AuditRow, 'clinicId' | 'sequence'>,
): Promise<string | null> => {
  const [found] = await store.read
    .select({ seal: audit.seal })
    .from(audit)
    .where(and(eq(audit.clinicId, clinicId), eq(audit.sequence, sequence)));
  return found?.seal ?? null;
};

/** As it is handed on. */
export const certificateText = (certificate: Certificate): string =>
  `${JSON.stringify(certificate, null, 2)}\n`;
