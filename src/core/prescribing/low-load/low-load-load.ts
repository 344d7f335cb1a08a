/**
 * The load of a low-load dose: the percentage of the maximum, bounded by the clinic's floor and top
 * and by a clinician's ceiling, rounded to what is owned. Without a maximum it is the tested load
 * and never a heavier guess.
 */

import { isOverCeiling, loadsWithin } from '#core/decision/dose/limits.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { shown, type WorkingLine } from '../working-line.ts';
import { roundLoad } from './load-rounding.ts';
import { nextOwnedLoad } from './load-step.ts';
import type { Estimate } from './low-load-estimate.ts';
import type { LowLoadInput } from './low-load-input.ts';
import { isInBand } from './percent-band.ts';
import { type Target, typedTarget, type WithTypedLoad } from './typed-load.ts';

export interface ChosenLoad {
  readonly loadKg: number;
  readonly targetKg: number;
  /** Percentage of the maximum after rounding; null without one. */
  readonly truePercent: number | null;
  /** The same against the highest and lowest estimate; null without a spread. */
  readonly truePercentRange: { readonly low: number; readonly high: number } | null;
  readonly nextLoad: ReturnType<typeof nextOwnedLoad>;
  readonly working: readonly WorkingLine[];
}

/** Percent chosen, inside the clinic's bounds; the tested load where there is no maximum; or the load typed. */
const targetOf = (input: WithTypedLoad, estimate: Estimate, settings: SettingValues): Outcome<Target> => {
  if (input.typed) return typedTarget(input, input.typed, estimate, settings);
  if (estimate.oneRepMaxKg === null) {
    const targetKg = input.test?.loadKg ?? Number.NaN;
    const how = 'The tested load, since no maximum is known.';
    return answer({
      targetKg,
      line: { label: 'Target', how, value: targetKg, unit: 'kg', source: 'clinician' },
    });
  }
  const percent = input.percent ?? settings['low-load-percent'] ?? Number.NaN;
  const floor = settings['low-load-percent-floor'] ?? Number.NaN;
  const top = settings['low-load-percent-top'] ?? Number.NaN;
  if (percent < floor) {
    const reason = `Low-load work is proposed from ${floor} % of the maximum here. Lighter work belongs to occlusion.`;
    return refuse('percent', 'too-low', reason);
  }
  if (percent > top) {
    return refuse('percent', 'too-high', `Low-load work ends at ${top} % of the maximum here.`);
  }
  const targetKg = (estimate.oneRepMaxKg * percent) / 100;
  const how = `${shown(percent)} % of ${shown(estimate.oneRepMaxKg)} kg.`;
  return answer({
    targetKg,
    line: {
      label: 'Target',
      how,
      value: targetKg,
      unit: 'kg',
      source: input.percent === undefined ? 'clinic-choice' : 'clinician',
    },
  });
};

const noUsableLoad = (input: LowLoadInput): Outcome<never> =>
  input.loadCeilingKg === undefined
    ? refuse('availableKg', 'missing', 'List at least one load the patient owns.')
    : refuse(
        'availableKg',
        'inconsistent',
        `Nothing available is at or under the ceiling of ${shown(input.loadCeilingKg)} kg. Find a lighter load.`,
      );

/** Whether a higher percentage would help depends on what the lightest load comes to. */
const remedy = (lightestKg: number, oneRepMaxKg: number | null, top: number): string => {
  if (oneRepMaxKg === null) return 'Find a lighter one.';
  const percent = (lightestKg / oneRepMaxKg) * 100;
  const share = `It would be ${shown(percent)} % of the maximum`;
  return percent > top
    ? `${share}, over the top of ${top} %. Find a lighter one, or choose another method.`
    : `${share}. Find a lighter one, or choose that percentage knowingly.`;
};

const allTooHeavy = (
  usableKg: readonly number[],
  targetKg: number,
  oneRepMaxKg: number | null,
  settings: SettingValues,
): Outcome<never> => {
  const lightest = Math.min(...usableKg);
  const advice = remedy(lightest, oneRepMaxKg, settings['low-load-percent-top'] ?? Number.NaN);
  const reason = `The lightest load available is ${shown(lightest)} kg, above the target of ${shown(targetKg)} kg. ${advice}`;
  return refuse('availableKg', 'inconsistent', reason);
};

/**
 * How a target becomes a load: as the input says, never above it where it says nothing; or the owned load
 * nearest to it among those inside the band of the evidence, where one is.
 */
export type Rounding = 'as-asked' | 'nearest-in-band';

const rounded = (
  input: WithTypedLoad,
  { oneRepMaxKg }: Estimate,
  on: { readonly targetKg: number; readonly usableKg: readonly number[] },
  settings: SettingValues,
  rounding: Rounding,
) => {
  const { targetKg, usableKg } = on;
  // A load typed is owned, or was refused.
  if (input.typed) return roundLoad({ targetKg, availableKg: usableKg });
  const inBand =
    rounding === 'nearest-in-band' && input.neverAbove === undefined && oneRepMaxKg !== null
      ? usableKg.filter((kg) => isInBand((kg / oneRepMaxKg) * 100, settings))
      : [];
  return inBand.length > 0
    ? roundLoad({ targetKg, availableKg: inBand })
    : roundLoad({ targetKg, availableKg: usableKg, neverAbove: input.neverAbove ?? true });
};

export const chooseLoad = (
  input: WithTypedLoad,
  estimate: Estimate,
  settings: SettingValues,
  rounding: Rounding = 'as-asked',
): Outcome<ChosenLoad> => {
  const target = targetOf(input, estimate, settings);
  if (!target.ok) return target;
  const { targetKg, line } = target.result;
  const ceiling = input.loadCeilingKg ?? Number.POSITIVE_INFINITY;
  const usableKg = loadsWithin(input.availableKg, ceiling).filter((owned) => owned > 0);
  if (usableKg.length === 0) return noUsableLoad(input);
  const load = rounded(input, estimate, { targetKg, usableKg }, settings, rounding);
  if (!load.ok) return allTooHeavy(usableKg, targetKg, estimate.oneRepMaxKg, settings);
  const { loadKg, offPercent } = load.result;
  const { oneRepMaxKg, spread } = estimate;
  const truePercent = oneRepMaxKg === null ? null : (loadKg / oneRepMaxKg) * 100;
  const how =
    truePercent === null
      ? `${shown(offPercent)} % from the tested load.`
      : `${shown(offPercent)} % from the target; truly ${shown(truePercent)} % of the maximum.`;
  const notes: Note[] = [];
  if (isOverCeiling(targetKg, ceiling)) {
    notes.push({ code: 'ceiling-applied', text: `Held to the ceiling of ${shown(ceiling)} kg set for it.` });
  }
  return answer(
    {
      loadKg,
      targetKg,
      truePercent,
      truePercentRange: spread && {
        low: (loadKg / spread.highKg) * 100,
        high: (loadKg / spread.lowKg) * 100,
      },
      nextLoad: nextOwnedLoad(loadKg, usableKg),
      working: [line, { label: 'Load, rounded', how, value: loadKg, unit: 'kg', source: 'arithmetic' }],
    },
    notes,
  );
};
