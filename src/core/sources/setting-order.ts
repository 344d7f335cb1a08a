/** Settings that are two ends of one band, or one threshold inside another: the first is never over the second. */
import type { Refusal } from '../outcome.ts';
import type { SettingValues } from './clinic-setting.ts';

export const settingOrders: readonly (readonly [lower: string, upper: string])[] = [
  ['low-load-repetitions-low', 'low-load-repetitions-high'],
  ['low-load-percent-floor', 'low-load-percent'],
  ['low-load-percent', 'low-load-percent-top'],
  ['variation-repetitions-low', 'variation-repetitions-high'],
  ['lean-mass-bmi-min', 'lean-mass-bmi-max'],
  ['lean-protein-low', 'lean-protein-high'],
  ['energy-surplus-low', 'energy-surplus-high'],
  ['hold-occlusion-systolic', 'hold-all-systolic'],
  ['hold-occlusion-diastolic', 'hold-all-diastolic'],
  ['same-day-contact-hours', 'routine-contact-hours'],
];

/**
 * What was changed and now stands on the wrong side of its other end, with that end's value.
 * @param changed ids that somebody is about to save; an order nobody touched is not spoken of
 */
export const orderRefusals = (
  values: SettingValues,
  changed: readonly string[],
  titleOf: (id: string) => string,
): readonly Refusal[] =>
  settingOrders.flatMap(([lower, upper]): readonly Refusal[] => {
    const [low, high] = [values[lower], values[upper]];
    if (low === undefined || high === undefined || low <= high) return [];
    if (changed.includes(lower))
      return [
        {
          field: `choices.${lower}`,
          code: 'inconsistent',
          reason: `“${titleOf(lower)}” is at most ${high}: that is “${titleOf(upper)}”. Change that one first, or give less here.`,
        },
      ];
    if (changed.includes(upper))
      return [
        {
          field: `choices.${upper}`,
          code: 'inconsistent',
          reason: `“${titleOf(upper)}” is at least ${low}: that is “${titleOf(lower)}”. Change that one first, or give more here.`,
        },
      ];
    return [];
  });
