/** What blood pressure and ankle-brachial index close. A reading that is missing or too old is not a normal reading. */

import type { Measurement } from '../assessment/measurements/measurement.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { type Day, daysBetween } from '../time/day.ts';
import { ankleBrachialBand } from './ankle-brachial-index.ts';
import { bloodPressureResult } from './blood-pressure-threshold.ts';
import { counts, type DatedReason, type Target } from './reasons-from-answers.ts';
import type { Screening } from './screening.ts';

type BloodPressure = Extract<Measurement, { kind: 'blood-pressure' }>;
type AnkleBrachial = Extract<Measurement, { kind: 'ankle-brachial-index' }>;

const readable = (pair: BloodPressure): boolean =>
  Number.isFinite(pair.systolicMmhg) &&
  Number.isFinite(pair.diastolicMmhg) &&
  pair.diastolicMmhg < pair.systolicMmhg;

const latestDay = <M extends Measurement>(readings: readonly M[]): readonly M[] => {
  const last = readings
    .map((reading) => reading.day)
    .toSorted()
    .at(-1);
  return readings.filter((reading) => reading.day === last);
};

/** Readings of the last day measured, not in the future and not older than the clinic allows. */
const currentBloodPressures = (
  measurements: readonly Measurement[],
  today: Day,
  validDays: number,
): readonly BloodPressure[] =>
  latestDay(
    measurements.filter(
      (reading): reading is BloodPressure =>
        reading.kind === 'blood-pressure' &&
        readable(reading) &&
        daysBetween(reading.day, today) >= 0 &&
        daysBetween(reading.day, today) <= validDays,
    ),
  );

const pressureMayBeHigh = (screening: Screening | null): boolean =>
  screening === null ||
  screening.answers.some((answer) => answer.item === 'high-blood-pressure' && counts(answer));

const notMeasured = (target: Target, screening: Screening | null, today: Day): DatedReason => {
  const contraindicates = target.method === 'occlusion' || pressureMayBeHigh(screening);
  return {
    code: 'blood-pressure-not-measured',
    from: 'blood-pressure',
    eligibility: contraindicates ? 'closed' : 'open-with-precautions',
    text: contraindicates
      ? 'No current resting blood pressure: measure it before using this method.'
      : 'No resting blood pressure on record is recent enough to count.',
    clearedBy: null,
    support: 'clinic',
    since: today,
  };
};

const bloodPressureReasons = (
  target: Target,
  measurements: readonly Measurement[],
  screening: Screening | null,
  today: Day,
  settings: SettingValues,
): readonly DatedReason[] => {
  const readings = currentBloodPressures(measurements, today, settings['blood-pressure-valid-days']!);
  const first = readings[0];
  if (!first) return [notMeasured(target, screening, today)];
  // Several readings of one day carry no order here, so the highest of each component decides.
  const systolic = Math.max(...readings.map((reading) => reading.systolicMmhg));
  const diastolic = Math.max(...readings.map((reading) => reading.diastolicMmhg));
  const result = bloodPressureResult(systolic, diastolic, settings);
  if (result === 'start') return [];
  const base = { from: 'blood-pressure', support: 'blood-pressure-exercise-2024', since: first.day };
  if (result === 'hold-all') {
    return [
      {
        ...base,
        code: 'blood-pressure-hold-all',
        eligibility: 'closed',
        text: `Resting blood pressure ${systolic}/${diastolic} mmHg on ${first.day}: all resistance work is held until it reads lower.`,
        clearedBy: null,
      },
    ];
  }
  const occlusion = target.method === 'occlusion';
  return [
    {
      ...base,
      code: 'blood-pressure-hold-occlusion',
      eligibility: occlusion ? 'closed' : 'closed-until-cleared',
      text: `Resting blood pressure ${systolic}/${diastolic} mmHg on ${first.day}: ${occlusion ? 'occlusion work is held until it reads lower' : 'other work only after a clinician has reviewed it'}.`,
      clearedBy: occlusion ? null : 'clinician',
    },
  ];
};

/** The last index of a leg stands until a newer one; it never ages into being normal. */
const ankleBrachialReasons = (
  target: Target,
  measurements: readonly Measurement[],
  today: Day,
): readonly DatedReason[] => {
  if (target.method !== 'occlusion' || target.limb !== 'leg') return [];
  const readings = latestDay(
    measurements.filter(
      (reading): reading is AnkleBrachial =>
        reading.kind === 'ankle-brachial-index' && reading.side === target.side && reading.day <= today,
    ),
  );
  return readings.flatMap((reading): readonly DatedReason[] => {
    const { band, index } = ankleBrachialBand(reading);
    if (band === 'normal') return [];
    const borderline = band === 'borderline';
    return [
      {
        code: `ankle-brachial-${band}`,
        from: 'ankle-brachial-index',
        eligibility: borderline ? 'closed-until-cleared' : 'closed',
        text: `Ankle-brachial index ${index.toFixed(2)} on ${reading.day} (${band}): ${borderline ? 'a clinician decides' : 'no occlusion on this leg; refer'}.`,
        clearedBy: borderline ? 'clinician' : null,
        support: 'ankle-brachial-bands',
        since: reading.day,
      },
    ];
  });
};

export const reasonsFromMeasurements = (
  target: Target,
  measurements: readonly Measurement[],
  screening: Screening | null,
  today: Day,
  settings: SettingValues,
): readonly DatedReason[] => [
  ...bloodPressureReasons(target, measurements, screening, today, settings),
  ...ankleBrachialReasons(target, measurements, today),
];
