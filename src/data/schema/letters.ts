/**
 * Letters about a patient. Append-only: each save of a draft is a version of its own, what was signed keeps
 * the words that were read, and a wrong letter is marked void and stays.
 */
import { sql } from 'drizzle-orm';
import type { OwnSentences } from '#core/episode/letters/letter.ts';
import { dayShape, kit } from './kit.ts';
import { clinic, patient } from './people.ts';

const ofLetter = () => ({
  id: kit.id('id').primaryKey(),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  letterId: kit.id('letter_id'),
  recordedAt: kit.instant('recorded_at'),
  recordedBy: kit.id('recorded_by'),
  byName: kit.text('by_name'),
});

export const letterDraft = kit.appendOnly(
  'letter_draft',
  {
    ...ofLetter(),
    /** From 1. */
    version: kit.whole('version'),
    name: kit.text('name'),
    role: kit.textOrNull('role'),
    organisation: kit.textOrNull('organisation'),
    address: kit.textOrNull('address'),
    copies: kit.textOrNull('copies'),
    toPatient: kit.yes('to_patient'),
    language: kit.text('language'),
    noteIds: kit.json<readonly string[]>('note_ids'),
    own: kit.json<OwnSentences>('own'),
  },
  (t) => [
    kit.unique('letter_draft_version').on(t.clinicId, t.letterId, t.version),
    kit.index('letter_draft_by_patient').on(t.patientId, t.recordedAt),
    kit.index('letter_draft_by_clinic').on(t.clinicId, t.recordedAt),
    kit.check('letter_draft_from_one', sql`${t.version} >= 1`),
  ],
);

/** The words as they were read and signed, whole: the record may say something else since. */
export const letterSignature = kit.appendOnly(
  'letter_signature',
  {
    ...ofLetter(),
    version: kit.whole('version'),
    day: kit.day('day'),
    role: kit.text('role'),
    registration: kit.textOrNull('registration'),
    words: kit.json<unknown>('words'),
  },
  (t) => [
    kit.unique('letter_signed_once').on(t.clinicId, t.letterId),
    kit.index('letter_signature_by_patient').on(t.patientId, t.recordedAt),
    kit.index('letter_signature_by_signer').on(t.recordedBy, t.recordedAt),
    kit.check('letter_signature_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

export const letterVoid = kit.appendOnly(
  'letter_void',
  { ...ofLetter(), day: kit.day('day'), reason: kit.text('reason') },
  (t) => [
    kit.unique('letter_void_once').on(t.clinicId, t.letterId),
    kit.index('letter_void_by_patient').on(t.patientId, t.recordedAt),
    kit.check('letter_void_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check('letter_void_reason', sql`length(${t.reason}) > 0`),
  ],
);
