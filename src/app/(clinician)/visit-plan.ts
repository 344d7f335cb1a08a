/** What a first visit may begin with, and what of a plan stands already. */
import type { FirstVisitStep } from '#core/episode/first-visit/first-visit-steps.ts';
import type { AtRecord } from './clinic-page.ts';

/** Exercises of the joints that are followed, whatever is missing for them yet. */
const choicesFor = async ({ clinician, patient }: AtRecord) => {
  const patientId = patient.id;
  const found = await Promise.all(
    (patient.profile?.followedJoints ?? []).map((joint) =>
      clinician.prescriptions.choices({ patientId, search: { joint } }),
    ),
  );
  return [...new Map(found.flat().map((choice) => [choice.exerciseId, choice])).values()];
};

export const visitPlan = async (at: AtRecord, step: FirstVisitStep) => {
  const { prescriptions, danger } = at.clinician;
  const of = { patientId: at.patient.id };
  return {
    choices: step === 'exercise' ? await choicesFor(at) : [],
    prescriptions: await prescriptions.list(of),
    programme: await prescriptions.programme(of),
    values: await prescriptions.planning(of),
    danger: await danger.get(of),
  };
};
