/**
 * The acceptable pain limit proposed from usual pain, 0 to 10 points, for a clinician to set or lower. Common
 * practice, no source: a clinic's number of points over usual, within 5 to 7.
 */

export const acceptablePainLimits = { low: 5, high: 7 } as const;

/** `overUsual`: points over usual pain, the clinic's choice. */
export const painLimitOver = (usualPain: number, overUsual: number): number =>
  Math.min(acceptablePainLimits.high, Math.max(acceptablePainLimits.low, usualPain + overUsual));

/** null where usual pain is not known: nothing is proposed from an answer nobody gave. */
export const proposePainLimit = (usualPain: number | null, overUsual: number): number | null =>
  usualPain === null ? null : painLimitOver(usualPain, overUsual);
