/**
 * What follows from something that happened. A choice of this project: the screening sheet's own rule
 * is that the whole list is asked again after any event. That stays so for a fall, an illness, an operation
 * and a medicine of no known class; a known class, a course of steroid and an injection ask for what hangs
 * on them. Which methods wait for the answers is set here.
 */

import { type Method, methods } from '../prescribing/methods.ts';
import type { ScreeningItemId } from '../screening/items.ts';
import type { ScreeningItemAnswer } from '../screening/screening.ts';
import type { Day } from '../time/day.ts';
import type { CareEvent, CourseForm } from './care-event.ts';
import {
  askedAgainForClass,
  askedAgainForCourse,
  askedAgainForInjection,
} from './treatment/treatment-classes.ts';

export const medicineActs = ['start', 'stop', 'change'] as const;
type MedicineAct = (typeof medicineActs)[number];

export interface RecordedEvent extends CareEvent {
  readonly id: string;
  readonly recordedAt: number;
  readonly remark: string | null;
  readonly medicine: {
    /** null = nothing of it was changed: a dose of it was missed. */
    readonly act: MedicineAct | null;
    /** One of `treatmentClasses`. */
    readonly medicineClass: string;
  } | null;
  readonly courseForm: CourseForm | null;
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
  'steroid-course': {
    contraindicatesUntilAsked: ['occlusion'],
    opensReview: true,
    bluntsScores: true,
    text: 'A course of steroid was begun',
  },
  'missed-dose': {
    contraindicatesUntilAsked: [],
    opensReview: false,
    bluntsScores: false,
    text: 'A dose of a medicine was missed',
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

/** Screening questions it asks again; null = the whole sheet. */
const askedAgainAfter = ({
  kind,
  medicine,
}: Pick<RecordedEvent, 'kind' | 'medicine'>): readonly ScreeningItemId[] | null => {
  if (kind === 'medicine-change') return askedAgainForClass(medicine?.medicineClass ?? null);
  if (kind === 'steroid-course') return askedAgainForCourse;
  return kind === 'joint-injection' ? askedAgainForInjection : kind === 'missed-dose' ? [] : null;
};

export interface AskedScreening {
  readonly day: Day;
  readonly recordedAt: number;
  /** Absent where only whole sheets are looked for. */
  readonly answers?: readonly Pick<ScreeningItemAnswer, 'item' | 'askedOn'>[];
}

type Happened = Pick<RecordedEvent, 'day' | 'recordedAt' | 'kind' | 'medicine'>;

/** Those of its questions that nobody has asked since; null = the whole sheet. */
export const stillToAskAfter = (
  event: Happened,
  screening: AskedScreening | null,
): readonly ScreeningItemId[] | null => {
  const wanted = askedAgainAfter(event);
  if (!screening || screening.recordedAt < event.recordedAt) return wanted;
  if (screening.day >= event.day) return [];
  return (
    wanted?.filter((item) => {
      const asked = screening.answers?.find((answer) => answer.item === item);
      return !asked || (asked.askedOn ?? screening.day) < event.day;
    }) ?? null
  );
};

/**
 * Asked again: a screening of the event's day or later that was also recorded after the event was; or an
 * older one in which each of the event's own questions was answered anew since.
 */
export const isAskedAgain = (event: Happened, screening: AskedScreening | null): boolean =>
  stillToAskAfter(event, screening)?.length === 0;
