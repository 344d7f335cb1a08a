/**
 * Who did what. One chain per clinic: each row's HMAC covers the row and the one before it, with a
 * key kept outside the file. Rows hold ids and field names, never values.
 */
import { sql } from 'drizzle-orm';
import { kit } from './kit.ts';

export const audit = kit.appendOnly(
  'audit',
  {
    clinicId: kit.id('clinic_id'),
    sequence: kit.whole('sequence'),
    at: kit.instant('at'),
    actorId: kit.id('actor_id'),
    /** read, write, sign-in, sign-out, refused. */
    act: kit.text('act'),
    /** What was touched, such as "screening" or "patient-record". */
    subject: kit.text('subject'),
    subjectId: kit.textOrNull('subject_id'),
    patientId: kit.idOrNull('patient_id'),
    /** Field names, counts and digests of ids; never a value of the record. */
    detail: kit.json<Readonly<Record<string, unknown>>>('detail'),
    previous: kit.text('previous'),
    seal: kit.text('seal'),
  },
  (t) => [
    kit.key({ columns: [t.clinicId, t.sequence] }),
    kit.index('audit_by_patient').on(t.patientId, t.at),
    kit.check('audit_sequence', sql`${t.sequence} > 0`),
  ],
);

/**
 * The oldest rows of a chain, moved to a file of their own when the clinic's years were over. What is
 * left begins after `lastSequence` and follows `lastSeal`; the seal covers the note and the one before.
 */
export const auditSegment = kit.appendOnly(
  'audit_segment',
  {
    clinicId: kit.id('clinic_id'),
    lastSequence: kit.whole('last_sequence'),
    lastSeal: kit.text('last_seal'),
    /** Instant of the last row moved. */
    lastAt: kit.instant('last_at'),
    archivedAt: kit.instant('archived_at'),
    seal: kit.text('seal'),
  },
  (t) => [
    kit.key({ columns: [t.clinicId, t.lastSequence] }),
    kit.check('audit_segment_sequence', sql`${t.lastSequence} > 0`),
  ],
);

// A row may leave only when a note says that it was moved; a note without the key's seal is found.
kit.keptWhile(
  audit,
  'OLD.sequence > coalesce((SELECT max(last_sequence) FROM audit_segment WHERE clinic_id = OLD.clinic_id), 0)',
);
