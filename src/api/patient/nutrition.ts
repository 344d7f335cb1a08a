/** What a clinician has shown of protein and energy; nothing while something closes it. */
import { adviceShownTo, type ShownAdvice } from '#data/assessment/nutrition.ts';
import { patientProcedure, router } from '../trpc.ts';

export type NutritionView = ShownAdvice | null;

export const ownNutritionRouter = router({
  get: patientProcedure.query(({ ctx }): Promise<NutritionView> => adviceShownTo(ctx.access, ctx.patient)),
});
