/** A proposal at the border: the request is checked against its descriptor, refusals go back to the form. */

import { unlikelyRequest } from '#core/assessment/measurements/likely-load.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import {
  lowLoadRequestFields,
  occlusionRequestFields,
  variationRequestFields,
} from '#core/prescribing/dose-request.ts';
import {
  careRefusals,
  eligibilityRefusals,
  type PrescriptionRequest,
  type ProposedPrescription,
  proposePrescription,
} from '#core/prescribing/propose.ts';
import type { Access } from '#data/access.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import type { Patient } from '#data/patients/people.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { Problem, refusedWith } from '../errors.ts';
import { checked } from '../inputs/checked.ts';

const requestFields = {
  'low-load': lowLoadRequestFields,
  variation: variationRequestFields,
  occlusion: occlusionRequestFields,
} as const;

const checkedRequest = (value: unknown): PrescriptionRequest => {
  const method = typeof value === 'object' && value !== null && 'method' in value ? String(value.method) : '';
  if (!Object.hasOwn(requestFields, method))
    throw new Problem('refused', 'Choose a method: variation, low load or occlusion.');
  return checked(requestFields[method as keyof typeof requestFields], value) as PrescriptionRequest;
};

export const propose = async (
  access: Access,
  patient: Patient,
  request: unknown,
): Promise<ProposedPrescription> => {
  const outcome = proposePrescription(await prescribingContextFor(access, patient), checkedRequest(request));
  if (!outcome.ok) throw refusedWith(outcome.refused);
  return outcome.result;
};

/** Asks about a load that is far from the person's own, unless it was confirmed. */
export const requireLikely = async (
  access: Access,
  patient: Patient,
  request: unknown,
  isConfirmed: boolean,
): Promise<void> => {
  const questions = unlikelyRequest(checkedRequest(request), await measurementsOf(access, patient.id));
  if (questions.length > 0 && !isConfirmed)
    throw new Problem('not-confirmed', questions.join(' '), { questions });
};

/** Throws refusals when the method is closed for this exercise now, or a limit or agreement stands in the way of the dose. */
export const requireOpen = async (access: Access, patient: Patient, dose: Dose): Promise<void> => {
  const context = await prescribingContextFor(access, patient);
  const refused = [...eligibilityRefusals(context, dose), ...careRefusals(context, dose)];
  if (refused.length > 0) throw refusedWith(refused);
};
