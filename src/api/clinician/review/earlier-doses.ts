/** How each followed joint answered the doses of one exercise so far, beside which a new one is written. */
import { z } from 'zod';
import { recordProcedure } from '#api/trpc.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { answersByDose } from '#core/review/dose/answers-by-dose.ts';
import type { DoseAnswers } from '#core/review/dose/corridor.ts';
import { addDays, type Day } from '#core/time/day.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { onWholeRecord } from '#data/decision/decide-queries.ts';
import { recordOf } from '#data/patients/record.ts';

/** As far back as a review looks at first. */
const days = 120;

export interface EarlierDoses {
  readonly joint: Joint;
  readonly since: Day;
  /** Lowest dose first. */
  readonly doses: readonly DoseAnswers[];
}

/** Empty for a joint of which no session could be counted. */
export const earlierDosesProcedure = recordProcedure
  .input(z.object({ itemId: z.string().max(64) }))
  .query(({ ctx: { access, patient }, input }) => {
    const since = addDays(access.day, -days);
    return onWholeRecord(
      access,
      patient.id,
      async (): Promise<readonly EarlierDoses[]> => {
        const record = await recordOf(access, patient.id, days);
        if (!record) return [];
        const settings = await settingsOf(access);
        const at = { instant: access.now, day: access.day };
        return (patient.profile?.followedJoints ?? []).flatMap((joint) => {
          const { doses } = answersByDose({ record, itemId: input.itemId, joint, at, settings });
          return doses.length > 0 ? [{ joint, since, doses }] : [];
        });
      },
      since,
    );
  });
