/** The append-only tables whose rows the audit vouches for; its own two are sealed by themselves. */
import { getTableName } from 'drizzle-orm';
import { audit, auditSegment } from '../schema/audit.ts';
import { appendOnlyTables } from '../schema/kit.ts';
import '../schema/schema.ts';

const sealedThemselves: readonly string[] = [getTableName(audit), getTableName(auditSegment)];

export const digestedTables: ReadonlySet<string> = new Set(
  [...appendOnlyTables.keys()]
    .map((table) => getTableName(table))
    .filter((name) => !sealedThemselves.includes(name)),
);

/** Of these a row may leave again: who a patient was, once the identity is deleted. */
export const mayLeave: ReadonlySet<string> = new Set(
  [...appendOnlyTables].flatMap(([table, keptWhile]) => (keptWhile === null ? [] : [getTableName(table)])),
);
