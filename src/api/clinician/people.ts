/** Patients of the clinic: finding, adding, and what is known of them for dosing. */
import { z } from 'zod';
import { householdEquipment } from '#core/exercises/equipment.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { careProfileFields, newPatientConsistent, newPatientFields } from '#core/record/staff-fields.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { addPatient, patientsOf, saveProfile } from '#data/patients/people.ts';
import { checked } from '../inputs/checked.ts';
import { clinicianProcedure, recordProcedure, router } from '../trpc.ts';

export const peopleRouter = router({
  list: clinicianProcedure.query(({ ctx }) => patientsOf(ctx.access)),

  get: recordProcedure.query(({ ctx }) => ctx.patient),

  create: clinicianProcedure.input(z.object({ patient: z.unknown() })).mutation(({ ctx, input }) => {
    const row = checked(newPatientFields, input.patient, (value) =>
      newPatientConsistent(value, ctx.access.day),
    );
    return ctx.access.store.write(async () => {
      const id = await addPatient(ctx.access, row);
      // Who adds a patient looks after them; without it a restricted clinic would begin with open records.
      await setTeamMember(ctx.access, id, ctx.access.actorId, true);
      return id;
    });
  }),

  saveProfile: recordProcedure.input(z.object({ profile: z.unknown() })).mutation(({ ctx, input }) => {
    const profile = checked(careProfileFields, input.profile);
    return saveProfile(ctx.access, ctx.patient.id, {
      ...profile,
      followedJoints: profile.followedJoints as readonly Joint[],
      swellingNotAsked: (profile.swellingNotAsked ?? []) as readonly Joint[],
      ownedEquipment: profile.ownedEquipment ?? householdEquipment,
    });
  }),
});
