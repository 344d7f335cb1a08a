/**
 * Of two entries that both count while a correction waits, what is left: the stricter of both. Where
 * one reading has no entry at all, nothing is known, and unknown is the strictest.
 */

import { setByClinicianOn } from '../record/baseline-age.ts';
import { type Baseline, type EffusionRecord, effusions } from '../record/record.ts';
import { screeningItem } from '../screening/items.ts';
import { mostCautious } from '../screening/outcomes.ts';
import { counts } from '../screening/reasons-from-answers.ts';
import type { MethodOutcome, Screening, ScreeningItemAnswer } from '../screening/screening.ts';
import { type Day, earlierDay } from '../time/day.ts';

const lower = (one: number | null, other: number | null): number | null =>
  one === null || other === null ? null : Math.min(one, other);

const earlierOf = <W extends string>(order: readonly W[], one: W, other: W): W =>
  order.indexOf(one) <= order.indexOf(other) ? one : other;

/** Lower usual values make the same score a larger rise. */
export const stricterBaseline = (
  { riseAcknowledged, tightenedFrom, ...one }: Baseline,
  other: Baseline,
): Baseline => ({
  ...one,
  ...(riseAcknowledged && other.riseAcknowledged ? { riseAcknowledged } : {}),
  usualPain: lower(one.usualPain, other.usualPain),
  usualPainTop: lower(one.usualPainTop ?? one.usualPain, other.usualPainTop ?? other.usualPain),
  acceptablePainLimit: Math.min(one.acceptablePainLimit, other.acceptablePainLimit),
  usualStiffnessMinutes: Math.min(one.usualStiffnessMinutes, other.usualStiffnessMinutes),
  usualSwelling: earlierOf(['none', 'slight'], one.usualSwelling, other.usualSwelling),
  usualEffusion: earlierOf(['zero', 'trace', '1+'], one.usualEffusion, other.usualEffusion),
  usualFatigue: lower(one.usualFatigue, other.usualFatigue),
  setOn: earlierDay(one.setOn, other.setOn),
  ...(tightenedFrom || other.tightenedFrom
    ? { tightenedFrom: earlierDay(tightenedFrom ?? one.setOn, setByClinicianOn(other)) }
    : {}),
  dueForReview: one.dueForReview || other.dueForReview,
  ...(one.provisional || other.provisional ? { provisional: true } : {}),
  correctedPending: true,
});

/** Of tests of one joint and day that correct each other, the one with more fluid. */
export const worseEffusion = <E extends EffusionRecord>(one: E, other: E): E =>
  effusions.indexOf(one.grade) >= effusions.indexOf(other.grade) ? one : other;

/** All that either names; nothing where one names nothing, for that speaks of everything. */
const together = <T>(one: readonly T[] | undefined, other: readonly T[] | undefined): readonly T[] | null =>
  one === undefined || other === undefined ? null : [...one, ...other];

/** What was not named may be any of it, so an empty list is as good as none. */
const named = <T>(list: readonly T[] | undefined): readonly T[] | undefined =>
  list && list.length > 0 ? list : undefined;

const firstOf = (one: Day | undefined, other: Day | undefined): Day | undefined =>
  one && other ? earlierDay(one, other) : (one ?? other);

/** A later day is the more recent one, which closes for longer. */
const lastOf = (one: Day | undefined, other: Day | undefined): Day | undefined =>
  one && other && other < one ? one : (other ?? one);

/**
 * Everything that either names, but what takes an effect away only where both name it. Where one named
 * nothing, it is not known which of them it is, beside those that were named.
 */
const bothDetails = (one: ScreeningItemAnswer, other: ScreeningItemAnswer) => {
  const [first, second] = [one.details ?? [], other.details ?? []];
  const loosening = screeningItem(one.item)?.effects.flatMap(({ unlessDetail }) => unlessDetail ?? []) ?? [];
  return {
    details: [...new Set([...first, ...second])].filter(
      (detail) => !loosening.includes(detail) || (first.includes(detail) && second.includes(detail)),
    ),
    isUnsaid: (first.length === 0) !== (second.length === 0),
  };
};

const bothAnswers = (one: ScreeningItemAnswer, other: ScreeningItemAnswer): ScreeningItemAnswer => {
  // A plain no still asks what hangs on the question, "not applicable" does not.
  const [more, less] = counts(one) || other.answer === 'not-applicable' ? [one, other] : [other, one];
  if (!counts(less)) return more;
  const limbs = together(named(one.limbs), named(other.limbs));
  const joints = together(named(one.joints), named(other.joints));
  const { details, isUnsaid } = bothDetails(one, other);
  const note = other.note ?? one.note;
  const day = lastOf(one.day, other.day);
  const askedOn = firstOf(one.askedOn, other.askedOn);
  return {
    item: one.item,
    answer: one.answer === 'not-known' || isUnsaid ? 'not-known' : other.answer,
    ...(limbs ? { limbs } : {}),
    ...(joints ? { joints } : {}),
    ...(details.length > 0 ? { details } : {}),
    ...(note === undefined ? {} : { note }),
    ...(day === undefined ? {} : { day }),
    ...(askedOn === undefined ? {} : { askedOn }),
  };
};

/** What counts of both: each yes and each "not known"; a no only where both were asked. */
const answersOfBoth = (one: Screening, other: Screening): readonly ScreeningItemAnswer[] => {
  const second = new Map(other.answers.map((answer) => [answer.item, answer]));
  const first = new Set(one.answers.map((answer) => answer.item));
  const both = one.answers.flatMap((answer) => {
    const beside = second.get(answer.item);
    if (beside) return [bothAnswers(answer, beside)];
    return counts(answer) ? [answer] : [];
  });
  return [...both, ...other.answers.filter((answer) => !first.has(answer.item) && counts(answer))];
};

/** The sheet that joints, cautions and days are read from while a correction waits. */
export const stricterScreening = <S extends Screening & { readonly recordedAt: number }>(
  one: S,
  other: S,
): S => ({
  ...other,
  day: earlierDay(one.day, other.day),
  recordedAt: Math.min(one.recordedAt, other.recordedAt),
  answers: answersOfBoth(one, other),
});

/** Of outcomes worked out for several readings, each method and limb with every reason of all of them. */
export const strictestOutcomes = (all: readonly (readonly MethodOutcome[])[]): readonly MethodOutcome[] => {
  const [first = [], ...others] = all;
  if (others.length === 0) return first;
  return first.map((outcome, place) => {
    const found = all.flatMap((outcomes) => outcomes[place]?.reasons ?? []);
    const reasons = [
      ...new Map(
        found.map((reason) => [`${reason.code} ${reason.eligibility} ${reason.text}`, reason]),
      ).values(),
    ];
    return { ...outcome, eligibility: mostCautious(reasons.map(({ eligibility }) => eligibility)), reasons };
  });
};
