/** Whether a method is open for the limb an exercise works, from the screening outcomes. */
import type { Exercise, WorkedSide } from '../catalogue/exercise.ts';
import { type Method, openings } from '../methods.ts';
import type { MethodOutcome } from '../model/screening.ts';
import type { Refusal } from '../outcome.ts';

/** The outcomes that speak of an exercise: its limb and side, or every limb for work of the trunk. */
export const outcomesOf = (
  outcomes: readonly MethodOutcome[],
  method: Method,
  exercise: Pick<Exercise, 'limb'>,
  side: WorkedSide,
): readonly MethodOutcome[] =>
  outcomes.filter(
    (outcome) =>
      outcome.method === method &&
      (exercise.limb === 'trunk' || outcome.limb === exercise.limb) &&
      (side === 'both' || outcome.side === side),
  );

/** Refusals when the method is closed there; empty when open, with precautions or without. */
export const closedRefusals = (outcomes: readonly MethodOutcome[]): readonly Refusal[] => {
  const closed = outcomes.filter(
    (outcome) => openings.indexOf(outcome.opening) >= openings.indexOf('closed-until-cleared'),
  );
  if (outcomes.length > 0 && closed.length === 0) return [];
  const reasons = closed
    .flatMap((outcome) => outcome.reasons)
    .filter((reason) => reason.opening.startsWith('closed'));
  const texts = [...new Set(reasons.map((reason) => reason.text))];
  return [
    {
      field: 'input.method',
      code: 'inconsistent',
      reason:
        texts.length > 0
          ? `This method is closed: ${texts.join(' ')}`
          : 'Screen the patient before this method is dosed.',
    },
  ];
};
