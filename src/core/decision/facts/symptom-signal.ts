/**
 * One-sided sum chart of morning pain over the usual pain of the baseline, allowance half a standard deviation.
 * Once it signalled it stays until a clinician sets a new baseline; since version 2 it also goes out, and the
 * sum falls to 0, whenever enough answered mornings in a row lay within the usual band, signalled or not: only
 * so can a worse morning never put it out. The scatter is set
 * with them; read again from later mornings, a worsening would widen it and silence the chart.
 */
import type { Baseline } from '#core/record/record.ts';
import { type EngineSettingValues, engineVersionOf } from '../settings.ts';
import type { JointMorning } from './indexed-record.ts';
import { topOver } from './joint-facts.ts';
import { isMorningScore, morningsUpTo } from './judged-session.ts';

/** Allowance in standard deviations: aims at a shift of one. */
const allowance = 0.5;
/** Whole-number diaries of a quiet joint have almost no scatter; one point is the scale's own grain. */
const leastDeviation = 1;

export const symptomSignal = (
  list: readonly JointMorning[],
  baseline: Baseline & { readonly setDay: number },
  day: number,
  instant: number,
  settings: EngineSettingValues,
): boolean => {
  const spread = baseline.morningSpread;
  if (!spread || baseline.usualPain === null || spread.values < settings['signal-least-values']) return false;
  const sigma = Math.max(leastDeviation, spread.standardDeviation) * settings['signal-inflation'];
  const height = settings['signal-interval'] * sigma;
  const target = baseline.usualPain + allowance * sigma;
  const calmMornings =
    engineVersionOf(settings) >= 2 ? settings['signal-calm-mornings'] : Number.POSITIVE_INFINITY;
  const top = topOver(baseline.usualPain, baseline);
  let sum = 0;
  let calm = 0;
  let hasSignalled = false;
  let counted = Number.NaN;
  for (
    let place = morningsUpTo(list, baseline.setDay);
    place < list.length && list[place]!.day <= day;
    place++
  ) {
    const one = list[place]!;
    if (one.day === counted || one.answers.pain === null) continue;
    if (one.morning.recordedAt > instant || !isMorningScore(one, settings)) continue;
    counted = one.day;
    calm = one.answers.pain <= top ? calm + 1 : 0;
    const isCalm = calm >= calmMornings;
    sum = isCalm ? 0 : Math.max(0, sum + one.answers.pain - target);
    hasSignalled = !isCalm && (hasSignalled || sum > height);
  }
  return hasSignalled;
};
