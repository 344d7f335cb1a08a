/** A measurement in one line, with unit and how it was taken; and what belongs together as "the same, earlier". */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { figure, listed } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/measurements.ts';
import { exerciseTitle } from '../dose-words.ts';

const methodInWords = {
  doppler: 'Doppler',
  'pulse-oximeter': say('pulse-oximeter'),
  automated: 'automated',
} as const;

type OcclusionPressure = Extract<Measurement, { kind: 'limb-occlusion-pressure' }>;

const occlusionPressureInWords = (row: OcclusionPressure): string =>
  say('occlusion-pressure', {
    first: row.firstMmhg,
    second: row.secondMmhg,
    width: figure(row.cuffWidthCm),
    position: row.position,
    method: methodInWords[row.method],
  });

export const measurementInWords = (row: Measurement): string => {
  switch (row.kind) {
    case 'body-mass':
      return say('kilograms', { number: figure(row.massKg) });
    case 'stature':
      return say('centimetres', { number: figure(row.statureCm) });
    case 'body-fat':
      return `${figure(row.bodyFatPercent)} %, ${row.method}`;
    case 'blood-pressure':
      return say('blood-pressure', {
        systolic: row.systolicMmhg,
        diastolic: row.diastolicMmhg,
        position: row.position,
      });
    case 'limb-circumference':
      return say('circumference', { number: figure(row.circumferenceCm), site: row.site });
    case 'limb-occlusion-pressure':
      return occlusionPressureInWords(row);
    case 'ankle-brachial-index':
      return say('ankle-brachial', {
        dorsal: row.dorsalisPedisMmhg,
        tibial: row.posteriorTibialMmhg,
        arm: listed(row.brachialMmhg.map(String)),
      });
    case 'repetitions-to-failure':
      return say('repetitions', { count: row.repetitions, load: figure(row.loadKg) });
    case 'chair-stand-30s':
      return say('stands', { count: row.stands });
    case 'timed-up-and-go':
      return `${figure(row.seconds)} s`;
    case 'grip':
      return say('kilograms', { number: figure(row.forceKg) });
    case 'isometric-force':
      return `${figure(row.forceN)} N`;
    case 'joint-counts':
      return say('joint-counts', {
        tender: row.tender,
        swollen: row.swollen,
        patient: figure(row.patientGlobal),
        clinician: figure(row.clinicianGlobal),
      });
    case 'patient-chosen-activity':
      return say('activity', { score: row.score });
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
    'side' in row ? (row.side === 'both' ? say('both-sides') : row.side) : '',
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
