/** From what a clinician asks for to a whole proposed prescription, or every reason why there is none. */

import { isWithoutWeight } from '../decision/dose/volume.ts';
import { missingConsents } from '../episode/consent.ts';
import { homeConditionsOf } from '../episode/home-eligibility.ts';
import { limitRefusals } from '../episode/limit-bounds.ts';
import { limitCautions } from '../episode/limit-cautions.ts';
import { exerciseById, jointsLoaded, jointsToTell } from '../exercises/catalogue.ts';
import { exerciseCautions } from '../exercises/cautions.ts';
import type { Joint } from '../exercises/joints.ts';
import { answer, type Note, type Outcome, type Refusal } from '../outcome.ts';
import { exerciseEligibility } from '../screening/joint-blocks.ts';
import type { Caution } from './cautions/caution.ts';
import { cautionsFor } from './cautions/cautions-for.ts';
import type { Dose } from './dose.ts';
import type { LowLoadRequest, OcclusionRequestInput, VariationRequest } from './dose-request.ts';
import { dosedLowLoad } from './low-load/low-load-for-patient.ts';
import { eligibilities } from './methods.ts';
import { unmetHomeConditions } from './occlusion/home-conditions.ts';
import { occlusionSite } from './occlusion/occlusion-dose.ts';
import { dosedOcclusion } from './occlusion/occlusion-for-patient.ts';
import type { Dosed, Line, PrescribingContext } from './prescribing-context.ts';
import { dosedVariation } from './variation/variation-for-patient.ts';

export type PrescriptionRequest = LowLoadRequest | VariationRequest | OcclusionRequestInput;

export interface ProposedPrescription {
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly joints: readonly Joint[];
  readonly cautions: readonly Caution[];
  readonly working: readonly Line[];
  readonly notes: readonly Note[];
}

const notListed = (reason: string): readonly Refusal[] => [
  { field: 'input.exerciseId', code: 'not-listed', reason },
];

/** Refusals that stand in the way of this exercise by this method on this side, whatever the dose. */
export const eligibilityRefusals = (
  context: Pick<PrescribingContext, 'outcomes' | 'screening' | 'clearances' | 'today'>,
  wanted: Pick<Dose, 'exerciseId' | 'method'> & { readonly side: 'left' | 'right' | 'both' },
): readonly Refusal[] => {
  const exercise = exerciseById(wanted.exerciseId);
  if (!exercise) return notListed('Choose an exercise from the catalogue.');
  if (!exercise.methods.includes(wanted.method))
    return notListed(`“${exercise.title}” is not offered for this method.`);
  const { method, side } = wanted;
  const joints = jointsLoaded(wanted.exerciseId, side);
  const { eligibility, reasons } = exerciseEligibility({
    ...context,
    exercise: { method, limb: exercise.limb, side, joints },
  });
  if (eligibilities.indexOf(eligibility) < eligibilities.indexOf('closed-until-cleared')) return [];
  const closed = reasons.filter(
    (reason) => reason.eligibility === 'closed' || reason.eligibility === 'closed-until-cleared',
  );
  const texts = [...new Set(closed.map((reason) => reason.text))];
  return [
    {
      field: 'input.method',
      code: 'inconsistent',
      reason: `This method is not available here: ${texts.join(' ')}`,
    },
  ];
};

/** What stands in the way of this very dose: limits, consents, and for a cuff at home what is on record. */
export const careRefusals = (
  context: Pick<PrescribingContext, 'limits' | 'consents' | 'home' | 'today'>,
  dose: Dose,
): readonly Refusal[] => {
  const consents = missingConsents(context.consents, dose).map(
    ({ text }): Refusal => ({ field: 'input.supervised', code: 'missing', reason: text }),
  );
  const isAlone = dose.method === 'occlusion' && !dose.supervised;
  const home = isAlone
    ? unmetHomeConditions(homeConditionsOf(context.home, dose), dose.cuff.kind === 'elastic-wrap')
    : [];
  return [...limitRefusals(context.limits, dose, context.today), ...consents, ...home];
};

/** The cautions of a dose for this patient as things stand. */
export const cautionsOfDose = (
  context: Pick<PrescribingContext, 'screening' | 'measurements' | 'limits' | 'today' | 'settings'>,
  dose: Dose,
  joints: readonly Joint[],
): readonly Caution[] => {
  const own = exerciseById(dose.exerciseId)?.cautions ?? [];
  const general = cautionsFor({
    dose,
    screening: context.screening,
    measurements: context.measurements,
    joints: jointsToTell(dose.exerciseId, dose.side, joints),
    exerciseCautions: exerciseCautions.filter((caution) => own.includes(caution.id)),
    settings: context.settings,
  });
  return [
    ...general,
    ...limitCautions(context.limits, { ...dose, isUnweighted: isWithoutWeight(dose) }, context.today),
  ];
};

const dosed = (context: PrescribingContext, request: PrescriptionRequest): Outcome<Dosed<Dose>> => {
  switch (request.method) {
    case 'low-load':
      return dosedLowLoad(context, request);
    case 'variation':
      return dosedVariation(context, request);
    case 'occlusion':
      return dosedOcclusion(context, request);
  }
};

/** Where the cuff would sit: arms and legs only, one at a time, and on the limb that the exercise works. */
const siteRefusals = (request: PrescriptionRequest): readonly Refusal[] => {
  if (request.method !== 'occlusion') return [];
  const site = occlusionSite(request.limb, request.side);
  if (!site.ok) return site.refused;
  const exercise = exerciseById(request.exerciseId);
  if (!exercise || exercise.limb === request.limb) return [];
  return [
    {
      field: 'input.limb',
      code: 'inconsistent',
      reason: `“${exercise.title}” does not work the ${request.limb}.`,
    },
  ];
};

/** The dose itself, within everything that bounds it. */
export const boundedDose = (
  context: PrescribingContext,
  request: PrescriptionRequest,
): Outcome<Dosed<Dose>> => {
  const site = siteRefusals(request);
  const refused = site.length > 0 ? site : eligibilityRefusals(context, request);
  if (refused.length > 0) return { ok: false, refused };
  const outcome = dosed(context, request);
  if (!outcome.ok) return outcome;
  const bounded = careRefusals(context, outcome.result.dose);
  return bounded.length > 0 ? { ok: false, refused: bounded } : outcome;
};

export const proposePrescription = (
  context: PrescribingContext,
  request: PrescriptionRequest,
): Outcome<ProposedPrescription> => {
  const outcome = boundedDose(context, request);
  if (!outcome.ok) return outcome;
  const { dose, badDay, working, notes } = outcome.result;
  const joints = jointsLoaded(dose.exerciseId, dose.side);
  return answer(
    { dose, badDay, joints, cautions: cautionsOfDose(context, dose, joints), working, notes },
    notes,
  );
};
