/** The care profile in force, with the baseline of each joint that is followed. */
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline } from '#core/record/record.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import type { Patient, ReviewAnswer } from '../answers.ts';

const usualOf = (baselines: readonly Baseline[], joint: Joint): Baseline | undefined =>
  baselines.findLast((row) => row.joint === joint);

const usualInWords = (row: Baseline | undefined, day: Day): string => {
  if (!row)
    return 'No baseline is set. The rules treat usual pain as unknown and use an acceptable pain limit of 5.';
  const pain =
    row.usualPain === null
      ? 'usual pain not set'
      : `usual pain ${row.usualPain}${row.usualPainTop === null ? '' : `, top ${row.usualPainTop}`}`;
  return `${pain}, acceptable pain limit ${row.acceptablePainLimit}, stiffness ${row.usualStiffnessMinutes} min, swelling ${row.usualSwelling}; set ${dayInWords(row.setOn, day)} by ${row.setBy}${row.tightenedFrom === undefined ? '' : `, following better mornings; a clinician last set it ${dayInWords(row.tightenedFrom, day)}`}${row.riseAcknowledged ? '; the rise since the plan began is acknowledged' : ''}${row.provisional ? '; provisional, as told at the first visit' : ''}${row.dueForReview ? '. Recent mornings are well below it: baseline due for review' : ''}.`;
};

export const CareProfileList = ({
  patient,
  review,
  day,
}: {
  readonly patient: Patient;
  readonly review: ReviewAnswer;
  readonly day: Day;
}) => {
  const { profile } = patient;
  const joints = profile?.followedJoints ?? [];
  const rows = [
    { key: 'diagnosis', name: 'Diagnosis', value: profile?.diagnosis ?? 'Not given' },
    {
      key: 'inflammatory',
      name: 'Inflammatory arthritis',
      value: profile ? (profile.inflammatoryArthritis ? 'Yes' : 'No') : 'Not given',
    },
    {
      key: 'loads',
      name: 'Loads at home',
      value: profile?.ownedLoadsKg.length ? `${profile.ownedLoadsKg.join(', ')} kg` : 'None recorded',
    },
    {
      key: 'sex',
      name: 'Sex used in body formulas',
      value: profile?.formulaSex ?? 'Not given: levels are not computed',
    },
    ...joints.map((joint) => ({
      key: joint,
      name: `Baseline, ${jointInWords(joint)}`,
      value: usualInWords(usualOf(review.record.baselines, joint), day),
    })),
  ];
  return <DefinitionList rows={rows} />;
};
