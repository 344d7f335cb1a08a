/** A measurement in one line, with unit and how it was taken; and what belongs together as "the same, earlier". */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { figure } from '#core/review/plain-words.ts';
import { exerciseTitle } from '../dose-words.ts';

const methodInWords = {
  doppler: 'Doppler',
  'pulse-oximeter': 'pulse oximeter',
  automated: 'automated',
} as const;

export const measurementInWords = (row: Measurement): string => {
  switch (row.kind) {
    case 'body-mass':
      return `${figure(row.massKg)} kg`;
    case 'stature':
      return `${figure(row.statureCm)} cm`;
    case 'body-fat':
      return `${figure(row.bodyFatPercent)} %, ${row.method}`;
    case 'blood-pressure':
      return `${row.systolicMmhg}/${row.diastolicMmhg} mmHg, ${row.position}`;
    case 'limb-circumference':
      return `${figure(row.circumferenceCm)} cm, ${row.site}`;
    case 'limb-occlusion-pressure':
      return `${row.firstMmhg} and ${row.secondMmhg} mmHg; cuff ${figure(row.cuffWidthCm)} cm, ${row.position}, ${methodInWords[row.method]}`;
    case 'ankle-brachial-index':
      return `ankle ${row.dorsalisPedisMmhg} and ${row.posteriorTibialMmhg} mmHg, arm ${row.brachialMmhg.join(' and ')} mmHg`;
    case 'repetitions-to-failure':
      return `${row.repetitions} repetitions with ${figure(row.loadKg)} kg`;
    case 'chair-stand-30s':
      return `${row.stands} stands`;
    case 'timed-up-and-go':
      return `${figure(row.seconds)} s`;
    case 'grip':
      return `${figure(row.forceKg)} kg`;
    case 'isometric-force':
      return `${figure(row.forceN)} N`;
    case 'joint-counts':
      return `tender ${row.tender}, swollen ${row.swollen} of 28; globals ${figure(row.patientGlobal)} and ${figure(row.clinicianGlobal)}`;
    case 'patient-chosen-activity':
      return `${row.score} of 10`;
  }
};

/** What was measured, beside the kind: the limb, the exercise, the activity. */
export const subjectOf = (row: Measurement): string => {
  const what = [
    'exerciseId' in row ? exerciseTitle(row.exerciseId) : '',
    'activity' in row ? row.activity : '',
    row.kind === 'isometric-force' ? row.site : '',
  ];
  const where = [
    'side' in row ? (row.side === 'both' ? 'both sides' : row.side) : '',
    'limb' in row ? row.limb : '',
  ];
  return [what, where]
    .map((parts) => parts.filter(Boolean).join(' '))
    .filter(Boolean)
    .join(', ');
};

/** The newest of each subject, of rows that stand oldest first. */
export const newestBySubject = <M extends Measurement>(rows: readonly M[]): readonly M[] => [
  ...new Map(rows.map((row) => [subjectOf(row), row])).values(),
];
