/** What clinicians write of a contact with a patient. Append-only: what was wrong is marked so and stays. */
import { sql } from 'drizzle-orm';
import { judgedBy, partsOfGuide } from '#core/episode/distance/guide.ts';
import { noteContacts } from '#core/episode/visit-note.ts';
import { episode, visit } from './care.ts';
import { dayShape, kit, words } from './kit.ts';
import { owned } from './owned.ts';
import { clinic, patient } from './people.ts';

export const visitNote = kit.appendOnly(
  'visit_note',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    /** Open when it was written; null = none was. */
    episodeId: kit.idOrNull('episode_id').references(() => episode.id),
    day: kit.day('day'),
    contact: kit.word('contact', noteContacts),
    subjective: kit.textOrNull('subjective'),
    objective: kit.textOrNull('objective'),
    assessment: kit.textOrNull('assessment'),
    plan: kit.textOrNull('plan'),
    text: kit.textOrNull('text'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.index('visit_note_by_patient').on(t.patientId, t.day, t.recordedAt),
    kit.index('visit_note_of_episode').on(t.episodeId).where(sql`${t.episodeId} IS NOT NULL`),
    kit.check('visit_note_contact', sql`${t.contact} IN (${words(noteContacts)})`),
    kit.check('visit_note_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check(
      'visit_note_says_something',
      sql`coalesce(${t.subjective}, ${t.objective}, ${t.assessment}, ${t.plan}, ${t.text}) IS NOT NULL`,
    ),
  ],
);

/** What was found of a joint at a distance: what is entered anew for the same part stands in its place. */
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
