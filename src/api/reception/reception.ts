/** The front desk: who comes when, names and numbers. No procedure here answers anything clinical. */
import { z } from 'zod';
import { isNamedLike } from '#core/record/name-search.ts';
import { newPatientRefusals } from '#core/record/patient-detail-checks.ts';
import { detailChangeFields, newPatientFields, type PatientDetail } from '#core/record/patient-details.ts';
import { detailsOf } from '#data/patients/patient-details.ts';
import { appointmentsOf, peopleNamed } from '#data/reception/appointments.ts';
import { bookingOf } from '#data/review/review-bookings.ts';
import { book, bookingInput } from '../clinician/bookings.ts';
import { addNewPatient } from '../clinician/patients/add-patient.ts';
import { saveDetails } from '../clinician/patients/save-details.ts';
import { refusedWith } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { madeId } from '../outputs.ts';
import { router } from '../trpc.ts';
import { receptionPatientProcedure, receptionProcedure } from './reception-procedure.ts';

/** As many as are read at a glance; who is not among them is found by more of the name. */
const mostFound = 30;

/** Doses are worked out with the age: a wrong day of birth is a clinician's to correct. */
const ofClinicians: readonly PatientDetail[] = ['birthDay'];

export const receptionRouter = router({
  appointments: receptionProcedure.query(({ ctx }) => appointmentsOf(ctx.access)),

  find: receptionProcedure
    .input(z.object({ name: z.string().trim().min(1).max(100) }))
    .query(({ ctx, input }) =>
      peopleNamed(ctx.access, (person) => isNamedLike(person, input.name), mostFound),
    ),

  person: receptionPatientProcedure.query(async ({ ctx: { access, patient } }) => ({
    ...patient,
    details: await detailsOf(access, patient.id),
    booking: await bookingOf(access, patient.id),
  })),

  add: receptionProcedure
    .input(z.object({ patient: z.unknown(), otherThan: z.array(z.string().max(64)).max(50).default([]) }))
    .mutation(({ ctx, input }) => {
      const row = checked(newPatientFields, input.patient, (value) =>
        newPatientRefusals(value, ctx.access.day),
      );
      return addNewPatient(ctx.access, row, input.otherThan, false);
    }),

  changeDetails: receptionPatientProcedure
    .input(z.object({ changes: z.unknown(), confirmed: z.boolean().default(false) }))
    .mutation(({ ctx, input }) => {
      const { changes } = checked(detailChangeFields, { changes: input.changes });
      if (changes.some(({ detail }) => ofClinicians.includes(detail)))
        throw refusedWith([
          {
            field: 'input.detail',
            code: 'inconsistent',
            reason: 'A clinician corrects the day of birth: doses are worked out with the age. Ask one to.',
          },
        ]);
      return saveDetails(ctx.access, ctx.patient.id, changes, input.confirmed);
    }),

  book: receptionPatientProcedure
    .input(bookingInput)
    .output(madeId)
    .mutation(({ ctx, input }) => book(ctx.access, ctx.patient.id, input)),
});
