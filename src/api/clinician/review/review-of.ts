/** Everything the page of a review is shown from. */

import { z } from 'zod';
import { Problem } from '#api/errors.ts';
import { madeBeforeCorrection } from '#core/corrections/correction.ts';
import { treatmentLines } from '#core/episode/treatment/treatment-timeline.ts';
import { joints } from '#core/exercises/joints.ts';
import { answerChanges } from '#core/record/answer-changes.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { correctionsOf } from '#data/corrections/corrections.ts';
import { responsesOf } from '#data/decision/decision-responses.ts';
import { decisionsOf, proposalsOf } from '#data/decision/decisions.ts';
import { limbChecksOf } from '#data/entries/limb-checks.ts';
import { correctedSessions } from '#data/entries/sent-sessions.ts';
import { supervisedSince } from '#data/entries/supervised-sessions.ts';
import { eventsOf } from '#data/episode/care-events.ts';
import { messagesOf } from '#data/messages/messages.ts';
import { patientMessagesOf } from '#data/messages/patient-messages.ts';
import type { Patient } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { bookingOf } from '#data/review/review-bookings.ts';
import { doseChangeText } from '#messages/dose-changes.ts';
import { readySentences } from '#messages/ready.ts';
import { doseReview } from './dose-review.ts';
import { clinicDays } from './summary.ts';

export const reviewWanted = z.object({
  days: z.number().int().min(14).max(1100).default(120),
  /** The prescribed exercise whose doses are told, and the joint that answers. */
  dose: z.object({ itemId: z.string().max(64), joint: z.enum(joints) }).optional(),
});

const correctedSince = async (access: Access, patientId: string, since: Day) =>
  (await correctedSessions(access, patientId, since)).map(({ day, before, after }) => ({
    day,
    changes: answerChanges(before, after),
  }));

export const reviewOf = async (
  access: Access,
  patient: Patient,
  { days, dose }: z.infer<typeof reviewWanted>,
) => {
  const since = addDays(access.day, -days);
  const prescriptions = await prescriptionsOf(access, patient.id);
  const record = await recordOf(access, patient.id, days);
  const corrections = await correctionsOf(access, patient.id);
  if (!record) throw new Problem('not-found', 'There is no such patient in your clinic.');
  const proposals = await proposalsOf(access, patient.id);
  const settings = await settingsOf(access);
  return {
    day: access.day,
    since,
    record,
    prescriptions,
    corrected: await correctedSince(access, patient.id, since),
    supervised: await supervisedSince(access, patient.id, since),
    limbChecks: await limbChecksOf(access, record, since),
    decisions: (await decisionsOf(access, patient.id, since)).map((row) => ({
      ...row,
      correctedSince: madeBeforeCorrection(row, corrections),
    })),
    responses: await responsesOf(access, patient.id),
    proposals: proposals.map(({ changeForPatient, ...rest }) => ({
      ...rest,
      toPatient: doseChangeText(changeForPatient).en,
    })),
    messages: await messagesOf(access, patient.id),
    ready: readySentences,
    plan: await planOf(access, patient),
    treatments: treatmentLines(await eventsOf(access, patient.id)),
    patientMessages: await patientMessagesOf(access, patient.id),
    booking: await bookingOf(access, patient.id),
    settings,
    /** null = not asked for. */
    dose: dose
      ? doseReview({
          ...dose,
          record,
          proposals,
          settings,
          at: { instant: access.now, day: access.day },
          dayOf: await clinicDays(access),
        })
      : null,
  };
};
