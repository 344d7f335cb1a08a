/** The plan as a clinician is shown it beside a correction: each exercise in force and what stands in its way. */
import type { DecisionWord, Today } from '#core/decision/answers.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { careRefusals, eligibilityRefusals } from '#core/prescribing/propose.ts';
import type { Access } from '#data/access.ts';
import { decisionsNow } from '#data/decision/evaluate.ts';
import type { Patient } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';

interface ShownExercise {
  readonly itemId: string;
  readonly title: string;
  readonly dose: Dose;
  /** null where nothing was decided about any joint it loads, and nothing else takes the step away. */
  readonly decision: DecisionWord | null;
  readonly today: Today;
  /** Sentences that stand in the way of this very dose; empty where it may be done. */
  readonly inTheWay: readonly string[];
}

/** With `asSeen` the plan is not in force yet: what the rules would then decide counts as decided. */
export const shownPlan = async (access: Access, patient: Patient): Promise<readonly ShownExercise[]> => {
  const context = await prescribingContextFor(access, patient);
  const versions = inForce(await prescriptionsOf(access, patient.id));
  const would = access.asSeen ? await decisionsNow(access, patient.id) : [];
  const { items, joints } = await planOf(access, patient, versions, would);
  return versions.map(({ id, itemId, dose }) => {
    const item = items.find(({ prescriptionId }) => prescriptionId === id)!;
    const isDecided = item.decision !== 'progress' || item.joints.some((joint) => joints.has(joint));
    const refused = [...eligibilityRefusals(context, dose), ...careRefusals(context, dose)];
    return {
      itemId,
      title: exerciseTitle(dose.exerciseId),
      dose,
      decision: isDecided ? item.decision : null,
      today: item.today,
      inTheWay: refused.map(({ reason }) => reason),
    };
  });
};
