import type { FirstVisitStep } from '#core/episode/first-visit/first-visit-steps.ts';

export const addressOfStep = (patientId: string, step: FirstVisitStep): string =>
  `/patients/${patientId}/care/first-visit?step=${step}`;
