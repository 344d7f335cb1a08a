/**
 * Force of an elastic band from its own two-point calibration.
 *
 * Two weights are hung on the band and its lengths read; the force runs on a straight line over the
 * elongation between those two points. Bench tests found the line between 25 and 250 % elongation.
 * Nothing is returned outside the two points or outside that range, and nothing is taken from a
 * maker's list or a colour: measured bands differ from both. Rubber tires, so calibrate again.
 */
import { calculation } from '#core/calculations/calculation.ts';
import type { NumberField } from '#core/calculations/describe.ts';
import { answer, type Refusal, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { gravity } from '../body/gravity.ts';

export const bandCitations: readonly Citation[] = [
  {
    source: 'uchida-2016',
    locator: 'abstract: bench test from 25 to 250 % in steps of 25 %, straight-line slopes',
    mark: 'seen',
    remark: 'Measured forces were below the maker’s list for five of eight levels.',
  },
  {
    source: 'simoneau-2001',
    locator: 'abstract: stress, strain and fatigue of the material',
    mark: 'seen',
    remark: 'Read in a copy of the abstract; the authors’ names are from memory.',
  },
];

const lowestElongationPercent = 25;
const highestElongationPercent = 250;
/** Closer points than this make the slope a guess: a choice of this project. */
const leastDistanceOfPointsPercent = 25;

export const elongationPercent = (restLengthM: number, lengthM: number): number =>
  (lengthM / restLengthM - 1) * 100;

export interface BandCalibration {
  readonly firstElongationPercent: number;
  readonly firstForceN: number;
  readonly secondElongationPercent: number;
  readonly secondForceN: number;
}

const slopePerPercent = (band: BandCalibration): number =>
  (band.secondForceN - band.firstForceN) / (band.secondElongationPercent - band.firstElongationPercent);

/** null outside the two calibrated points. */
export const bandForce = (band: BandCalibration, elongation: number): number | null =>
  elongation < band.firstElongationPercent || elongation > band.secondElongationPercent
    ? null
    : band.firstForceN + slopePerPercent(band) * (elongation - band.firstElongationPercent);

const elongationField = <const N extends string>(name: N) =>
  ({
    name,
    kind: 'number',
    unit: '%',
    min: lowestElongationPercent,
    max: highestElongationPercent,
    about: 'Stretch over rest length.',
  }) as const satisfies NumberField;

const forceField = <const N extends string>(name: N) =>
  ({ name, kind: 'number', unit: 'N', min: 0, max: 600, exclusiveMin: true }) as const satisfies NumberField;

export const restLengthField = {
  name: 'restLengthM',
  kind: 'number',
  unit: 'm',
  min: 0.05,
  max: 5,
  about: 'Length without load.',
} as const satisfies NumberField;

export const calibrationFields = [
  elongationField('firstElongationPercent'),
  forceField('firstForceN'),
  elongationField('secondElongationPercent'),
  forceField('secondForceN'),
] as const;

/** The second point must lie farther and pull harder. */
export const checkCalibration = (band: BandCalibration): readonly Refusal[] => {
  const refusals: Refusal[] = [];
  if (band.secondElongationPercent - band.firstElongationPercent < leastDistanceOfPointsPercent) {
    refusals.push({
      field: 'input.secondElongationPercent',
      code: 'inconsistent',
      reason: `Choose two points at least ${leastDistanceOfPointsPercent} % of elongation apart, the shorter first.`,
    });
  }
  if (band.secondForceN <= band.firstForceN) {
    refusals.push({
      field: 'input.secondForceN',
      code: 'inconsistent',
      reason: 'The longer stretch must pull harder; read both points again.',
    });
  }
  return refusals;
};

export const bandPointRow = calculation({
  id: 'band-point',
  title: 'One calibration point of a band, from a hung weight',
  area: 'variation',
  input: [
    restLengthField,
    { name: 'stretchedLengthM', kind: 'number', unit: 'm', min: 0.05, max: 20 },
    { name: 'hungKg', kind: 'number', unit: 'kg', min: 0, max: 60, exclusiveMin: true },
  ],
  result: [
    { name: 'elongationPercent', unit: '%' },
    { name: 'forceN', unit: 'N' },
    { name: 'usable', unit: '', about: 'Whether the point lies between 25 and 250 %.' },
  ],
  citations: bandCitations,
  consistent: ({ restLengthM, stretchedLengthM }) =>
    stretchedLengthM > restLengthM
      ? []
      : [
          {
            field: 'input.stretchedLengthM',
            code: 'inconsistent',
            reason: 'The stretched length is longer than the rest length.',
          },
        ],
  calculate: ({ restLengthM, stretchedLengthM, hungKg }) => {
    const elongation = elongationPercent(restLengthM, stretchedLengthM);
    return answer({
      elongationPercent: elongation,
      forceN: hungKg * gravity,
      usable: elongation >= lowestElongationPercent && elongation <= highestElongationPercent,
    });
  },
  example: { restLengthM: 0.6, stretchedLengthM: 1.2, hungKg: 1.5 },
});

export const bandCalibrationRow = calculation({
  id: 'band-calibration',
  title: 'Band line from two calibration points',
  area: 'variation',
  input: [...calibrationFields, restLengthField],
  result: [
    { name: 'slopeNPerPercent', unit: 'N/%' },
    { name: 'stiffnessNPerM', unit: 'N/m' },
    { name: 'lengthErrorN', unit: 'N', about: 'Force error for one centimetre of length error.' },
  ],
  citations: bandCitations,
  consistent: checkCalibration,
  calculate: ({ restLengthM, ...band }) => {
    const slope = slopePerPercent(band);
    const stiffness = (100 * slope) / restLengthM;
    return answer({ slopeNPerPercent: slope, stiffnessNPerM: stiffness, lengthErrorN: stiffness * 0.01 });
  },
  example: {
    firstElongationPercent: 100,
    firstForceN: 20.46,
    secondElongationPercent: 200,
    secondForceN: 29.8,
    restLengthM: 0.6,
  },
});

export const bandForceRow = calculation({
  id: 'band-force',
  title: 'Force of a calibrated band',
  area: 'variation',
  input: [...calibrationFields, elongationField('elongationPercent')],
  result: [{ name: 'forceN', unit: 'N' }],
  citations: bandCitations,
  consistent: checkCalibration,
  calculate: ({ elongationPercent: elongation, ...band }) => {
    const forceN = bandForce(band, elongation);
    return forceN === null
      ? refuse(
          'elongationPercent',
          'outside-validity',
          'Outside the two calibrated points; hang a weight that stretches the band this far.',
        )
      : answer({ forceN });
  },
  example: {
    firstElongationPercent: 100,
    firstForceN: 20.46,
    secondElongationPercent: 200,
    secondForceN: 29.8,
    elongationPercent: 150,
  },
});
