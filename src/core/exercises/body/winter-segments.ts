/**
 * Leg segments after Dempster as printed by Winter, one set for both sexes, with the lengths of
 * Drillis and Contini. Used only to show how far a moment depends on the segment table chosen.
 */
import type { Citation } from '#core/sources/citation.ts';

export const winterCitations: readonly Citation[] = [
  { source: 'winter-2009', locator: 'anthropometric table: thigh, shank, foot', mark: 'seen' },
  {
    source: 'drillis-contini-1966',
    locator: 'Winter 2009, figure 4.1: hip 0.530, knee 0.285, ankle 0.039, foot 0.152 of stature',
    mark: 'seen',
    remark: 'Read where a public program repeats the figure.',
  },
];

export const winterLegSegments = {
  thigh: { massShare: 0.1, centreShare: 0.433, lengthShare: 0.245 },
  shank: { massShare: 0.0465, centreShare: 0.433, lengthShare: 0.246 },
  foot: { massShare: 0.0145 },
} as const;
