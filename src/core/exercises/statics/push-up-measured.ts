/**
 * Measured share of body mass on the hands in push-ups, peak vertical force.
 *
 * Fourteen men and nine women, young and trained; no difference by sex. Heights of hands or feet were
 * 30.48 and 60.96 cm. Between points the table is read on a straight line, which is our reading and
 * not the study's. It says nothing of older people or of hands above 60.96 cm.
 */
import type { Citation } from '#core/sources/citation.ts';
import { interpolate } from '../body/interpolate.ts';

export const pushUpMeasuredCitations: readonly Citation[] = [
  {
    source: 'ebben-2011',
    locator: 'six variants, peak vertical force as a share of body mass',
    mark: 'second-hand',
    remark: 'The design was read in the abstract, the values where two others restate them.',
  },
];

export const kneePushUpShare = 0.49;

const handHeightShares = [
  { heightM: 0, share: 0.64 },
  { heightM: 0.3048, share: 0.55 },
  { heightM: 0.6096, share: 0.41 },
] as const;

const footHeightShares = [
  { heightM: 0, share: 0.64 },
  { heightM: 0.3048, share: 0.7 },
  { heightM: 0.6096, share: 0.74 },
] as const;

/** Measured share, on a straight line between the measured heights; null where nothing was measured. */
export const pushUpMeasuredShare = (handHeightM: number, footHeightM: number): number | null => {
  if (handHeightM > 0 && footHeightM > 0) return null;
  const rows = footHeightM > 0 ? footHeightShares : handHeightShares;
  return interpolate(
    rows.map((row) => [row.heightM, row.share] as const),
    Math.max(handHeightM, footHeightM),
  );
};
