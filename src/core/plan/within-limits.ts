/**
 * A signed dose under the limits of the day. A limit binds at once, whoever entered it and whatever was
 * signed before: what is over it falls to the signed easier session, with its load lowered to one the
 * patient owns where needed, or stops. Nothing is ever raised to a limit.
 */
import { withinLoadLimit } from '../decision/dose/limits.ts';
import { type LimitsFor, limitsFor } from '../episode/limit-bounds.ts';
import type { Dose } from '../prescribing/dose.ts';
import type { Limit } from '../record/limit.ts';
import type { PrescriptionVersion } from '../record/record.ts';
import type { Day } from '../time/day.ts';
import type { PlanReason } from './plan.ts';

export interface WithinLimits {
  readonly dose: Dose | null;
  readonly easierSession: Dose | null;
  readonly reasons: readonly PlanReason[];
}

type LoadReason = Extract<PlanReason, { readonly code: 'limit-load' }>;

const closing = (
  { limits, contraindicationOf }: LimitsFor,
  today: LoadReason['today'],
): readonly PlanReason[] =>
  limits.flatMap((limit, place): PlanReason[] => {
    const text = contraindicationOf[place];
    return text ? [{ code: 'limit-closes', today, joint: limit.joint, foundOn: limit.from, text }] : [];
  });

const overLoad = ({ limits, limitKg }: LimitsFor, today: LoadReason['today']): readonly LoadReason[] =>
  limits.flatMap((limit): LoadReason[] =>
    limit.kind === 'load-limit' && limit.limitKg === limitKg
      ? [
          {
            code: 'limit-load',
            today,
            joint: limit.joint,
            foundOn: limit.from,
            limitKg,
            author: limit.author,
          },
        ]
      : [],
  );

/** One limit may close the dose and its easier session alike: it is said once. */
const once = (reasons: readonly PlanReason[]): readonly PlanReason[] => [
  ...new Map(reasons.map((reason) => [JSON.stringify(reason), reason])).values(),
];

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
  const isOver = withinLoadLimit(dose, found.limitKg, ownedLoadsKg) !== dose;
  const reasons = [
    ...closing(found, today),
    ...(isOver ? overLoad(found, today) : []),
    // Without an easier session an exercise is not done: an answer about pain must always have one to fall to.
    ...(easierSession
      ? []
      : [...closing(ofEasier, today), ...(isEasierOpen ? overLoad(ofEasier, today) : [])]),
  ];
  return { dose: reasons.length > 0 ? null : dose, easierSession, reasons: once(reasons) };
};
