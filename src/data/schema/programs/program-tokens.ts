/** Keys by which other programs read what a clinic keeps. The key itself is shown once and never kept. */
import { sql } from 'drizzle-orm';
import type { TokenScope } from '#core/clinic/token-scopes.ts';
import { kit } from '../kit.ts';
import { clinic } from '../people.ts';

export const programToken = kit.appendOnly(
  'program_token',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    /** Of the program, in the administrator’s words. */
    name: kit.text('name'),
    digest: kit.text('digest'),
    scopes: kit.json<readonly TokenScope[]>('scopes'),
    /** By the system clock. */
    expiresAt: kit.instant('expires_at'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.unique('program_token_digest').on(t.digest),
    kit.index('program_token_by_clinic').on(t.clinicId, t.recordedAt),
    kit.check('program_token_name', sql`length(trim(${t.name})) BETWEEN 1 AND 100`),
    kit.check('program_token_scopes', sql`json_array_length(${t.scopes}) > 0`),
  ],
);

/** A key withdrawn before its time. */
export const programTokenEnd = kit.appendOnly(
  'program_token_end',
  {
    tokenId: kit
      .id('token_id')
      .primaryKey()
      .references(() => programToken.id),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    endedAt: kit.instant('ended_at'),
    endedBy: kit.id('ended_by'),
    byName: kit.text('by_name'),
  },
  (t) => [kit.index('program_token_end_by_clinic').on(t.clinicId)],
);
