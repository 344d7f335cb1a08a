/** The plan as a clinician is shown it beside a correction: each exercise in force and what stands in its way. */
import type { DecisionWord, Today } from '#core/decision/answers.ts';
import { withDecisionsInForce } from '#core/decision/decisions-in-force.ts';
import { exerciseById } from '#core/exercises/catalogue.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { careRefusals, eligibilityRefusals } from '#core/prescribing/propose.ts';
import type { Access } from '#data/access.ts';
import { decisionsInForceOf } from '#data/decision/decisions-in-force.ts';
import { evaluationNow } from '#data/decision/evaluate.ts';
import { suspensionsOf } from '#data/episode/care-around.ts';
import type { Patient } from '#data/patients/people.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';

interface PlannedExercise {
  readonly itemId: string;
  readonly title: string;
  readonly dose: Dose;
  /** What the rules answer, and an open pause or an override before them; null where they look at none of it. */
  readonly decision: DecisionWord | null;
  readonly today: Today;
  /** Sentences that stand in the way of this very dose; empty where it may be done. */
  readonly inTheWay: readonly string[];
}

/** An engine's word that is no pause is worked out anew, so that a plan can be shown before it is in force. */
const evaluated = async (access: Access, patientId: string) => {
  const evaluation = await evaluationNow(access, patientId);
  const standing = [...(await decisionsInForceOf(access, patientId))].filter(
    ([, { from, decision }]) => from !== 'engine' || decision === 'pause',
  );
  return evaluation && withDecisionsInForce(evaluation, new Map(standing));
};

export const planOf = async (access: Access, patient: Patient): Promise<readonly PlannedExercise[]> => {
  const context = await prescribingContextFor(access, patient);
  const versions = inForce(await prescriptionsOf(access, patient.id));
  const { suspensions } = await suspensionsOf(access, patient.id, versions);
  const items = (await evaluated(access, patient.id))?.items ?? [];
  return versions.map(({ id, itemId, dose }) => {
    const item = items.find((one) => one.itemId === itemId);
    const refused = [...eligibilityRefusals(context, dose), ...careRefusals(context, dose)];
    return {
      itemId,
      title: exerciseById(dose.exerciseId)?.title ?? dose.exerciseId,
      dose,
      decision: item?.decision ?? null,
      today: suspensions.get(id)?.today ?? item?.today ?? 'as-planned',
      inTheWay: refused.map(({ reason }) => reason),
    };
  });
};
