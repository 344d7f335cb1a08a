/** Doses worked out while a measurement stood that has been corrected since. They stay as signed, and say so. */
import type { Measurement } from '../assessment/measurements/measurement.ts';
import type { Dose } from '../prescribing/dose.ts';

/** Whether a dose of this kind is worked out from such a measurement. */
const isWorkedOutFrom = (dose: Dose, row: Measurement): boolean => {
  switch (row.kind) {
    case 'repetitions-to-failure':
      return dose.method !== 'variation' && dose.exerciseId === row.exerciseId && dose.side === row.side;
    case 'limb-occlusion-pressure':
      return dose.method === 'occlusion' && dose.limb === row.limb && dose.side === row.side;
    case 'body-mass':
    case 'stature':
      return dose.method === 'variation';
    default:
      return false;
  }
};

interface Version {
  readonly id: string;
  readonly itemId: string;
  readonly version: number;
  readonly dose: Dose;
  readonly origin: 'clinician' | 'progress' | 'ease-back' | 'return';
  readonly recordedAt: number;
}

export interface CorrectedMeasurement {
  readonly measurement: Measurement;
  readonly enteredAt: number;
  readonly correctedAt: number;
}

/**
 * Ids of the versions a clinician worked out in that time, and of those that went on from them by a step or
 * an easing back; a clinician's next version begins afresh.
 */
export const dosesBeforeCorrection = (
  versions: readonly Version[],
  corrected: readonly CorrectedMeasurement[],
): ReadonlySet<string> => {
  const workedOut = (of: Version): Version | undefined =>
    versions
      .filter(
        ({ itemId, origin, version }) =>
          itemId === of.itemId && origin === 'clinician' && version <= of.version,
      )
      .toSorted((a, b) => a.version - b.version)
      .at(-1);
  const isBefore = (first: Version): boolean =>
    corrected.some(
      ({ measurement, enteredAt, correctedAt }) =>
        isWorkedOutFrom(first.dose, measurement) &&
        enteredAt <= first.recordedAt &&
        first.recordedAt < correctedAt,
    );
  return new Set(
    versions.flatMap((version) => {
      const first = workedOut(version);
      return first && isBefore(first) ? [version.id] : [];
    }),
  );
};
