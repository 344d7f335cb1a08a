/**
 * What holds of a certificate and what does not: each link from the rules to the seal is looked at by itself, and
 * whoever has no key is told that the seal was not looked at.
 */
import { getTableColumns } from 'drizzle-orm';
import type { TableVerdict } from '#core/decision/independent/by-table.ts';
import { type DecidedAgain, decidedAgain } from '#core/decision/replay.ts';
import { digestOfRow, digestsIn } from '../../audit/row-digests.ts';
import { type AuditKeys, keysIn, sealOf } from '../../audit/seal.ts';
import { decision } from '../../schema/schema.ts';
import { settingsIdOf } from '../settings-stored.ts';
import { type Certificate, type CertifiedRow, sha256Of, tableVerdictOf } from './certificate.ts';

export interface CertificateVerdict {
  /** What was changed, or is not the product’s; empty where all that was looked at holds. */
  readonly findings: readonly string[];
  readonly table: TableVerdict;
  readonly engine: DecidedAgain;
  readonly seal: 'holds' | 'broken' | 'not-looked-at';
}

/** As the file has it, by the names of its columns. */
const rowInFile = (row: CertifiedRow): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(getTableColumns(decision)).map(([key, column]) => {
      const value = row[key as keyof CertifiedRow] ?? null;
      return [column.name, value === null ? null : column.mapToDriverValue(value)];
    }),
  );

const isOfThisDecision = ({ audit, decision: row }: Certificate): boolean =>
  audit.subject === 'decision' &&
  audit.act === 'write' &&
  audit.clinicId === row.clinicId &&
  audit.patientId === row.patientId &&
  audit.at === row.evaluatedAt;

const sealFindings = (certificate: Certificate, keys: AuditKeys): readonly string[] => {
  const { seal, ...audit } = certificate.audit;
  const key = keysIn(keys).find((one) => sealOf(one, audit) === seal);
  if (!key)
    return ['the seal of the audit row does not hold: the row was changed, or another clinic’s key made it'];
  if (!isOfThisDecision(certificate)) return ['the audit row speaks of something else'];
  const { written } = audit.detail as { readonly written?: Readonly<Record<string, string>> };
  const digest = digestOfRow(key, { table: 'decision', row: rowInFile(certificate.decision) });
  return digestsIn(written?.decision ?? '').includes(digest)
    ? []
    : ['the decision or its facts are not as they were written: the audit row holds no digest of them'];
};

const tableFinding = (table: TableVerdict): readonly string[] => {
  if (table.says !== 'otherwise') return [];
  const { decision: word, today, contact, rules } = table.instead;
  return [
    `by the independent table, version ${table.table}, these facts give ${word}, today ${today}, contact ${contact} (${rules || 'no rule'})`,
  ];
};

const engineFinding = (engine: DecidedAgain): readonly string[] =>
  engine.outcome === 'different'
    ? [`decided again by this release these facts give ${engine.after.decision}, today ${engine.after.today}`]
    : [];

/** `keys` null: whoever verifies it has none. */
export const verifyCertificate = (certificate: Certificate, keys: AuditKeys | null): CertificateVerdict => {
  const { sha256, ...body } = certificate;
  const { decision: row, settings } = body;
  const table = tableVerdictOf(body);
  const { facts, engineVersion } = row;
  const engine = decidedAgain({ facts, settings, engineVersion, answers: row });
  const ofSeal = keys ? sealFindings(certificate, keys) : [];
  const findings = [
    ...(sha256Of(body) === sha256 ? [] : ['the certificate is not as it was made: its SHA-256 is another']),
    ...(settingsIdOf(row.clinicId, settings) === row.settingsId
      ? []
      : ['the settings are not those of the decision: their digest is another']),
    ...tableFinding(table),
    ...engineFinding(engine),
    ...ofSeal,
  ];
  return {
    findings,
    table,
    engine,
    seal: keys === null ? 'not-looked-at' : ofSeal.length === 0 ? 'holds' : 'broken',
  };
};
