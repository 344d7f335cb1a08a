/**
 * The acceptable pain limit proposed from the usual pain told at a first visit, 0 to 10 points, for a
 * clinician to set. Common practice, no source: two points over usual, within 5 to 7.
 */
const overUsual = 2;
export const acceptablePainLimits = { low: 5, high: 7 } as const;

/** null where usual pain is not known: nothing is proposed from an answer nobody gave. */
export const proposePainLimit = (usualPain: number | null): number | null =>
  usualPain === null
    ? null
    : Math.min(acceptablePainLimits.high, Math.max(acceptablePainLimits.low, usualPain + overUsual));
