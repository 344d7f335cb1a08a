/**
 * A clock for lengths of time: the one on the wall, which goes on while the phone sleeps, but never set
 * back. What a setting back takes away is put in again from the browser's own count, so that a cuff is
 * not left on longer because somebody, or the network, set the clock.
 */
export interface Steady {
  /** The last instant this clock showed. */
  readonly last: number;
  /** What has been put in again since the session began, ms. */
  readonly shift: number;
}

export const steadyClock = (
  wall: () => number,
  count: () => number,
  before: Steady | null = null,
  keep: (shown: Steady) => void = () => undefined,
): (() => number) => {
  let { last, shift } = before ?? { last: wall(), shift: 0 };
  let counted = count();
  return () => {
    const at = count();
    const least = last + (at - counted);
    counted = at;
    const now = wall() + shift;
    if (now < least) shift += least - now;
    last = Math.max(now, least);
    keep({ last, shift });
    // Instants go into the record as whole milliseconds; the browser counts in parts of one.
    return Math.round(last);
  };
};
