/** What the page of a review is shown from; each of its parts takes what it needs. */
import type { Day } from '#core/time/day.ts';
import type { Patient, Prescriptions, ReviewAnswer } from '../answers.ts';
import type { ClinicClock } from '../when.ts';
import type { ReviewChoice } from './review-choice.ts';

export interface ReviewProps {
  readonly patient: Patient;
  readonly choice: ReviewChoice;
  readonly review: ReviewAnswer;
  readonly prescriptions: Prescriptions;
  readonly signer: string;
  readonly clock: ClinicClock;
  readonly day: Day;
}
