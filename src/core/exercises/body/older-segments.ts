/**
 * Segment masses of people of about seventy, as shares of body mass: less thigh and more trunk than
 * in young adults. Used as the sensitivity set for older patients; centres and lengths stay those of
 * the young sample, which is an assumption.
 */
import type { Citation } from '#core/sources/citation.ts';
import type { Sex } from './segments.ts';

export const olderSegmentCitations: readonly Citation[] = [
  {
    source: 'pavol-2002',
    locator: 'scaled segment masses by sex',
    mark: 'seen',
    remark: 'Read in a stored data file of the masses, not in the paper.',
  },
];

export const olderMassShares = {
  male: { upperArm: 0.0299, forearm: 0.0175, hand: 0.0065, thigh: 0.1127, shank: 0.0441, foot: 0.0127 },
  female: { upperArm: 0.0301, forearm: 0.0141, hand: 0.0054, thigh: 0.1162, shank: 0.0456, foot: 0.0123 },
} as const satisfies Record<Sex, Record<string, number>>;
