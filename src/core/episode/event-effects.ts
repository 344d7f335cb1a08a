/**
 * What follows from something that happened. A choice of this project: the screening sheet's own rule
 * is that the whole list is asked again after any event, and which methods wait for that is set here.
 * Blunted scores are the engine's own facts and are not repeated here.
 */

import { type Method, methods } from '../prescribing/methods.ts';
import type { Day } from '../time/day.ts';
import type { CareEvent } from './care-event.ts';

export const medicineActs = ['start', 'stop', 'change'] as const;
type MedicineAct = (typeof medicineActs)[number];

export interface RecordedEvent extends CareEvent {
  readonly id: string;
  readonly recordedAt: number;
  readonly remark: string | null;
  readonly medicine: {
    readonly act: MedicineAct;
    /** Id of a medicine class of the screening sheet, or "other". */
    readonly medicineClass: string;
  } | null;
}

interface EventEffect {
  /** Methods that wait until the screening was asked again on or after its day. */
  readonly contraindicatesUntilAsked: readonly Method[];
  readonly opensReview: boolean;
  /** The engine counts it as a change of treatment, so that a lower score alone does not step up. */
  readonly bluntsScores: boolean;
  readonly text: string;
}

export const eventEffects: Readonly<Record<CareEvent['kind'], EventEffect>> = {
  'medicine-change': {
    contraindicatesUntilAsked: ['occlusion'],
    opensReview: true,
    bluntsScores: true,
    text: 'A medicine was started, stopped or changed',
  },
  'joint-injection': {
    contraindicatesUntilAsked: [],
    opensReview: true,
    bluntsScores: true,
    text: 'A joint was injected',
  },
  surgery: {
    contraindicatesUntilAsked: methods,
    opensReview: true,
    bluntsScores: false,
    text: 'The patient had an operation',
  },
  fall: {
    contraindicatesUntilAsked: ['occlusion'],
    opensReview: true,
    bluntsScores: false,
    text: 'The patient had a fall',
  },
  illness: {
    contraindicatesUntilAsked: methods,
    opensReview: true,
    bluntsScores: false,
    text: 'The patient had an illness',
  },
};

/** Asked again: a screening of the event's day or later that was also recorded after the event was. */
export const isAskedAgain = (
  event: Pick<RecordedEvent, 'day' | 'recordedAt'>,
  screening: { readonly day: Day; readonly recordedAt: number } | null,
): boolean => screening !== null && screening.day >= event.day && screening.recordedAt >= event.recordedAt;
