/** What a patient writes to the clinic. People read it; nothing is decided from it. */
import { z } from 'zod';
import { urgentNumberOf } from '#core/episode/urgent-number.ts';
import { messagesSince, patientMessagesOf, sendPatientMessage } from '#data/messages/patient-messages.ts';
import { clinicOf } from '#data/patients/people.ts';
import { hoursText } from '#messages/hours.ts';
import { refusalText } from '#messages/refusals.ts';
import { Problem } from '../errors.ts';
import { patientProcedure, router } from '../trpc.ts';

const dayMs = 86_400_000;
/** More in a day is no conversation, and would bury what others wrote. */
const mostInADay = 20;

export const patientMessagesRouter = router({
  get: patientProcedure.query(async ({ ctx }) => {
    const clinic = await clinicOf(ctx.access.store, ctx.access.clinicId);
    return {
      clinicName: clinic?.name ?? '',
      phone: clinic?.phone ?? '',
      emergencyNumber: clinic?.emergencyNumber ?? '',
      urgentNumber: clinic ? urgentNumberOf(clinic) : '',
      monitoringHours: hoursText(clinic?.monitoringHours ?? []),
      messages: await patientMessagesOf(ctx.access, ctx.patient.id),
    };
  }),

  send: patientProcedure
    .input(z.object({ text: z.string().trim().min(1).max(1000) }))
    .mutation(async ({ ctx, input }) => {
      const { access, patient } = ctx;
      if ((await messagesSince(access, patient.id, access.now - dayMs)) >= mostInADay)
        throw new Problem('refused', refusalText('too-many-messages'));
      return sendPatientMessage(access, patient.id, input.text);
    }),
});
