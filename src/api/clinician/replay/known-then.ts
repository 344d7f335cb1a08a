/** One record as it was known at a past instant: to the phone, to a clinician and on the worklist. */
import { z } from 'zod';
import { screeningItem } from '#core/screening/items.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { wallTime } from '#data/civil-time.ts';
import { handoverFor } from '#data/episode/handover.ts';
import { messagesOf } from '#data/messages/messages.ts';
import { patientMessagesOf } from '#data/messages/patient-messages.ts';
import { clinicOf, type Patient, patientOf } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { inThePast } from '#data/replay/past/in-the-past.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import { itemsDueOf } from '#data/worklist/items-of-patient.ts';
import { putItemsOf } from '#data/worklist/worklist-items.ts';
import { todayFor } from '../../patient/today.ts';
import { recordProcedure } from '../../trpc.ts';
import { shownItem } from '../worklist-item.ts';
import { instantAsked } from './instant-asked.ts';

/** Days of answers that are listed; the engine and the plan read all they read then. */
const listedDays = 14;

const screeningThen = async (past: Access, patientId: string) => {
  const sheet = await newestScreening(past, patientId);
  return (
    sheet && {
      day: sheet.day,
      answers: sheet.answers
        .filter(({ answer }) => answer !== 'no')
        .map(({ item, answer }) => ({ item, answer, question: screeningItem(item)?.clinicianLabel ?? item })),
    }
  );
};

const answersThen = async (past: Access, patientId: string) => {
  const record = await recordOf(past, patientId);
  const since = addDays(past.day, -listedDays);
  return {
    since,
    sessions: (record?.sessions ?? []).filter(({ day }) => day >= since).toReversed(),
    mornings: (record?.mornings ?? []).filter(({ day }) => day >= since).toReversed(),
    baselines: [...new Map((record?.baselines ?? []).map((row) => [row.joint, row])).values()],
  };
};

/** By the very functions of the phone's day, the handover and the worklist. */
export const knownAt = async (past: Access, patient: Patient) => {
  const { id } = patient;
  const phone = await todayFor(past, patient, { clockOffset: 0, where: 'home' });
  return {
    name: `${patient.givenName} ${patient.familyName}`,
    birthDay: patient.birthDay,
    telephone: patient.phone,
    diagnosis: patient.profile?.diagnosis ?? null,
    phone,
    handover: await handoverFor(past, patient),
    items: (await itemsDueOf(past, id)).map((row) => shownItem(row, past.day)),
    screening: await screeningThen(past, id),
    ...(await answersThen(past, id)),
    messages: await messagesOf(past, id),
    patientMessages: await patientMessagesOf(past, id),
  };
};

const timeOf = async ({ store, clinicId, now }: Access): Promise<string> =>
  wallTime(now, (await clinicOf(store, clinicId))?.zone ?? 'UTC');

export const knownThenProcedure = recordProcedure
  .input(z.object({ at: z.string().max(32) }))
  .query(async ({ ctx: { access, patient }, input }) => {
    const at = await instantAsked(access, input.at);
    return inThePast(access, at, async (past) => {
      const then = await patientOf(past, patient.id);
      if (then) await putItemsOf(past, patient.id);
      // Null: the clinic had no record of the person yet.
      return { at, day: past.day, time: await timeOf(past), known: then && (await knownAt(past, then)) };
    });
  });
