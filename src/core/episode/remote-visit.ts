/**
 * An appointment at a distance. What needs hands on the person, or eyes on a limb at once, is locked.
 * Which tests those are is a choice of this project; a blood pressure the patient reads out is not one,
 * and is kept with how it was taken.
 */
import { type DistanceWay, distanceWays } from '../assessment/measurements/at-distance.ts';
import type { Measurement } from '../assessment/measurements/measurement.ts';
import type { Refusal } from '../outcome.ts';

export const visitPlaces = ['clinic', 'home-visit', ...distanceWays] as const;
export type VisitPlace = (typeof visitPlaces)[number];

export const isRemote = (place: VisitPlace): place is DistanceWay =>
  distanceWays.some((way) => way === place);

export type HandsOnTest = Measurement['kind'] | 'effusion-test' | 'home-check';

export const needsHandsOnTest: readonly HandsOnTest[] = [
  'limb-occlusion-pressure',
  'ankle-brachial-index',
  'limb-circumference',
  'isometric-force',
  'range-of-movement',
  'effusion-test',
  'home-check',
];

export interface RemoteVisit {
  readonly place: VisitPlace;
  readonly callBackPhone: string | null;
}

/** Refusals of a test during a visit; none without a visit or when it is not remote. */
export const lockedTest = (visit: RemoteVisit | null, test: HandsOnTest): readonly Refusal[] =>
  visit && isRemote(visit.place) && needsHandsOnTest.includes(test)
    ? [
        {
          field: 'input.kind',
          code: 'inconsistent',
          reason: `This appointment is by ${visit.place}; this is a hands-on test. Do it when you meet in person.`,
        },
      ]
    : [];

/** A remote appointment names where the person is and a number to ring when the line breaks. */
export const visitRefusals = (visit: {
  readonly place: VisitPlace;
  readonly whereabouts: string | null;
  readonly callBackPhone: string | null;
}): readonly Refusal[] => {
  if (!isRemote(visit.place)) return [];
  const refusals: Refusal[] = [];
  if (!visit.whereabouts) {
    refusals.push({
      field: 'input.whereabouts',
      code: 'missing',
      reason: 'Ask where the patient is now, so that help can be sent there.',
    });
  }
  if (!visit.callBackPhone) {
    refusals.push({
      field: 'input.callBackPhone',
      code: 'missing',
      reason: 'Ask for a number to ring if the call drops.',
    });
  }
  return refusals;
};

/** The first session with a cuff is not at a distance, unless a clinician says why. */
export const firstOcclusionRemote = (
  visit: RemoteVisit | null,
  supervisedBefore: number,
  reason: string | null,
): readonly Refusal[] =>
  visit && isRemote(visit.place) && supervisedBefore === 0 && !reason?.trim()
    ? [
        {
          field: 'input.remoteReason',
          code: 'missing',
          reason: 'Do not do a first session with a cuff remotely. If it must be, enter the reason.',
        },
      ]
    : [];
