import type { FirstVisitStep } from '#core/episode/first-visit/first-visit-steps.ts';

/** Within a record. */
export const stepPath = (step: FirstVisitStep): string => `care/first-visit?step=${step}`;

export const addressOfStep = (patientId: string, step: FirstVisitStep): string =>
  `/patients/${patientId}/${stepPath(step)}`;
