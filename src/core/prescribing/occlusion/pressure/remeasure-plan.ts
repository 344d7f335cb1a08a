/** When each measured cuff pressure is to be measured again: by its age, or now, because the body has changed since. */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { defaultsOf, type SettingValues } from '#core/sources/clinic-setting.ts';
import { addDays, type Day } from '#core/time/day.ts';
import { occlusionSettings } from '../settings.ts';
import {
  type CuffPlan,
  measuredPressureFor,
  type OcclusionPressureMeasurement,
} from './measured-pressure.ts';

export interface CuffDue extends CuffPlan {
  readonly lastOn: Day;
  /** Last day on which it may be used, as long as nothing of the body changes. */
  readonly usableTo: Day;
  /** Why it is not used today; null = it may be. */
  readonly why: string | null;
}

const keyOf = ({ limb, side, cuffWidthCm, position }: CuffPlan): string =>
  [limb, side, cuffWidthCm, position].join(' ');

/** The same answer as a dose would get today; soonest first. */
export const remeasurePlan = (
  measurements: readonly Measurement[],
  today: Day,
  settings: SettingValues,
): readonly CuffDue[] => {
  const validDays = { ...defaultsOf(occlusionSettings), ...settings }['occlusion-pressure-valid-days']!;
  const newest = new Map<string, OcclusionPressureMeasurement>();
  for (const row of measurements) {
    if (row.kind !== 'limb-occlusion-pressure' || row.day > today) continue;
    const known = newest.get(keyOf(row));
    if (!known || known.day <= row.day) newest.set(keyOf(row), row);
  }
  return [...newest.values()]
    .map(({ limb, side, cuffWidthCm, position, day }) => {
      const found = measuredPressureFor(measurements, { limb, side, cuffWidthCm, position }, today, settings);
      return {
        limb,
        side,
        cuffWidthCm,
        position,
        lastOn: day,
        usableTo: addDays(day, validDays),
        why: found.ok ? null : found.refused.map(({ reason }) => reason).join(' '),
      };
    })
    .toSorted((a, b) => a.usableTo.localeCompare(b.usableTo) || keyOf(a).localeCompare(keyOf(b)));
};
