/** The percentages of the maximum between which low-load work is proposed. */
import type { SettingValues } from '#core/sources/clinic-setting.ts';

/** Percentages are compared to a millionth, so that 30 % of the maximum is not under 30 %. */
export const isUnder = (percent: number, bound: number): boolean => Math.round((percent - bound) * 1e6) < 0;

export const isInBand = (percent: number, settings: SettingValues): boolean =>
  !isUnder(percent, settings['low-load-percent-floor'] ?? Number.NaN) &&
  !isUnder(settings['low-load-percent-top'] ?? Number.NaN, percent);
