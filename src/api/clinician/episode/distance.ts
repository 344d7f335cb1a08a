/** The guide of an appointment at a distance, and what was found by it. */
import { z } from 'zod';
import { Problem } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { limitsInForce } from '#core/decision/dose/limits.ts';
import { guideFor, notAtADistance } from '#core/episode/distance/guide.ts';
import { fieldsOfGuide, findingsFrom, guideRefusals } from '#core/episode/distance/guide-fields.ts';
import { isRemote } from '#core/episode/remote-visit.ts';
import { type Joint, joints } from '#core/exercises/joints.ts';
import { dayNumber } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { distanceFindingsOf, recordDistanceFindings } from '#data/episode/distance.ts';
import { limitsOfPerson } from '#data/episode/limits-of-person.ts';
import { visitNow } from '#data/episode/visits.ts';
import type { Patient } from '#data/patients/people.ts';
import { nothing } from '../../outputs.ts';

interface Of {
  readonly access: Access;
  readonly patient: Patient;
}

const remoteVisit = async ({ access, patient }: Of) => {
  const visit = await visitNow(access, patient.id);
  return visit && isRemote(visit.place) ? visit : null;
};

const limitsNow = async ({ access, patient }: Of) =>
  limitsInForce(await limitsOfPerson(access, patient.id), joints, dayNumber(access.day));

export const distanceRouter = router({
  /** Null where the caller’s appointment of today is not by video or telephone. */
  guide: recordProcedure.query(async ({ ctx }) => {
    const visit = await remoteVisit(ctx);
    const limits = await limitsNow(ctx);
    const followed: readonly Joint[] = ctx.patient.profile?.followedJoints ?? [];
    return {
      found: await distanceFindingsOf(ctx.access, ctx.patient.id),
      now: visit && {
        visitId: visit.id,
        place: visit.place,
        joints: followed.map((joint) => ({ joint, steps: guideFor(joint, visit.place, limits) })),
        notAtADistance,
      },
    };
  }),

  /** Entered anew, it stands in place of what was found before in the same appointment. */
  record: recordProcedure
    .input(z.object({ visitId: z.string().max(64), joint: z.enum(joints), findings: z.unknown() }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const visit = await remoteVisit(ctx);
      if (visit?.id !== input.visitId)
        throw new Problem(
          'conflict',
          'This is not your appointment by video or telephone of today; open the page again.',
        );
      const joint: Joint = input.joint;
      const steps = guideFor(joint, visit.place, await limitsNow(ctx));
      const row = checked(
        fieldsOfGuide(steps.filter(({ locked }) => locked === null)),
        input.findings,
        guideRefusals,
      );
      return recordDistanceFindings(ctx.access, ctx.patient.id, visit.id, joint, findingsFrom(row, steps));
    }),
});
