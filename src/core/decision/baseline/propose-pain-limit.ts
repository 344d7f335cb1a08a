/**
 * The acceptable pain limit proposed from usual pain, 0 to 10 points, for a clinician to set or lower. Common
 * practice, no source: a clinic's number of points over usual, within 5 to 7.
 */

export const acceptablePainLimits = { low: 5, high: 7 } as const;

/** null where usual pain is not known: nothing is proposed from an answer nobody gave. */
export const proposePainLimit = (
  usualPain: number | null,
  /** Points over usual pain: the clinic's choice. */
  overUsual: number,
): number | null =>
  usualPain === null
    ? null
    : Math.min(acceptablePainLimits.high, Math.max(acceptablePainLimits.low, usualPain + overUsual));
