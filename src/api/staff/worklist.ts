/** Who needs a clinician, most pressing first, each line with the fact that put it there. */
import { type ChoiceValues, defaultsOf } from '#core/clinic-choice.ts';
import { engineChoices } from '#core/engine/choices.ts';
import { occlusionChoices } from '#core/occlusion/choices.ts';
import { screeningChoices } from '#core/screening/choices.ts';
import type { DueAfter } from '#core/worklist/matter.ts';
import { compareMatters, mattersOf } from '#core/worklist/matters.ts';
import { digestOfIds, noteRead } from '#data/audit.ts';
import { choicesOf } from '#data/choices.ts';
import { worklistPatients } from '#data/worklist.ts';
import { clinicianProcedure, router } from '../trpc.ts';

const dueAfter = (own: ChoiceValues): DueAfter => {
  const values = {
    ...defaultsOf(engineChoices),
    ...defaultsOf(screeningChoices),
    ...defaultsOf(occlusionChoices),
    ...own,
  };
  return {
    missingMornings: values['worklist-missing-mornings']!,
    screeningDays: values['screening-valid-days']!,
    pressureDays: values['occlusion-pressure-valid-days']!,
    baselineDays: values['baseline-expiry']!,
  };
};

export const worklistRouter = router({
  list: clinicianProcedure.query(async ({ ctx }) => {
    const due = dueAfter(await choicesOf(ctx.access));
    const patients = await worklistPatients(ctx.access);
    const lines = patients.flatMap(({ patientId, givenName, familyName, ...state }) => {
      const [first, ...others] = mattersOf(state, ctx.access.day, due);
      return first ? [{ patientId, givenName, familyName, matter: first, others }] : [];
    });
    lines.sort((a, b) => compareMatters(a.matter, b.matter));
    const ids = lines.map((line) => line.patientId);
    noteRead(ctx.access, { subject: 'worklist', detail: { count: ids.length, ids: digestOfIds(ids) } });
    return { day: ctx.access.day, patients: patients.length, lines };
  }),
});
