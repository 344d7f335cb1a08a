/** The private address a calendar program reads a patient's days ahead from. */
import { sql } from 'drizzle-orm';
import { kit } from '../kit.ts';
import { clinic, patient } from '../people.ts';

const feedEndings = ['patient', 'clinic', 'end-of-care'] as const;

/** An address a calendar program reads the days ahead from. Only a digest of its secret is kept. */
export const calendarFeed = kit.table(
  'calendar_feed',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    tokenDigest: kit.text('token_digest'),
    /** Of its words, as the page stood when it was made. */
    language: kit.text('language'),
    madeAt: kit.instant('made_at'),
    madeBy: kit.id('made_by'),
    /** To within some minutes; null = never yet. */
    lastReadAt: kit.instantOrNull('last_read_at'),
    endedAt: kit.instantOrNull('ended_at'),
    endedBy: kit.wordOrNull('ended_by', feedEndings),
  },
  (t) => [
    kit.unique('calendar_feed_token').on(t.tokenDigest),
    kit.index('calendar_feed_by_patient').on(t.patientId, t.madeAt),
    kit.unique('calendar_feed_in_use').on(t.patientId).where(sql`${t.endedAt} IS NULL`),
    kit.check('calendar_feed_ended', sql`(${t.endedAt} IS NULL) = (${t.endedBy} IS NULL)`),
  ],
);
