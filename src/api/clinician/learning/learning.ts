/** What the clinic learns from its own records: for whoever may see the whole clinic, and of nobody in particular. */
import { clinicLearning } from '#core/clinic/learning/clinic-learning.ts';
import { fewestPeople } from '#core/decision/followed/rule-board.ts';
import type { Access } from '#data/access.ts';
import { noteRead } from '#data/audit/audit.ts';
import { learnedOfClinic } from '#data/clinic/learned.ts';
import { boardDays } from '#data/decision/followed-decisions.ts';
import { router, staffProcedure } from '../../trpc.ts';
import { figuresFile } from './figures-file.ts';

/** Every record is read for it, so that it was asked for stands in the audit. */
const learned = async (access: Access, subject: string) => {
  noteRead(access, { subject });
  return clinicLearning(await learnedOfClinic(access));
};

export const learningRouter = router({
  get: staffProcedure.query(async ({ ctx: { access } }) => ({
    weeks: boardDays / 7,
    fewest: fewestPeople,
    ...(await learned(access, 'clinic-figures')),
  })),

  /** Rows of RFC 4180. */
  file: staffProcedure.query(async ({ ctx: { access } }) =>
    figuresFile(await learned(access, 'clinic-figures-file')),
  ),
});
