/** What the summary is shown from; each of its parts takes what it needs. */
import type { Day } from '#core/time/day.ts';
import type {
  CareAnswer,
  CourseAnswer,
  Patient,
  PatientBarAnswer,
  PatientDetails,
  Prescriptions,
  SummaryAnswer,
} from '../answers.ts';
import type { ClinicClock } from '../when.ts';

export interface SummaryProps {
  readonly patient: Patient;
  readonly details: PatientDetails;
  readonly bar: PatientBarAnswer;
  readonly summary: SummaryAnswer;
  readonly prescriptions: Prescriptions;
  readonly plan: SummaryAnswer['plan'];
  readonly course: CourseAnswer;
  readonly care: CareAnswer;
  readonly clock: ClinicClock;
  readonly day: Day;
}
