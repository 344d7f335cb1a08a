/** The care profile in force, with the baseline of each joint that is followed. */
import { errorGroupWords } from '#core/assessment/change/error-group.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline } from '#core/record/record.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/record.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import type { Patient } from '../answers.ts';

const usualOf = (baselines: readonly Baseline[], joint: Joint): Baseline | undefined =>
  baselines.findLast((row) => row.joint === joint);

const painInWords = ({ usualPain, usualPainTop }: Baseline): string => {
  if (usualPain === null) return say('pain-not-set');
  return usualPainTop === null
    ? say('pain', { pain: usualPain })
    : say('pain-top', { pain: usualPain, top: usualPainTop });
};

export const usualInWords = (row: Baseline | undefined, day: Day): string => {
  if (!row) return say('no-baseline');
  const values = say('baseline.values', {
    pain: painInWords(row),
    limit: row.acceptablePainLimit,
    stiffness: row.usualStiffnessMinutes,
    swelling: row.usualSwelling,
  });
  const set = say('baseline.set', { date: dayInWords(row.setOn, day), name: row.setBy });
  const tightened =
    row.tightenedFrom === undefined
      ? ''
      : say('baseline.tightened', { date: dayInWords(row.tightenedFrom, day) });
  const rise = row.riseAcknowledged ? say('baseline.rise-acknowledged') : '';
  const fatigue = row.usualFatigue === null ? '' : say('baseline.fatigue', { fatigue: row.usualFatigue });
  const provisional = row.provisional ? say('baseline.provisional') : '';
  const whole = `${[values, fatigue, set + tightened, rise, provisional].filter(Boolean).join('; ')}.`;
  return row.dueForReview ? `${whole} ${say('baseline.due')}` : whole;
};

export const CareProfileList = ({
  patient,
  baselines,
  day,
}: {
  readonly patient: Patient;
  readonly baselines: readonly Baseline[];
  readonly day: Day;
}) => {
  const { profile } = patient;
  const joints = profile?.followedJoints ?? [];
  const rows = [
    { key: 'diagnosis', name: 'Diagnosis', value: profile?.diagnosis ?? say('not-given') },
    {
      key: 'inflammatory',
      name: say('inflammatory'),
      value: profile ? (profile.inflammatoryArthritis ? 'Yes' : 'No') : say('not-given'),
    },
    {
      key: 'error-group',
      name: say('error-group'),
      value: profile?.errorGroup ? errorGroupWords[profile.errorGroup] : say('error-group-none'),
    },
    ...(profile?.asksFatigue ? [{ key: 'fatigue', name: say('asks-fatigue'), value: 'Yes' }] : []),
    {
      key: 'loads',
      name: say('loads'),
      value: profile?.ownedLoadsKg.length
        ? say('loads-kg', { loads: profile.ownedLoadsKg.join(', ') })
        : say('loads-none'),
    },
    {
      key: 'sex',
      name: say('formula-sex'),
      value: profile?.formulaSex ?? say('formula-sex-none'),
    },
    ...joints.map((joint) => ({
      key: joint,
      name: say('baseline.of', { 'joint-name': jointInWords(joint) }),
      value: usualInWords(usualOf(baselines, joint), day),
    })),
  ];
  return <DefinitionList rows={rows} />;
};
