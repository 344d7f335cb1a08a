/** What no source fixes in the review. Nothing here is read by the engine. */
import { type ClinicSetting, defaultsOf, type SettingValues } from '../sources/clinic-setting.ts';

export const reviewSettings = [
  {
    id: 'review-gap-days',
    title: 'Days between two sessions from which the load line is broken',
    unit: 'd',
    min: 4,
    max: 28,
    whole: true,
    default: 8,
    why: 'A week without a session is a gap a reader must see; a shorter limit breaks the line at every rest.',
  },
  {
    id: 'review-trend-mornings',
    title: 'Fewest mornings for a trend in the review',
    unit: '{value}',
    min: 10,
    max: 60,
    whole: true,
    default: 14,
    why: 'Over less than two weeks a slope follows two or three days and says little.',
  },
  {
    id: 'review-phase-mornings',
    title: 'Fewest mornings on each side of a new dose for their overlap',
    unit: '{value}',
    min: 3,
    max: 28,
    whole: true,
    default: 5,
    why: 'With fewer, one bad morning moves the share by a fifth or more.',
  },
  {
    id: 'review-few-pairs',
    title: 'Pairs under which an association is said to rest on few',
    unit: '{pair}',
    min: 28,
    max: 365,
    whole: true,
    default: 60,
    why: 'Around two months of days; below it a handful of days moves the figure visibly.',
  },
] as const satisfies readonly ClinicSetting[];

export type ReviewSettingId = (typeof reviewSettings)[number]['id'];

const defaults: SettingValues = defaultsOf(reviewSettings);

/** A number of the review as the clinic has it. */
export const reviewSettingOf = (values: SettingValues | undefined, id: ReviewSettingId): number =>
  values?.[id] ?? defaults[id]!;

/** Lengths of time offered for the picture, from two weeks to three years. */
export const reviewWindows = [
  { days: 14, title: '2 weeks' },
  { days: 28, title: '4 weeks' },
  { days: 84, title: '12 weeks' },
  { days: 182, title: '6 months' },
  { days: 365, title: '1 year' },
  { days: 1095, title: '3 years' },
] as const;
