/** What a patient and the clinic write to each other. People read it; nothing is decided from it. */
import { z } from 'zod';
import { urgentNumberOf } from '#core/episode/urgent-number.ts';
import type { Access } from '#data/access.ts';
import { messagesOf } from '#data/messages/messages.ts';
import {
  knownMessage,
  messagesSince,
  patientMessagesOf,
  sendPatientMessage,
} from '#data/messages/patient-messages.ts';
import { clinicOf } from '#data/patients/people.ts';
import { hoursText } from '#messages/hours.ts';
import { messageText } from '#messages/ready.ts';
import { refusalText } from '#messages/refusals.ts';
import type { Text } from '#messages/text.ts';
import { Problem } from '../errors.ts';
import { patientProcedure, router } from '../trpc.ts';

const dayMs = 86_400_000;
/** More in a day is no conversation, and would bury what others wrote. */
const mostInADay = 20;

const messageFields = z.object({
  entryId: z.uuid(),
  text: z.string().trim().min(1).max(1000),
});

/** A message out of a phone's queue: kept once, however often it is sent. */
export const takeMessage = async (
  access: Access,
  patientId: string,
  entry: unknown,
): Promise<'stored' | 'known' | 'conflict'> => {
  const { data } = messageFields.safeParse(entry);
  if (!data) throw new Problem('refused', refusalText('request-unread'));
  const { entryId: id, text } = data;
  const before = await knownMessage(access, patientId, { id, text });
  if (before) return before;
  if ((await messagesSince(access, patientId, access.now - dayMs)) >= mostInADay)
    throw new Problem('refused', refusalText('too-many-messages'));
  await sendPatientMessage(access, patientId, text, id);
  return 'stored';
};

export interface ConversationLine {
  readonly id: string;
  readonly from: 'patient' | 'clinic';
  readonly text: string | Text;
  readonly at: number;
  readonly byName: string;
}

/** Both sides, newest first. */
const conversationOf = async (access: Access, patientId: string): Promise<readonly ConversationLine[]> => {
  const own = (await patientMessagesOf(access, patientId)).map(
    ({ id, text, recordedAt, byName }): ConversationLine => ({
      id,
      from: 'patient',
      text,
      at: recordedAt,
      byName,
    }),
  );
  const clinic = (await messagesOf(access, patientId)).map(
    ({ id, text, sentAt, sentName }): ConversationLine => ({
      id,
      from: 'clinic',
      text: messageText(text),
      at: sentAt,
      byName: sentName,
    }),
  );
  return [...own, ...clinic].toSorted((a, b) => b.at - a.at);
};

export const patientMessagesRouter = router({
  get: patientProcedure.query(async ({ ctx }) => {
    const clinic = await clinicOf(ctx.access.store, ctx.access.clinicId);
    return {
      clockOffset: ctx.clockOffset,
      clinicName: clinic?.name ?? '',
      phone: clinic?.phone ?? '',
      emergencyNumber: clinic?.emergencyNumber ?? '',
      urgentNumber: clinic ? urgentNumberOf(clinic) : '',
      monitoringHours: hoursText(clinic?.monitoringHours ?? []),
      lines: await conversationOf(ctx.access, ctx.patient.id),
    };
  }),
});
