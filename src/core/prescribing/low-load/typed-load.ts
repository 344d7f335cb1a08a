/**
 * A load a clinician typed instead of a share of the maximum. It is taken as it stands or refused with what to
 * type instead, and never rounded: what is signed is what was typed.
 */
import { loadsWithin } from '#core/decision/dose/limits.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { milligrams } from '#core/units/units.ts';
import { shown, type WorkingLine } from '../working-line.ts';
import type { Estimate } from './low-load-estimate.ts';
import type { LowLoadInput } from './low-load-input.ts';
import { isUnder } from './percent-band.ts';

export interface TypedLoad {
  readonly loadKg: number;
  /** Signed and in force for the same exercise and side; null = nothing. */
  readonly inForceKg: number | null;
}

export type WithTypedLoad = LowLoadInput & { readonly typed?: TypedLoad };

export interface Target {
  readonly targetKg: number;
  readonly line: WorkingLine;
}

const tooHeavy = (over: string, within: readonly number[]): Outcome<never> => {
  const heaviest =
    within.length > 0
      ? `The heaviest available within it: ${Math.max(...within)} kg.`
      : 'No load available is within it.';
  return refuse('loadKg', 'too-high', `${over} ${heaviest} Or test repetitions to failure again first.`);
};

/**
 * A lighter load than the band is said and not refused. A heavier one is refused, unless it is no heavier than
 * what is signed and in force: that was raised step by step since the test, and is said.
 */
export const typedTarget = (
  input: LowLoadInput,
  { loadKg, inForceKg }: TypedLoad,
  { oneRepMaxKg }: Estimate,
  settings: SettingValues,
): Outcome<Target> => {
  if (input.percent !== undefined)
    return refuse('loadKg', 'inconsistent', 'Type the load or the share of the maximum, not both.');
  const allowedKg = loadsWithin(input.availableKg, input.loadCeilingKg ?? Number.POSITIVE_INFINITY);
  if (!allowedKg.some((kg) => milligrams(kg) === milligrams(loadKg)))
    return refuse(
      'loadKg',
      'too-high',
      `${loadKg} kg is over a limit that stands for a joint; of what is available, up to ${Math.max(...allowedKg)} kg is within it.`,
    );
  const isInForce = inForceKg !== null && milligrams(loadKg) <= milligrams(inForceKg);
  const top = settings['low-load-percent-top'] ?? Number.NaN;
  if (oneRepMaxKg === null) {
    const testedKg = input.test?.loadKg ?? Number.NaN;
    if (!isInForce && !(milligrams(loadKg) <= milligrams(testedKg)))
      return tooHeavy(
        `No maximum is known, so no load over the ${shown(testedKg)} kg tested is proposed.`,
        loadsWithin(allowedKg, testedKg),
      );
  } else {
    const percent = (loadKg / oneRepMaxKg) * 100;
    if (!isInForce && isUnder(top, percent))
      return tooHeavy(
        `${loadKg} kg is ${shown(percent)} % of the maximum; low-load work ends at ${top} % here.`,
        allowedKg.filter((kg) => !isUnder(top, (kg / oneRepMaxKg) * 100)),
      );
  }
  return answer({
    targetKg: loadKg,
    line: {
      label: 'Target',
      how: 'Load typed for this patient.',
      value: loadKg,
      unit: 'kg',
      source: 'clinician',
    },
  });
};
