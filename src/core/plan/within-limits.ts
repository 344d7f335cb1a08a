/**
 * A signed dose under the limits of the day. A limit binds at once, whoever entered it and whatever was
 * signed before: what is over it falls to the signed easier session, with its load lowered to one of
 * the place where needed, or stops. Nothing is ever raised to a limit.
 */
import { withinLoadLimit } from '../decision/dose/limits.ts';
import { type LimitsFor, limitsFor } from '../episode/limit-bounds.ts';
import type { Dose } from '../prescribing/dose.ts';
import { type LoadsByPlace, loadsFor } from '../prescribing/loads-at-place.ts';
import type { Limit } from '../record/limit.ts';
import type { PrescriptionVersion } from '../record/record.ts';
import type { Day } from '../time/day.ts';
import type { PlanItem, PlanReason, StoppedByLimit } from './plan.ts';

export interface WithinLimits {
  readonly dose: Dose | null;
  readonly easierSession: Dose | null;
  readonly reasons: readonly LimitReason[];
}

type LimitReason = Extract<PlanReason, { readonly code: 'limit-closes' | 'limit-load' }>;

const closing = (
  { limits, contraindicationOf }: LimitsFor,
  today: LimitReason['today'],
): readonly LimitReason[] =>
  limits.flatMap((limit, place): LimitReason[] => {
    const text = contraindicationOf[place];
    return text ? [{ code: 'limit-closes', today, joint: limit.joint, foundOn: limit.from, text }] : [];
  });

/** Each limit on load that is exceeded, the strictest or not: every one of them is reported. */
const overLoad = (
  { limits }: LimitsFor,
  today: LimitReason['today'],
  isExceeded: (limitKg: number) => boolean,
): readonly LimitReason[] =>
  limits.flatMap(({ kind, joint, from: foundOn, limitKg, author }): LimitReason[] =>
    kind === 'load-limit' && limitKg !== null && isExceeded(limitKg)
      ? [{ code: 'limit-load', today, joint, foundOn, limitKg, author }]
      : [],
  );

/** One limit may close the dose and its easier session alike: it is said once. */
const once = (reasons: readonly LimitReason[]): readonly LimitReason[] => [
  ...new Map(reasons.map((reason) => [JSON.stringify(reason), reason])).values(),
];

/** The limit itself, whatever it leaves of the exercise. */
const keyOf = ({ today: _left, ...limit }: PlanReason): string => JSON.stringify(limit);

export const withinLimits = (
  { dose, badDay }: Pick<PrescriptionVersion, 'dose' | 'badDay'>,
  limits: readonly Limit[],
  loads: LoadsByPlace,
  day: Day,
): WithinLimits => {
  const found = limitsFor(limits, dose.exerciseId, dose.side, day, dose.method);
  const ofEasier = limitsFor(limits, badDay.exerciseId, badDay.side, day, badDay.method);
  const isEasierOpen = ofEasier.contraindications.length === 0;
  const easierSession = isEasierOpen
    ? withinLoadLimit(badDay, ofEasier.limitKg, loadsFor(loads, badDay))
    : null;
  const today = easierSession ? 'bad-day' : 'rest-this-joint';
  const isOver = (limitKg: number) => withinLoadLimit(dose, limitKg, loadsFor(loads, dose)) !== dose;
  const leavesNothing = (limitKg: number) =>
    withinLoadLimit(badDay, limitKg, loadsFor(loads, badDay)) === null;
  const reasons = [
    ...closing(found, today),
    ...overLoad(found, today, isOver),
    // Without an easier session an exercise is not done: an answer about pain must always have one to fall to.
    ...(easierSession
      ? []
      : [...closing(ofEasier, today), ...(isEasierOpen ? overLoad(ofEasier, today, leavesNothing) : [])]),
  ];
  return { dose: reasons.length > 0 ? null : dose, easierSession, reasons: once(reasons) };
};

interface Limited extends LoadsByPlace {
  readonly versions: readonly PrescriptionVersion[];
  readonly limits: readonly Limit[];
  readonly at: { readonly day: Day };
}

/** What each limit that begins later will stop. */
export const comingStops = ({ versions, limits, at, ...loads }: Limited): readonly StoppedByLimit[] =>
  [...new Set(limits.map(({ from }) => from))]
    .filter((from) => from > at.day)
    .sort()
    .flatMap((from) =>
      versions.flatMap((version) => {
        const { reasons } = withinLimits(version, limits, loads, from);
        const fresh = reasons.filter(({ foundOn }) => foundOn === from);
        const { itemId, dose } = version;
        return fresh.length > 0 ? [{ itemId, exerciseId: dose.exerciseId, reasons: fresh }] : [];
      }),
    );

/** Exercises signed above a limit and eased back since: each is listed until a clinician has written it anew. */
export const loweredByLimits = (
  items: readonly PlanItem[],
  {
    written,
    limits,
    at,
    ...loads
  }: Omit<Limited, 'versions'> & {
    /** What was last signed of each exercise whose dose was eased back by itself since. */
    readonly written: readonly PrescriptionVersion[];
  },
): readonly StoppedByLimit[] =>
  items.flatMap(({ itemId, exerciseId, reasons: standing }) => {
    const version = written.find((one) => one.itemId === itemId);
    if (!version) return [];
    const still = new Set(standing.map(keyOf));
    const reasons = withinLimits(version, limits, loads, at.day).reasons.filter(
      (reason) => !still.has(keyOf(reason)),
    );
    return reasons.length > 0 ? [{ itemId, exerciseId, reasons }] : [];
  });
