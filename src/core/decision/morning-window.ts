/** Whether an answer of the day speaks of its morning: the one reading of the two clinic settings. */
export type MorningState = 'early' | 'open' | 'over';

/** `localMinute` after midnight where the person is; the hours are the clinic's `morning-from-hour` and `morning-to-hour`. */
export const morningStateAt = (localMinute: number, fromHour: number, toHour: number): MorningState =>
  localMinute < fromHour * 60 ? 'early' : localMinute < toHour * 60 ? 'open' : 'over';
