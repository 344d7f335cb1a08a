/** Score interval of a share at 95 percent (Wilson 1927): it stays within 0 and 1 for few and for extreme counts. */
const z = 1.959963984540054;

export interface ShareInterval {
  readonly low: number;
  readonly high: number;
}

/** Null without anything counted. */
export const wilsonInterval = (count: number, of: number): ShareInterval | null => {
  if (of === 0) return null;
  const share = count / of;
  const weight = 1 + z ** 2 / of;
  const middle = (share + z ** 2 / (2 * of)) / weight;
  const half = (z * Math.sqrt((share * (1 - share)) / of + z ** 2 / (4 * of ** 2))) / weight;
  return { low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
};
