/** One prescription item over time for a review: its course, and how a joint answered each of its doses. */
import type { Moment } from '#core/decision/facts/judged-session.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { answersByDose } from '#core/review/dose/answers-by-dose.ts';
import { type DatedVersion, doseCourseOf, type StepWay } from '#core/review/dose/dose-course.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Day } from '#core/time/day.ts';
import type { Proposal } from '#data/decision/decisions.ts';

interface Wanted {
  readonly record: PatientRecord;
  readonly proposals: readonly Pick<Proposal, 'becameId' | 'effect' | 'kind' | 'preApprovalId'>[];
  readonly itemId: string;
  readonly joint: Joint;
  readonly at: Moment;
  readonly settings: SettingValues;
  /** Civil day of the clinic. */
  readonly dayOf: (instant: number) => Day;
}

/** What acted at once came without a signature of its own. */
const wayOf = (versionId: string, proposals: Wanted['proposals']): StepWay => {
  const from = proposals.find((one) => one.becameId === versionId && one.effect === 'acts-at-once');
  if (!from) return 'signed';
  if (from.kind === 'ease-back') return 'eased-back';
  return from.preApprovalId === null ? 'within-band' : 'approved-ahead';
};

/** How the doses of one item followed each other. */
export const doseCourse = ({
  record,
  proposals,
  itemId,
  dayOf,
}: Pick<Wanted, 'record' | 'proposals' | 'itemId' | 'dayOf'>) => {
  const own = record.prescriptions.filter((version) => version.itemId === itemId);
  const versions = own.map(
    (version): DatedVersion => ({
      ...version,
      signedOn: dayOf(version.signedAt),
      endedOn: version.endedAt === null ? null : dayOf(version.endedAt),
      way: wayOf(version.id, proposals),
    }),
  );
  return doseCourseOf(versions, record.sessions, itemId);
};

export const doseReview = (wanted: Wanted) => {
  const { record, itemId, joint, at, settings } = wanted;
  return { course: doseCourse(wanted), answers: answersByDose({ record, itemId, joint, at, settings }) };
};
