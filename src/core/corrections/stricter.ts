/**
 * Of two entries that both count while a correction waits, what is left: the stricter of both. Where
 * one reading has no entry at all, nothing is known, and unknown is the strictest.
 */

import { type Baseline, type EffusionRecord, effusions } from '../record/record.ts';
import { mostCautious } from '../screening/outcomes.ts';
import type { MethodOutcome, Screening, ScreeningItemAnswer } from '../screening/screening.ts';
import { earlierDay } from '../time/day.ts';

const lower = (one: number | null, other: number | null): number | null =>
  one === null || other === null ? null : Math.min(one, other);

const earlierOf = <W extends string>(order: readonly W[], one: W, other: W): W =>
  order.indexOf(one) <= order.indexOf(other) ? one : other;

/** Lower usual values make the same score a larger rise. */
export const stricterBaseline = (one: Baseline, other: Baseline): Baseline => ({
  ...one,
  usualPain: lower(one.usualPain, other.usualPain),
  usualPainTop: lower(one.usualPainTop ?? one.usualPain, other.usualPainTop ?? other.usualPain),
  acceptablePainLimit: Math.min(one.acceptablePainLimit, other.acceptablePainLimit),
  usualStiffnessMinutes: Math.min(one.usualStiffnessMinutes, other.usualStiffnessMinutes),
  usualSwelling: earlierOf(['none', 'slight'], one.usualSwelling, other.usualSwelling),
  usualEffusion: earlierOf(['zero', 'trace', '1+'], one.usualEffusion, other.usualEffusion),
  usualFatigue: lower(one.usualFatigue, other.usualFatigue),
  setOn: earlierDay(one.setOn, other.setOn),
  dueForReview: one.dueForReview || other.dueForReview,
  correctedPending: true,
});

/** Of tests of one joint and day that correct each other, the one with more fluid. */
export const worseEffusion = <E extends EffusionRecord>(one: E, other: E): E =>
  effusions.indexOf(one.grade) >= effusions.indexOf(other.grade) ? one : other;

const isCounting = (answer: ScreeningItemAnswer): boolean => answer.answer !== 'no';

/** All that either names; nothing where one names nothing, for that speaks of everything. */
const together = <T>(one: readonly T[] | undefined, other: readonly T[] | undefined): readonly T[] | null =>
  one === undefined || other === undefined ? null : [...one, ...other];

/** A place not named is every place, so an empty list is as good as none. */
const namedPlaces = <T>(list: readonly T[] | undefined): readonly T[] | undefined =>
  list && list.length > 0 ? list : undefined;

const bothAnswers = (one: ScreeningItemAnswer, other: ScreeningItemAnswer): ScreeningItemAnswer => {
  if (!isCounting(one) || !isCounting(other)) return isCounting(one) ? one : other;
  const limbs = together(namedPlaces(one.limbs), namedPlaces(other.limbs));
  const joints = together(namedPlaces(one.joints), namedPlaces(other.joints));
  const details = together(one.details, other.details);
  return {
    item: one.item,
    answer: one.answer === 'not-known' ? 'not-known' : other.answer,
    ...(limbs ? { limbs } : {}),
    ...(joints ? { joints } : {}),
    ...(details ? { details } : {}),
  };
};

/** What counts of both: each yes and each "not known"; a no only where both were asked. */
const answersOfBoth = (one: Screening, other: Screening): readonly ScreeningItemAnswer[] => {
  const second = new Map(other.answers.map((answer) => [answer.item, answer]));
  const first = new Set(one.answers.map((answer) => answer.item));
  const both = one.answers.flatMap((answer) => {
    const beside = second.get(answer.item);
    if (beside) return [bothAnswers(answer, beside)];
    return isCounting(answer) ? [answer] : [];
  });
  return [...both, ...other.answers.filter((answer) => !first.has(answer.item) && isCounting(answer))];
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
