/** Warning signs, the contacts they asked for, pauses and what was resumed: records of their own, never edited. */
import { sql } from 'drizzle-orm';
import { pauseCauses, reached, signSources } from '#core/danger/danger.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { kit, words } from './kit.ts';
import { owned } from './owned.ts';

export const urgencies = ['emergency', 'same-day', 'routine'] as const;

export const warningSign = kit.appendOnly(
  'warning_sign',
  {
    ...owned(),
    source: kit.word('source', signSources),
    flags: kit.json<readonly RedFlag[]>('flags'),
    joint: kit.textOrNull('joint'),
    urgency: kit.word('urgency', urgencies),
    /** The session or morning it was told with; null = told in another way. */
    entryId: kit.idOrNull('entry_id'),
    remark: kit.textOrNull('remark'),
  },
  (t) => [
    kit.index('warning_sign_by_patient').on(t.patientId, t.recordedAt),
    kit.check('warning_sign_source', sql`${t.source} IN (${words(signSources)})`),
    kit.check('warning_sign_urgency', sql`${t.urgency} IN (${words(urgencies)})`),
    kit.check('warning_sign_flags', sql`json_array_length(${t.flags}) > 0 OR ${t.source} = 'clinician'`),
  ],
);

/** One attempt to speak with the patient about the signs it names. */
export const contactAttempt = kit.appendOnly(
  'contact_attempt',
  {
    ...owned(),
    signIds: kit.json<readonly string[]>('sign_ids'),
    /** Decisions that asked for a contact the same day and are answered by it. */
    decisionIds: kit.json<readonly string[]>('decision_ids'),
    reached: kit.word('reached', reached),
    found: kit.textOrNull('found'),
    advised: kit.textOrNull('advised'),
    referredTo: kit.textOrNull('referred_to'),
    nextAt: kit.instantOrNull('next_at'),
  },
  (t) => [
    kit.index('contact_attempt_by_patient').on(t.patientId, t.recordedAt),
    kit.check('contact_attempt_reached', sql`${t.reached} IN (${words(reached)})`),
    kit.check('contact_attempt_next', sql`(${t.reached} = 'nobody') = (${t.nextAt} IS NOT NULL)`),
    kit.check(
      'contact_attempt_said',
      sql`${t.reached} = 'nobody' OR (length(trim(${t.found})) > 0 AND length(trim(${t.advised})) > 0)`,
    ),
  ],
);

export const pause = kit.appendOnly(
  'pause',
  {
    ...owned(),
    cause: kit.word('cause', pauseCauses),
    signId: kit.idOrNull('sign_id').references(() => warningSign.id),
    /** null = everything. */
    joint: kit.textOrNull('joint'),
    reason: kit.text('reason'),
    until: kit.dayOrNull('until'),
  },
  (t) => [
    kit.index('pause_by_patient').on(t.patientId, t.recordedAt),
    kit.index('pause_of_sign').on(t.signId).where(sql`${t.signId} IS NOT NULL`),
    kit.check('pause_cause', sql`${t.cause} IN (${words(pauseCauses)})`),
    kit.check('pause_sign', sql`(${t.cause} = 'warning-sign') = (${t.signId} IS NOT NULL)`),
    kit.check('pause_reason', sql`length(trim(${t.reason})) > 0`),
  ],
);

export const pauseResumption = kit.appendOnly(
  'pause_resumption',
  {
    ...owned(),
    pauseId: kit.id('pause_id').references(() => pause.id),
    /** null = whatever the pause still held. */
    itemId: kit.idOrNull('item_id'),
    reason: kit.text('reason'),
  },
  (t) => [
    kit.index('pause_resumption_by_patient').on(t.patientId, t.recordedAt),
    kit.index('pause_resumption_of_pause').on(t.pauseId),
    kit.check('pause_resumption_reason', sql`length(trim(${t.reason})) > 0`),
  ],
);
