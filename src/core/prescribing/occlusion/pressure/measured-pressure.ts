/**
 * The measured limb occlusion pressure that may be used for one limb, side, cuff width and position.
 *
 * A pressure belongs to all four: standing it lay 1.29 times as high as lying down in 50 legs, and a
 * 5 cm cuff needed 1.6 times the pressure of a 13.5 cm one. The lower of two readings is used (a
 * choice of this project: it gives the lower dose). An estimate never stands in for a measurement.
 */

import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { Limb, Side } from '#core/exercises/joints.ts';
import { answer, type Note, type Outcome, type RefusalCode } from '#core/outcome.ts';
import type { Position } from '#core/prescribing/dose.ts';
import type { Citation } from '#core/sources/citation.ts';
import { defaultsOf, type SettingValues } from '#core/sources/clinic-setting.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import { occlusionSettings } from '../settings.ts';

/** What a pressure belongs to, and who says so. */
const belongsTo = {
  fields: ['limb', 'side', 'cuffWidthCm', 'position'],
  citations: [
    {
      source: 'occlusion-position-2018',
      locator: 'abstract: 187, 204 and 241.5 mmHg lying, sitting, standing',
      mark: 'seen',
    },
    { source: 'cuff-width-2012', locator: 'abstract: 235 against 144 mmHg', mark: 'seen' },
    { source: 'cuff-width-2025', locator: 'abstract: 11, 13 and 18 cm', mark: 'seen' },
  ],
} as const satisfies { fields: readonly (keyof CuffPlan)[]; citations: readonly Citation[] };

const oximeterOnLeg = {
  note: {
    code: 'validity-disputed',
    text: 'Oximeter readings on the leg are disputed: one study found them not valid, another valid but about 6 mmHg high.',
  },
  citations: [
    { source: 'oximeter-leg-2020', locator: 'table: +6.3 and +5.4 mmHg, called valid', mark: 'seen' },
    { source: 'oximeter-leg-2019', locator: 'abstract: arm agrees, leg not valid', mark: 'seen' },
  ],
} as const satisfies { note: Note; citations: readonly Citation[] };

export type OcclusionPressureMeasurement = Extract<Measurement, { kind: 'limb-occlusion-pressure' }>;

export interface CuffPlan {
  readonly limb: Limb;
  readonly side: Side;
  readonly cuffWidthCm: number;
  readonly position: Position;
}

export interface MeasuredPressure {
  readonly pressureMmhg: number;
  readonly measurement: OcclusionPressureMeasurement;
}

const field = 'input.measurements';

const refuseWith = (code: RefusalCode, reason: string): Outcome<never> => ({
  ok: false,
  refused: [{ field, code, reason }],
});

const newestFirst = (a: OcclusionPressureMeasurement, b: OcclusionPressureMeasurement): number =>
  b.day.localeCompare(a.day) || lower(a) - lower(b);

const lower = (reading: OcclusionPressureMeasurement): number =>
  Math.min(reading.firstMmhg, reading.secondMmhg);

/** Why the readings of this limb do not fit the plan, in the order in which they would be put right. */
const mismatch = (stored: readonly OcclusionPressureMeasurement[], plan: CuffPlan): Outcome<never> => {
  const onLimb = stored.filter((reading) => reading.limb === plan.limb);
  if (onLimb.length === 0) {
    return refuseWith(
      'missing',
      `No limb occlusion pressure was measured on an ${plan.limb}; measure it there.`,
    );
  }
  const onSide = onLimb.filter((reading) => reading.side === plan.side);
  if (onSide.length === 0) {
    return refuseWith(
      'inconsistent',
      `Measured on the other ${plan.limb} only; measure the ${plan.side} one.`,
    );
  }
  const sameWidth = onSide.filter((reading) => reading.cuffWidthCm === plan.cuffWidthCm);
  if (sameWidth.length === 0) {
    const widths = [...new Set(onSide.map((reading) => `${reading.cuffWidthCm} cm`))].join(', ');
    return refuseWith(
      'inconsistent',
      `Measured with ${widths}, planned with ${plan.cuffWidthCm} cm; measure with the planned cuff.`,
    );
  }
  const seen = [...new Set(sameWidth.map((reading) => reading.position))].join(', ');
  return refuseWith(
    'inconsistent',
    `Measured ${seen}, planned ${plan.position}; measure in the planned position.`,
  );
};

const fits = (reading: OcclusionPressureMeasurement, plan: CuffPlan): boolean =>
  belongsTo.fields.every((field) => reading[field] === plan[field]);

const usable = (pressureMmhg: number): boolean => Number.isFinite(pressureMmhg) && pressureMmhg > 0;

const notesOn = (reading: OcclusionPressureMeasurement): readonly Note[] =>
  reading.method === 'pulse-oximeter' && reading.limb === 'leg' ? [oximeterOnLeg.note] : [];

/** Circumference or resting systolic pressure that has moved since the measurement asks for a new one. */
const bodyChanged = (
  reading: OcclusionPressureMeasurement,
  measurements: readonly Measurement[],
  today: Day,
  settings: SettingValues,
): readonly string[] => {
  const spread = (kind: 'blood-pressure' | 'limb-circumference', pick: (m: Measurement) => number | null) => {
    const dated = measurements
      .filter((m) => m.kind === kind && m.day <= today)
      .map((m) => ({ day: m.day, value: pick(m) }))
      .filter((m): m is { day: Day; value: number } => m.value !== null)
      .toSorted((a, b) => a.day.localeCompare(b.day));
    const then = dated.filter((m) => m.day <= reading.day).at(-1);
    const now = dated.filter((m) => m.day > reading.day).at(-1);
    // Thousandths, so that 57.1 − 55.1 counts as the 2 cm it is.
    return then && now ? Math.round(1000 * Math.abs(now.value - then.value)) / 1000 : 0;
  };
  const systolic = spread('blood-pressure', (m) => (m.kind === 'blood-pressure' ? m.systolicMmhg : null));
  const circumference = spread('limb-circumference', (m) =>
    m.kind === 'limb-circumference' && m.limb === reading.limb && m.side === reading.side
      ? m.circumferenceCm
      : null,
  );
  return [
    ...(systolic >= settings['occlusion-systolic-change-mmhg']!
      ? [`resting systolic pressure has moved by ${systolic} mmHg`]
      : []),
    ...(circumference >= settings['occlusion-circumference-change-cm']!
      ? [`the limb's circumference has changed by ${circumference} cm`]
      : []),
  ];
};

export const measuredPressureFor = (
  measurements: readonly Measurement[],
  plan: CuffPlan,
  today: Day,
  settingValues: SettingValues,
): Outcome<MeasuredPressure> => {
  const settings = { ...defaultsOf(occlusionSettings), ...settingValues };
  const stored = measurements.filter(
    (m): m is OcclusionPressureMeasurement => m.kind === 'limb-occlusion-pressure' && m.day <= today,
  );
  const reading = stored.filter((m) => fits(m, plan)).toSorted(newestFirst)[0];
  if (!reading) return mismatch(stored, plan);
  if (!usable(reading.firstMmhg) || !usable(reading.secondMmhg)) {
    return refuseWith('missing', 'Two readings are needed, at least one minute apart.');
  }
  const age = daysBetween(reading.day, today);
  const validDays = settings['occlusion-pressure-valid-days']!;
  if (age > validDays) {
    return refuseWith(
      'outside-validity',
      `Measured ${age} days ago; it may be used for ${validDays}. Measure again.`,
    );
  }
  const apart = Math.abs(reading.firstMmhg - reading.secondMmhg);
  if (apart > settings['occlusion-readings-differ-mmhg']!) {
    return refuseWith('inconsistent', `The two readings lie ${apart} mmHg apart; take them again.`);
  }
  const changed = bodyChanged(reading, measurements, today, settings);
  if (changed.length > 0) {
    return refuseWith('outside-validity', `Measure again: since then ${changed.join(' and ')}.`);
  }
  return answer({ pressureMmhg: lower(reading), measurement: reading }, notesOn(reading));
};
