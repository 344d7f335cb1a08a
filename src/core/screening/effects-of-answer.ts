/** Which effects of an item an answer brings, by the details it names. What was not said is said to be so. */
import { eligibilities } from '../prescribing/methods.ts';
import { type Day, daysBetween } from '../time/day.ts';
import type { ScreeningEffect, ScreeningItem } from './item.ts';
import type { ScreeningItemAnswer } from './screening.ts';

/**
 * What was named of an item's details; null where the item asks for them and nothing was said. A day
 * close enough counts as the detail it stands for, beside what was ticked.
 */
export const detailsNamed = (
  answer: ScreeningItemAnswer,
  { asks }: Pick<ScreeningItem, 'asks'>,
  screenedOn: Day,
): readonly string[] | null => {
  if (!asks.details) return [];
  if (answer.answer === 'not-known') return null;
  const { lastDay } = asks;
  const isRecent =
    lastDay && answer.day !== undefined && daysBetween(answer.day, screenedOn) <= lastDay.withinDays;
  const named = asks.details.filter(
    (detail) => answer.details?.includes(detail) || (isRecent && detail === lastDay.detail),
  );
  return named.length > 0 ? named : null;
};

const caution = (effect: ScreeningEffect): number => eligibilities.indexOf(effect.eligibility);

/** The most cautious of the effects that could be meant; one that a physician clears comes first among equals. */
const mostCautious = (unsaid: readonly ScreeningEffect[]): ScreeningEffect | null => {
  const most = Math.max(...unsaid.map(caution));
  const worst = unsaid.filter((effect) => caution(effect) === most);
  return worst.find(({ clearedBy }) => clearedBy === 'physician') ?? worst[0] ?? null;
};

/** What counts while nobody has said which of the details it is; null where that changes nothing. */
export const ifWhichNotSaid = (item: ScreeningItem): string | null =>
  mostCautious(item.effects.filter(({ detail }) => detail !== undefined))?.text ?? null;

/** Effects that what was said brings, and one for what was left unsaid. */
export const effectsOf = (
  item: ScreeningItem,
  named: readonly string[] | null,
  reached: readonly ScreeningEffect[],
): readonly ScreeningEffect[] => {
  const always = reached.filter(
    ({ detail, unlessDetail }) =>
      detail === undefined && (unlessDetail === undefined || !named?.includes(unlessDetail)),
  );
  const byDetail = reached.filter(({ detail }) => detail !== undefined);
  if (named) return [...always, ...byDetail.filter(({ detail }) => named.includes(detail!))];
  const worst = mostCautious(byDetail);
  if (!worst) return always;
  const text = `${item.clinicianLabel}: which of these was not said, so the most cautious counts: ${worst.text}`;
  return [...always, { ...worst, code: `${item.id}-which-not-said`, text }];
};
