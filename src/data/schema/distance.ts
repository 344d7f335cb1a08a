/** What was found of a joint at a distance. Append-only: what is entered anew for the same part stands beside the first. */
import { sql } from 'drizzle-orm';
import { judgedBy, partsOfGuide } from '#core/episode/distance/guide.ts';
import { visit } from './care.ts';
import { kit, words } from './kit.ts';
import { owned } from './owned.ts';

export const distanceFinding = kit.appendOnly(
  'distance_finding',
  {
    ...owned(),
    visitId: kit.id('visit_id').references(() => visit.id),
    joint: kit.text('joint'),
    part: kit.word('part', partsOfGuide),
    by: kit.word('judged_by', judgedBy),
    found: kit.textOrNull('found'),
  },
  (t) => [
    kit.index('distance_finding_by_patient').on(t.patientId, t.recordedAt),
    kit.index('distance_finding_of').on(t.visitId),
    kit.check('distance_finding_part', sql`${t.part} IN (${words(partsOfGuide)})`),
    kit.check('distance_finding_by', sql`${t.by} IN (${words(judgedBy)})`),
    // Judged without a finding would read as nothing wrong.
    kit.check('distance_finding_says', sql`${t.by} = 'not-done' OR ${t.found} IS NOT NULL`),
  ],
);
