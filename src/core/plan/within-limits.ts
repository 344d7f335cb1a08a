/**
 * A signed dose under the limits of the day. A limit binds at once, whoever entered it and whatever was
 * signed before: what is over it falls to the signed easier session, with its load lowered to one the
 * patient owns where needed, or stops. Nothing is ever raised to a limit.
 */
import { withinLoadLimit } from '../decision/dose/limits.ts';
import { limitsFor } from '../episode/limit-bounds.ts';
import type { Dose } from '../prescribing/dose.ts';
import type { Limit, PrescriptionVersion } from '../record/record.ts';
import type { Day } from '../time/day.ts';
import type { PlanReason } from './plan.ts';

export interface WithinLimits {
  readonly dose: Dose | null;
  readonly easierSession: Dose | null;
  readonly reasons: readonly PlanReason[];
}

type LoadReason = Extract<PlanReason, { readonly code: 'limit-load' }>;

export const withinLimits = (
  { dose, badDay }: Pick<PrescriptionVersion, 'dose' | 'badDay'>,
  limits: readonly Limit[],
  ownedLoadsKg: readonly number[],
  day: Day,
): WithinLimits => {
  const found = limitsFor(limits, dose.exerciseId, dose.side, day);
  const ofEasier = limitsFor(limits, badDay.exerciseId, badDay.side, day);
  const isEasierOpen = ofEasier.contraindications.length === 0;
  const easierSession = isEasierOpen ? withinLoadLimit(badDay, ofEasier.limitKg, ownedLoadsKg) : null;
  const today = easierSession ? 'bad-day' : 'rest-this-joint';
  const closing = found.limits.flatMap((limit, place): PlanReason[] => {
    const text = found.contraindicationOf[place];
    return text ? [{ code: 'limit-closes', today, joint: limit.joint, foundOn: limit.from, text }] : [];
  });
  const isOver = withinLoadLimit(dose, found.limitKg, ownedLoadsKg) !== dose;
  const over = isOver
    ? found.limits.flatMap((limit): LoadReason[] =>
        limit.kind === 'load-limit' && limit.limitKg === found.limitKg
          ? [
              {
                code: 'limit-load',
                today,
                joint: limit.joint,
                foundOn: limit.from,
                limitKg: limit.limitKg,
                author: limit.author,
              },
            ]
          : [],
      )
    : [];
  return {
    dose: closing.length > 0 || isOver ? null : dose,
    easierSession,
    reasons: [...closing, ...over],
  };
};
