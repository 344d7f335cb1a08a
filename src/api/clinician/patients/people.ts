/** Patients of the clinic: finding, adding, and what is known of them for dosing. */
import { z } from 'zod';
import { householdEquipment } from '#core/exercises/equipment.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { isNamedLike } from '#core/record/name-search.ts';
import { newPatientRefusals } from '#core/record/patient-detail-checks.ts';
import { detailChangeFields, newPatientFields } from '#core/record/patient-details.ts';
import { careProfileFields } from '#core/record/staff-fields.ts';
import { mergesOf } from '#data/patients/merges.ts';
import { onOpenedRecord } from '#data/patients/opened-record.ts';
import { detailsOf } from '#data/patients/patient-details.ts';
import { patientsOf } from '#data/patients/people.ts';
import { saveProfile } from '#data/patients/save-profile.ts';
import { checked } from '../../inputs/checked.ts';
import { clinicianProcedure, recordProcedure, router } from '../../trpc.ts';
import { addNewPatient } from './add-patient.ts';
import { patientBarOf } from './patient-bar.ts';
import { saveDetails } from './save-details.ts';

/** A page that is still read by eye; who is not on it is found by the name. */
const mostListed = 200;

export const peopleRouter = router({
  /** Of every patient of the clinic those named so; nothing typed is in every name. */
  list: clinicianProcedure
    .input(z.object({ name: z.string().trim().max(100) }).default({ name: '' }))
    .query(({ ctx, input }) =>
      patientsOf(ctx.access, (person) => isNamedLike(person, input.name), mostListed),
    ),

  /** With the other records of the person, where two were merged. */
  get: recordProcedure.query(({ ctx: { access, patient } }) =>
    onOpenedRecord(access, patient.id, async () => ({
      ...patient,
      ...(await mergesOf(access, patient.id)),
    })),
  ),

  bar: recordProcedure.query(({ ctx: { access, patient } }) =>
    onOpenedRecord(access, patient.id, () => patientBarOf(access, patient)),
  ),

  create: clinicianProcedure
    .input(z.object({ patient: z.unknown(), otherThan: z.array(z.string().max(64)).max(50).default([]) }))
    .mutation(({ ctx, input }) => {
      const row = checked(newPatientFields, input.patient, (value) =>
        newPatientRefusals(value, ctx.access.day),
      );
      return addNewPatient(ctx.access, row, input.otherThan);
    }),

  /** Name, birth, and how to reach the patient, each with its versions. */
  details: recordProcedure.query(({ ctx }) => detailsOf(ctx.access, ctx.patient.id)),

  changeDetails: recordProcedure
    .input(z.object({ changes: z.unknown(), confirmed: z.boolean().default(false) }))
    .mutation(({ ctx, input }) => {
      const { changes } = checked(detailChangeFields, { changes: input.changes });
      return saveDetails(ctx.access, ctx.patient.id, changes, input.confirmed);
    }),

  saveProfile: recordProcedure
    .input(z.object({ profile: z.unknown() }))
    .output(z.number())
    .mutation(({ ctx, input }) => {
      const profile = checked(careProfileFields, input.profile);
      return saveProfile(ctx.access, ctx.patient.id, {
        ...profile,
        followedJoints: profile.followedJoints as readonly Joint[],
        swellingNotAsked: (profile.swellingNotAsked ?? []) as readonly Joint[],
        ownedEquipment: profile.ownedEquipment ?? householdEquipment,
      });
    }),
});
