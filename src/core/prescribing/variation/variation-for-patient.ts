/** A variation for this patient, placed on its ladder by their own body. */
import type { Anthropometry } from '#core/exercises/exercise.ts';
import { answer, refuse } from '#core/outcome.ts';
import type { VariationDose } from '../dose.ts';
import type { VariationRequest } from '../dose-request.ts';
import { type DosedOutcome, newestTest, type PrescribingContext } from '../prescribing-context.ts';
import { addedLoadRefusals } from './added-load.ts';
import { isHeld } from './held.ts';
import { proposeVariationDose } from './variation-dose.ts';

/** Body mass, stature and coefficients as last recorded; null while one of them is missing. */
export const anthropometryOf = (
  context: Pick<PrescribingContext, 'measurements' | 'formulaSex'>,
): Anthropometry | null => {
  const mass = context.measurements.filter((row) => row.kind === 'body-mass').at(-1);
  const stature = context.measurements.filter((row) => row.kind === 'stature').at(-1);
  if (!mass || !stature || !context.formulaSex) return null;
  return { sex: context.formulaSex, massKg: mass.massKg, statureCm: stature.statureCm };
};

export const dosedVariation = (
  context: PrescribingContext,
  request: VariationRequest,
): DosedOutcome<VariationDose> => {
  const { method: _method, ...rest } = request;
  const person = anthropometryOf(context);
  if (!person) {
    return refuse(
      'exerciseId',
      'missing',
      'Record body mass, stature and which coefficients to use first; the variation is ordered by them.',
    );
  }
  const refused = addedLoadRefusals(request, context.ownedLoadsKg);
  if (refused.length > 0) return { ok: false, refused };
  // Repetitions to failure say nothing of a hold.
  const test = isHeld(request.exerciseId) ? undefined : newestTest(context, request);
  const tested = test && { repetitions: test.repetitions, reserve: 0 };
  const outcome = proposeVariationDose({ ...rest, person, tested }, context.settings);
  if (!outcome.ok) return outcome;
  const { dose, badDay, working } = outcome.result;
  return answer({ dose, badDay, working, notes: outcome.notes }, outcome.notes);
};
