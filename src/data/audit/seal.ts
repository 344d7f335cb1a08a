/** The seal of an audit row: over all that stands in it and the seal of the row before. */
import { createHmac } from 'node:crypto';
import type { audit } from '../schema/schema.ts';

export type AuditRow = typeof audit.$inferSelect;

/** The bytes a seal covers, in fixed order. */
const canonical = (row: Omit<AuditRow, 'seal'>): string =>
  JSON.stringify([
    row.clinicId,
    row.sequence,
    row.at,
    row.actorId,
    row.act,
    row.subject,
    row.subjectId,
    row.patientId,
    row.detail,
    row.previous,
  ]);

export const sealOf = (key: Uint8Array, row: Omit<AuditRow, 'seal'>): string =>
  createHmac('sha256', key).update(canonical(row)).digest('hex');

/** What the first row of a chain follows. */
export const chainRoot = '0'.repeat(64);

/** The key of the audit, or all that a file was ever sealed with, from the first to the one in use. */
export type AuditKeys = Uint8Array | readonly Uint8Array[];

export const keysIn = (keys: AuditKeys): readonly Uint8Array[] =>
  keys instanceof Uint8Array ? [keys] : keys;

/** The row by which one key hands over to the next: the last that the earlier one seals. */
export const handOver = 'audit-key';
